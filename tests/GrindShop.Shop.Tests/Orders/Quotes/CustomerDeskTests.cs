using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Orders.Quotes;

public sealed class CustomerDeskTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _one = null!, _two = null!;
    private Order _order = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        (_one, _two) = (new TestShop(_database), new TestShop(_database, "two"));
        _order = (await _one.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
        _order = (await QuoteAsync(300)).Value!;
    }

    public async Task DisposeAsync()
    {
        await _one.DisposeAsync();
        await _two.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Accepting_ten_times_at_once_is_accepting_once()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 10).Select(i => Task.Run(() => AcceptAsync(i % 2 == 0 ? _one : _two))));

        Assert.All(outcomes, outcome => Assert.True(outcome.Succeeded));
        var order = await FindAsync();
        Assert.Equal((OrderState.Accepted, "Una Thornquist"), (order.State, order.AcceptedBy));
        Assert.Equal("Q1206-1 accepted by Una Thornquist on the tracking page; promised for 2026-03-25.", Assert.Single(order.History, line => line.Kind == OrderEventKind.Accepted).What);
    }

    [Fact]
    public async Task Only_the_newest_price_is_accepted_and_the_older_one_stays_as_it_was()
    {
        var first = Json((await FindAsync()).Quotes[0]);
        await QuoteAsync(280);

        Assert.Equal("otherQuote", (await AcceptAsync(_one, "Q1206-1")).Refusal!.Code);
        Assert.True((await AcceptAsync(_one, "Q1206-2")).Succeeded);
        var order = await FindAsync();
        Assert.Equal((280m, 2), (order.Price, order.Quotes.Count));
        Assert.Equal(first, Json(order.Quotes[0]));
    }

    [Fact]
    public async Task A_corrected_specification_takes_the_price_away_under_the_customers_hand()
    {
        await _one.Desk.CorrectAsync(_order.Number, _order.Version, Wishes.Street with { LobeSeparationCamDeg = 111 }, "", "Petra");

        Assert.Equal("otherQuote", (await AcceptAsync(_one)).Refusal!.Code);
        Assert.Equal(OrderState.New, (await FindAsync()).State);
    }

    [Theory]
    [InlineData("", true, "noName")]
    [InlineData("U", true, "noName")]
    [InlineData("Una", false, "notTicked")]
    public async Task A_yes_is_signed_and_ticked(string name, bool agrees, string refusal) =>
        Assert.Equal(refusal, (await _one.Customer.AcceptAsync(_order.TrackingCode, "Q1206-1", name, agrees)).Refusal!.Code);

    [Fact]
    public async Task A_no_stands_with_its_reason_and_cannot_become_a_yes()
    {
        Assert.True((await _one.Customer.DeclineAsync(_order.TrackingCode, "Q1206-1", "Una", "Too dear.")).Succeeded);
        Assert.True((await _one.Customer.DeclineAsync(_order.TrackingCode, "Q1206-1", "Una", "Too dear.")).Succeeded);

        Assert.Equal("wrongState", (await AcceptAsync(_one)).Refusal!.Code);
        var order = await FindAsync();
        Assert.Equal((OrderState.Declined, "Too dear."), (order.State, Assert.Single(order.History, line => line.Kind == OrderEventKind.DeclinedByCustomer).What));
    }

    [Fact]
    public async Task A_price_that_ran_out_is_found_once_and_can_be_renewed()
    {
        _one.Clock.Advance(TimeSpan.FromDays(31));
        Assert.Equal("expired", (await AcceptAsync(_one)).Refusal!.Code);

        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => _one.Desk.ExpireQuotesAsync())));

        var expired = await FindAsync();
        Assert.Equal(OrderState.Expired, expired.State);
        Assert.Single(expired.History, line => line.Kind == OrderEventKind.Expired);
        Assert.Equal(0, await _one.Desk.ExpireQuotesAsync());
        Assert.True((await QuoteAsync(300)).Succeeded);
        Assert.True((await AcceptAsync(_one, "Q1206-2")).Succeeded);
    }

    [Fact]
    public async Task Of_two_desk_people_at_one_price_the_second_is_told_the_firsts()
    {
        var seen = await FindAsync();
        await QuoteAsync(280);

        var second = await _two.Desk.QuoteAsync(seen.Number, seen.Version, SomeOrders.Blank, SomeOrders.Lines, "Milo");

        Assert.Equal("stale", second.Refusal!.Code);
        Assert.Contains("Petra changed this order in the meantime: Priced at $280.00", second.Refusal.Reason, StringComparison.Ordinal);
        Assert.Equal(2, (await FindAsync()).Quotes.Count);
    }

    [Fact]
    public async Task A_payment_sent_twice_at_once_is_written_down_once()
    {
        var seen = await FindAsync();
        DepositEntry entry = new(100, PaidBy.Cash, SomeOrders.Today, "", "one key");

        await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => _one.Desk.RecordDepositAsync(seen.Number, seen.Version, entry, "Petra"))));

        Assert.Equal(100, (await FindAsync()).Received);
    }

    private async Task<Outcome<Order>> QuoteAsync(decimal amount)
    {
        var order = await _one.Desk.FindAsync(_order.Number);
        return await _one.Desk.QuoteAsync(order!.Number, order.Version, SomeOrders.Blank, [new PriceLine("base", "Grinding", amount)], "Petra");
    }

    private Task<Outcome<Order>> AcceptAsync(TestShop shop, string quote = "Q1206-1") => shop.Customer.AcceptAsync(_order.TrackingCode, quote, "Una Thornquist", agrees: true);

    private async Task<Order> FindAsync() => (await _one.Desk.FindAsync(_order.Number))!;

    private static string Json(Quote quote) => System.Text.Json.JsonSerializer.Serialize(quote, ShopJson.Options);
}
