using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Npgsql;

namespace GrindShop.Shop.Tests.Orders;

public sealed class QuestionTests : IAsyncLifetime
{
    private static readonly QuestionEntry[] Two = [new(1, "lobeSeparationCamDeg", "Which lobe separation?"), new(1, null, "What is it for?")];

    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private Order _order = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        _order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Asking_makes_the_order_wait_and_writes_one_mail_with_every_question()
    {
        await AskAsync("ask-1");

        var order = await ReadAsync();
        Assert.Equal((OrderState.WaitingForCustomer, 2), (order.State, order.Questions.Count));
        var mail = (await _shop.Outbox.OfOrderAsync(order.Number))[^1];
        Assert.Contains("1. Which lobe separation?", mail.Text, StringComparison.Ordinal);
        Assert.Contains("2. What is it for?", mail.Text, StringComparison.Ordinal);
        Assert.Contains($"/track/{order.TrackingCode}", mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asking_twice_with_one_key_asks_once()
    {
        await AskAsync("ask-1");
        Assert.True((await AskAsync("ask-1")).Succeeded);

        Assert.Equal(2, (await ReadAsync()).Questions.Count);
        Assert.Equal(2, (await _shop.Outbox.OfOrderAsync(_order.Number)).Count);
    }

    [Fact]
    public async Task Answer_brings_the_order_back_and_is_kept_once_however_often_it_is_sent()
    {
        await AskAsync("ask-1");
        var question = (await ReadAsync()).Questions[0];

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => ReplyAsync("reply-1", new ReplyEntry(question.Id, "112", null)))));

        Assert.All(outcomes, outcome => Assert.Null(outcome.Refusal));
        var order = await ReadAsync();
        Assert.Equal(OrderState.New, order.State);
        Assert.Equal(("112", "Una Thornquist"), (Assert.Single(order.Questions[0].Replies).Value, order.Questions[0].LastReply!.By));
        Assert.Null(order.Questions[1].LastReply);
    }

    [Fact]
    public async Task Second_answer_after_the_desk_changed_the_specification_is_not_lost()
    {
        await AskAsync("ask-1");
        var question = (await ReadAsync()).Questions[0];
        await ReplyAsync("reply-1", new ReplyEntry(question.Id, "112", null));
        var order = await ReadAsync();
        Assert.Null((await _shop.Desk.TakeAnswersAsync(order.Number, order.Version, order.First.Spec with { LobeSeparationCamDeg = 112 }, "the answers", "Petra")).Refusal);

        await ReplyAsync("reply-2", new ReplyEntry(question.Id, "110", "Changed my mind."));

        order = await ReadAsync();
        Assert.Equal(["112", "110"], order.Questions[0].Replies.Select(reply => reply.Value));
        Assert.Equal((112, OrderEventKind.Answered), (order.First.Spec.LobeSeparationCamDeg, order.History[^1].Kind));
    }

    [Fact]
    public async Task Stale_take_over_changes_nothing()
    {
        await AskAsync("ask-1");
        var before = await ReadAsync();
        await ReplyAsync("reply-1", new ReplyEntry(before.Questions[0].Id, "112", null));

        Assert.Equal("stale", (await _shop.Desk.TakeAnswersAsync(before.Number, before.Version, Wishes.Street with { LobeSeparationCamDeg = 112 }, "", "Petra")).Refusal!.Code);
    }

    [Fact]
    public async Task Answer_never_makes_a_complete_specification_incomplete()
    {
        var order = await ReadAsync();

        Assert.Equal("badSpec", (await _shop.Desk.TakeAnswersAsync(order.Number, order.Version, new CamSpec(), "", "Petra")).Refusal!.Code);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public async Task Question_without_words_is_refused(string text) =>
        Assert.Equal("badQuestion", (await _shop.Desk.AskAsync(_order.Number, _order.Version, [new QuestionEntry(1, null, text)], "k", "Petra")).Refusal!.Code);

    [Fact]
    public async Task Hostile_answers_are_refused_and_leave_nothing()
    {
        await AskAsync("ask-1");
        var id = (await ReadAsync()).Questions[0].Id;
        foreach (var (entry, code) in new (ReplyEntry, string)[]
        {
            (new ReplyEntry(id, new string('9', 201), null), "badAnswer"),
            (new ReplyEntry(id, null, new string('x', 2001)), "badAnswer"),
            (new ReplyEntry(id, null, "bell\a"), "badAnswer"),
            (new ReplyEntry(id + 1000, "112", null), "noSuchQuestion"),
            (new ReplyEntry(id, " ", "\n"), "noAnswer"),
        })
            Assert.Equal(code, (await ReplyAsync("r", entry)).Refusal!.Code);
        Assert.Equal("unknown", (await _shop.Customer.ReplyAsync("NOSUCHCODE2345", [new ReplyEntry(id, "112", null)], "r")).Refusal!.Code);
        Assert.Empty((await ReadAsync()).Questions[0].Replies);
    }

    [Fact]
    public async Task Questions_and_answers_are_only_added_to()
    {
        await AskAsync("ask-1");
        await ReplyAsync("reply-1", new ReplyEntry((await ReadAsync()).Questions[0].Id, "112", null));
        foreach (var statement in new[] { "UPDATE order_questions SET text = ''", "DELETE FROM order_replies", "UPDATE order_replies SET value = '1'" })
            Assert.Equal(PostgresErrorCodes.RestrictViolation, (await Assert.ThrowsAsync<PostgresException>(() => Sql.RunAsync(_database.ConnectionString, statement))).SqlState);
    }

    private async Task<Outcome<Order>> AskAsync(string key)
    {
        var order = await ReadAsync();
        return await _shop.Desk.AskAsync(order.Number, order.Version, Two, key, "Petra");
    }

    private Task<Outcome<Order>> ReplyAsync(string key, ReplyEntry entry) => _shop.Customer.ReplyAsync(_order.TrackingCode, [entry], key);

    private async Task<Order> ReadAsync() => (await _shop.Desk.FindAsync(_order.Number))!;
}
