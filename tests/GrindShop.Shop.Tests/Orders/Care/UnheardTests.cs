using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Orders.Care;

/// <summary>What a customer says stays in the inbox until somebody of the desk has read it, whatever the order's state.</summary>
public sealed class UnheardTests : IAsyncLifetime
{
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
    public async Task Mail_about_a_closed_order_stands_first_in_the_inbox_until_it_is_seen()
    {
        await DeclineAsync();
        Assert.Null(await RowAsync());
        _shop.Clock.Advance(TimeSpan.FromHours(2));

        await WriteAsync("please renew");

        Assert.Equal((_order.Number, OrderState.Declined, _shop.Clock.GetUtcNow()), (await _shop.Inbox.OpenAsync())[0] is var row ? (row.Number, row.State, row.WroteAt) : default);
        Assert.Null((await SeenAsync()).Refusal);
        Assert.Null(await RowAsync());
        Assert.Equal((OrderEventKind.Seen, "Imka"), (await FindAsync()).History[^1] is var line ? (line.Kind, line.By) : default);
    }

    [Fact]
    public async Task Mail_about_an_open_order_goes_before_all_that_wait_longer()
    {
        _shop.Clock.Advance(TimeSpan.FromHours(1));
        var later = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("later"), "Una")).Order!;
        Assert.NotEqual(later.Number, (await _shop.Inbox.OpenAsync())[0].Number);

        await WriteAsync("I accept", later.Number);

        Assert.Equal(later.Number, (await _shop.Inbox.OpenAsync())[0].Number);
    }

    [Fact]
    public async Task Any_act_of_the_desk_says_that_it_was_read()
    {
        await WriteAsync("I accept");

        Assert.True((await _shop.Care.AssignAsync(_order.Number, (await FindAsync()).Version, "Imka", "Imka")).Succeeded);

        Assert.Null((await RowAsync())!.WroteAt);
    }

    [Fact]
    public async Task Price_that_runs_out_afterwards_hides_nothing()
    {
        var order = await FindAsync();
        Assert.True((await _shop.Desk.QuoteAsync(order.Number, order.Version, order.First.Answer!.Best!.PartNumber, SomeOrders.Lines, "Imka")).Succeeded);
        await WriteAsync("I accept");
        _shop.Clock.Advance(TimeSpan.FromDays(400));

        Assert.NotEqual(0, await _shop.Desk.ExpireQuotesAsync());

        Assert.Equal((OrderState.Expired, TestShop.Now), (await RowAsync()) is { } row ? (row.State, row.WroteAt) : default);
    }

    [Fact]
    public async Task Answer_that_comes_late_on_the_tracking_page_is_heard_too()
    {
        var order = await FindAsync();
        Assert.True((await _shop.Desk.AskAsync(order.Number, order.Version, [new QuestionEntry(1, null, "Which propeller?")], "ask", "Imka")).Succeeded);
        order = await FindAsync();
        Assert.True((await _shop.Desk.QuoteAsync(order.Number, order.Version, order.First.Answer!.Best!.PartNumber, SomeOrders.Lines, "Imka")).Succeeded);

        Assert.Null((await _shop.Customer.ReplyAsync(order.TrackingCode, [new ReplyEntry(order.Questions[0].Id, null, "Three blades.")], "reply")).Refusal);

        Assert.Equal((OrderState.Quoted, TestShop.Now), (await RowAsync()) is { } row ? (row.State, row.WroteAt) : default);
    }

    [Fact]
    public async Task Yes_of_the_customer_on_the_tracking_page_does_not_hide_what_they_wrote()
    {
        await QuoteAsync();
        await WriteAsync("yes, but make it 112");

        Assert.Null((await _shop.Customer.AcceptAsync(_order.TrackingCode, (await FindAsync()).CurrentQuoteNumber!, "Una Thornquist", true)).Refusal);

        Assert.Equal((OrderState.Accepted, TestShop.Now), (await RowAsync()) is { } row ? (row.State, row.WroteAt) : default);
        Assert.Single((await FindAsync()).Unheard);
    }

    [Fact]
    public async Task Yes_that_the_desk_takes_says_that_it_was_read()
    {
        await QuoteAsync();
        await WriteAsync("I accept");

        Assert.Null((await _shop.Desk.AcceptAsync(_order.Number, (await FindAsync()).Version, SomeOrders.Today.AddDays(20), "Imka")).Refusal);

        Assert.Null((await RowAsync())!.WroteAt);
        Assert.Empty((await FindAsync()).Unheard);
    }

    [Fact]
    public async Task No_that_the_desk_takes_writes_no_letter_and_says_that_it_was_read()
    {
        await WriteAsync("too dear, thank you");
        var mails = (await _shop.Outbox.OfOrderAsync(_order.Number)).Count;

        Assert.Null((await _shop.Desk.TakeNoAsync(_order.Number, (await FindAsync()).Version, "Too dear.", "Imka")).Refusal);

        var order = await FindAsync();
        Assert.Equal((OrderState.Declined, true, OrderEventKind.DeclinedByCustomer, "Too dear.", "Imka"), (order.State, order.IsDeclinedByCustomer, order.History[^1].Kind, order.History[^1].What, order.History[^1].By));
        Assert.Equal(mails, (await _shop.Outbox.OfOrderAsync(_order.Number)).Count);
        Assert.Null(await RowAsync());
    }

    [Fact]
    public async Task No_after_the_yes_is_refused()
    {
        await QuoteAsync();
        Assert.True((await _shop.Desk.AcceptAsync(_order.Number, (await FindAsync()).Version, SomeOrders.Today.AddDays(20), "Imka")).Succeeded);

        Assert.Equal("wrongState", (await _shop.Desk.TakeNoAsync(_order.Number, (await FindAsync()).Version, "", "Imka")).Refusal!.Code);
    }

    [Fact]
    public async Task Seen_twice_is_one_line_and_what_came_in_meanwhile_was_not_read()
    {
        await WriteAsync("first");
        var first = (await FindAsync()).Unheard[^1].Id;
        await WriteAsync("second");

        Assert.Equal("stale", (await _shop.Care.SeenAsync(_order.Number, first, "Imka")).Refusal!.Code);
        Assert.Equal(2, (await FindAsync()).Unheard.Count);
        var last = (await FindAsync()).Unheard[^1].Id;
        Assert.All(await Task.WhenAll(Enumerable.Range(0, 4).Select(i => Task.Run(() => _shop.Care.SeenAsync(_order.Number, last, $"Desk {i}")))), seen => Assert.True(seen.Succeeded));

        Assert.Single((await FindAsync()).History, line => line.Kind == OrderEventKind.Seen);
    }

    private async Task DeclineAsync() => Assert.True((await _shop.Desk.DeclineAsync(_order.Number, (await FindAsync()).Version, "no such gear", "Imka")).Succeeded);

    private async Task QuoteAsync()
    {
        var order = await FindAsync();
        Assert.True((await _shop.Desk.QuoteAsync(order.Number, order.Version, order.First.Answer!.Best!.PartNumber, SomeOrders.Lines, "Imka")).Succeeded);
    }

    private async Task WriteAsync(string words, string? about = null) => Assert.Equal(MailFate.Added, (await _shop.Of<MailIntake>().TakeAsync(
        new ArrivedMail($"test/{words}", new ReadMail { From = "una@example.com", FromName = "Una", Subject = $"Re: order {about ?? _order.Number}", Text = words }))).Fate);

    private async Task<Outcome<Order>> SeenAsync() => await _shop.Care.SeenAsync(_order.Number, (await FindAsync()).Unheard[^1].Id, "Imka");

    private async Task<Order> FindAsync() => (await _shop.Desk.FindAsync(_order.Number))!;

    private async Task<InboxRow?> RowAsync() => (await _shop.Inbox.OpenAsync()).SingleOrDefault(row => row.Number == _order.Number);
}
