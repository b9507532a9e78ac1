using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Tests.Orders.Care;

public sealed class CareDeskTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private Order _order = null!;

    private DateTime ShopNow => _order.ReceivedAt.UtcDateTime.AddHours(-5);

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
    public async Task Order_goes_only_to_somebody_of_the_desk()
    {
        var people = await _shop.Care.PeopleAsync();

        Assert.Equal(["Hollis Verne", "Imka Tolland", "Piers Oakham"], people);
        Assert.Equal("noSuchPerson", (await _shop.Care.AssignAsync(_order.Number, _order.Version, "Rolf Anstey", "Imka Tolland")).Refusal!.Code);
        Assert.True((await _shop.Care.AssignAsync(_order.Number, _order.Version, "Piers Oakham", "Imka Tolland")).Succeeded);
        Assert.Equal("Piers Oakham", (await RowAsync())!.AssignedTo);
    }

    [Fact]
    public async Task Of_several_who_take_one_order_at_once_one_gets_it_and_the_others_hear_who()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Run(() => _shop.Care.AssignAsync(_order.Number, _order.Version, $"Desk {i}", $"Desk {i}"))));

        var taken = Assert.Single(outcomes, outcome => outcome.Succeeded).Value!.AssignedTo!;
        Assert.All(outcomes.Where(outcome => !outcome.Succeeded), outcome => Assert.Contains($"{taken} changed this order", outcome.Refusal!.Reason, StringComparison.Ordinal));
        Assert.Equal(taken, (await RowAsync())!.AssignedTo);
    }

    [Fact]
    public async Task Answer_of_the_customer_brings_a_snoozed_order_back()
    {
        await DoAsync(order => _shop.Desk.AskAsync(order.Number, order.Version, [new QuestionEntry(1, null, "Which propeller?")], "ask", "Imka"));
        await DoAsync(order => _shop.Care.SnoozeAsync(order.Number, order.Version, ShopNow.AddDays(3), "until he has measured", "Imka"));
        Assert.True((await RowAsync())!.IsSnoozed(TestShop.Now));
        var order = (await _shop.Desk.FindAsync(_order.Number))!;

        Assert.Null((await _shop.Customer.ReplyAsync(order.TrackingCode, [new ReplyEntry(order.Questions[0].Id, null, "Three blades.")], "reply")).Refusal);

        Assert.Equal((OrderState.New, null), ((await RowAsync())!.State, (await RowAsync())!.SnoozedUntil));
    }

    [Fact]
    public async Task Mail_of_the_customer_brings_a_snoozed_order_back_and_its_words_are_found()
    {
        await DoAsync(order => _shop.Care.SnoozeAsync(order.Number, order.Version, ShopNow.AddDays(3), "until he has measured", "Imka"));

        await _shop.Of<MailIntake>().TakeAsync(new ArrivedMail("test/1", new ReadMail { From = "una@example.com", FromName = "Una", Subject = $"Re: order {_order.Number}", Text = "It is for the hovercraft." }));

        Assert.False((await RowAsync())!.IsSnoozed(TestShop.Now));
        Assert.Equal(("letter", _order.Number), await FirstAsync("hovercraft"));
    }

    [Fact]
    public async Task Calls_are_listed_by_their_time_and_leave_the_list_when_made()
    {
        await DoAsync(order => _shop.Care.PlanCallAsync(order.Number, Call(3, "second"), "Imka"));
        await DoAsync(order => _shop.Care.PlanCallAsync(order.Number, Call(1, "first"), "Imka"));
        await DoAsync(order => _shop.Care.PlanCallAsync(order.Number, Call(1, "first"), "Imka"));
        var calls = await _shop.Inbox.CallsAsync();
        Assert.Equal(["first", "second"], calls.Select(call => call.About));

        _shop.Clock.Advance(TimeSpan.FromHours(2.5));
        await DoAsync(order => _shop.Care.CallTriedAsync(order.Number, calls[0].Id, 0, "Imka"));
        Assert.Equal(["second", "first"], (await _shop.Inbox.CallsAsync()).Select(call => call.About));
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Run(() => _shop.Care.CallDoneAsync(_order.Number, calls[0].Id, $"Desk {i}"))));

        Assert.Single(outcomes, outcome => outcome.Succeeded);
        Assert.All(outcomes.Where(outcome => !outcome.Succeeded), outcome => Assert.Equal("called", outcome.Refusal!.Code));
        Assert.Equal(["second"], (await _shop.Inbox.CallsAsync()).Select(call => call.About));
        Assert.Single((await _shop.Desk.FindAsync(_order.Number))!.History, line => line.Kind == OrderEventKind.CalledBack);
    }

    [Fact]
    public async Task Number_and_matter_of_a_call_are_found()
    {
        await DoAsync(order => _shop.Care.PlanCallAsync(order.Number, Call(1, "his gearbox"), "Imka"));

        Assert.Equal(("phone", _order.Number), await FirstAsync("990 77 61"));
        Assert.Equal(("history", _order.Number), await FirstAsync("gearbox"));
    }

    [Theory]
    [InlineData("UPDATE orders SET snoozed_until = now()")]
    [InlineData("UPDATE order_calls SET done_at = now()")]
    [InlineData("UPDATE order_calls SET tries = 3")]
    public async Task Database_itself_refuses_half_a_fact(string statement)
    {
        await DoAsync(order => _shop.Care.PlanCallAsync(order.Number, Call(1, "his gearbox"), "Imka"));
        await using var db = _shop.Db();

        Assert.Equal(PostgresErrorCodes.CheckViolation, (await Assert.ThrowsAsync<PostgresException>(() => db.Database.ExecuteSqlRawAsync(statement))).SqlState);
    }

    private CallEntry Call(int hours, string about) => new(ShopNow.AddHours(hours), "(555) 990-7761", about, about);

    private async Task<(string, string)> FirstAsync(string question)
    {
        var found = (await _shop.Search.FindAsync(question)).Orders[0];
        return (found.Why[0].Place, found.Number);
    }

    private async Task<InboxRow?> RowAsync() => (await _shop.Inbox.OpenAsync()).SingleOrDefault(row => row.Number == _order.Number);

    private async Task DoAsync(Func<Order, Task<Outcome<Order>>> act) => Assert.Null((await act((await _shop.Desk.FindAsync(_order.Number))!)).Refusal);
}
