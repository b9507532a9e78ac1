using System.Text.Json;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Orders.Quotes;

/// <summary>Stock and rules change between the answer, the price and the customer's yes: what is promised is what the shop can do on the day.</summary>
public sealed class JudgedTodayTests : IAsyncLifetime
{
    /// <summary>A blank of the demo that takes 35 days to get (blanks.csv) and needs no heat treat; grinding takes ten working days (limits.json).</summary>
    private const string Part = "RV8R-515-07";
    private const int LeadDays = 35, GrindDays = 10;

    private static readonly Dictionary<int, string> Parts = new() { [1] = Part };

    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private string _number = null!;

    /// <summary>One blank of the part is free.</summary>
    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        await using var db = _shop.Db();
        await HoldBackAsync();
        db.Add(BlankLot.Receive(await db.BlankParts.SingleAsync(part => part.PartNumber == Part), "LAST-1", "A1", 1, "Owner", TestShop.Now));
        await db.SaveChangesAsync();
        _number = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!.Number;
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Who_accepts_after_the_last_blank_is_gone_is_told_and_promised_the_days_to_get_one()
    {
        await QuoteAsync();
        Assert.Equal(WorkingDays(SomeOrders.Today), (await PromiseAsync()).Value);
        _shop.Clock.Advance(TimeSpan.FromDays(20));
        await HoldBackAsync();

        var expected = WorkingDays(SomeOrders.Today.AddDays(20 + LeadDays));
        Assert.Equal(expected, (await PromiseAsync()).Value);
        Assert.Equal("laterDay", (await AcceptAsync(expected.AddDays(-1))).Refusal!.Code);
        Assert.Equal(OrderState.Quoted, (await OrderAsync()).State);
        Assert.Equal(expected, (await AcceptAsync(expected)).Value!.PromisedOn);
    }

    [Fact]
    public async Task What_the_desk_quoted_above_the_rule_is_kept_when_the_yes_comes_later()
    {
        var drafted = (await DraftAsync()).Value!;
        await QuoteAsync(offer => offer with { ShipOn = drafted.ShipOn.AddDays(14) });

        Assert.Equal(drafted.ShipOn.AddDays(14), (await PromiseAsync()).Value);
        _shop.Clock.Advance(TimeSpan.FromDays(7));
        Assert.Equal(WorkingDays(SomeOrders.Today.AddDays(7)).AddDays(14), (await PromiseAsync()).Value);
    }

    [Fact]
    public async Task A_price_of_today_asks_for_the_blank_that_has_to_be_bought_today()
    {
        var inStock = (await DraftAsync()).Value!;
        await HoldBackAsync();
        var bought = (await DraftAsync()).Value!;

        Assert.False(await AsksForSpecialOrderAsync(inStock));
        Assert.True(await AsksForSpecialOrderAsync(bought));
        Assert.Equal(WorkingDays(SomeOrders.Today.AddDays(LeadDays)), bought.ShipOn);
        Assert.Equal("otherStock", (await QuoteAsync(offer => offer with { Fits = inStock.Fits })).Refusal!.Code);

        var answered = await AnsweredAsync();
        var quoted = Assert.Single((await QuoteAsync(offer => offer with { Fits = bought.Fits })).Value!.CurrentQuote!.Cams);
        Assert.Equal((false, LeadDays), (quoted.Fit!.InStock, quoted.Fit.LeadTimeDays));
        Assert.Equal(answered, await AnsweredAsync());
    }

    [Fact]
    public async Task Ten_pieces_with_one_blank_on_the_shelf_are_not_in_stock()
    {
        var order = await OrderAsync();
        Assert.True((await _shop.Desk.SetWorkAsync(order.Number, order.Version, 1, order.First.Entry with { Quantity = 10 }, "Desk")).Succeeded);

        var drafted = (await DraftAsync()).Value!;

        Assert.True(await AsksForSpecialOrderAsync(drafted));
        Assert.Equal(WorkingDays(SomeOrders.Today.AddDays(LeadDays)), drafted.ShipOn);
    }

    [Fact]
    public async Task Two_cams_of_an_order_do_not_share_the_last_blank()
    {
        var order = await OrderAsync();
        Assert.True((await _shop.Desk.AddCamAsync(order.Number, order.Version, new CamEntry { Spec = Wishes.Street }, "Desk")).Succeeded);

        var judged = await _shop.Desk.JudgeTodayAsync(await OrderAsync(), new Dictionary<int, string> { [1] = Part, [2] = Part });

        Assert.All(judged.Fits.Values, fit => Assert.False(fit.InStock));
    }

    [Fact]
    public async Task Blank_that_an_accepted_order_waits_for_is_not_promised_to_another()
    {
        var later = await OtherAsync();
        var drawnUp = (await DraftAsync(later)).Value!;
        Assert.False(await AsksForSpecialOrderAsync(drawnUp));
        Assert.Empty(drawnUp.Shortages);
        await QuoteAsync();
        Assert.True((await AcceptAsync(null)).Succeeded);

        var bought = (await DraftAsync(later)).Value!;
        Assert.True(await AsksForSpecialOrderAsync(bought));
        Assert.Equal(WorkingDays(SomeOrders.Today.AddDays(LeadDays)), bought.ShipOn);
        Assert.Equal($"Blank {Part}: 1 needed, 1 free, and accepted orders wait for 1 of them. What is missing is bought, {LeadDays} days.", Assert.Single(bought.Shortages));
        Assert.Equal("otherStock", (await QuoteAsync(offer => offer with { Fits = drawnUp.Fits }, later)).Refusal!.Code);
        Assert.Equal(WorkingDays(SomeOrders.Today), (await _shop.Desk.JudgeTodayAsync(await OrderAsync())).ShipsOn(SomeOrders.Today));
    }

    [Fact]
    public async Task Two_that_say_yes_to_one_blank_at_once_are_not_promised_the_same_day()
    {
        var other = await OtherAsync();
        foreach (var number in new[] { _number, other })
            Assert.True((await QuoteAsync(null, number)).Succeeded);
        var soon = WorkingDays(SomeOrders.Today);

        var answers = await Task.WhenAll(AcceptAsync(soon), AcceptAsync(soon, other));

        Assert.Equal(soon, Assert.Single(answers, answer => answer.Succeeded).Value!.PromisedOn);
        Assert.Equal("laterDay", Assert.Single(answers, answer => !answer.Succeeded).Refusal!.Code);
    }

    [Fact]
    public async Task Promise_waits_while_another_is_being_made()
    {
        await QuoteAsync();
        await using var other = _shop.Db();
        await using var making = await other.Database.BeginTransactionAsync();
        await other.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.Promises})");

        var accepting = AcceptAsync(null);
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        while (await other.Database.SqlQuery<int>($"SELECT count(*)::int AS \"Value\" FROM pg_locks WHERE locktype = 'advisory' AND NOT granted AND database = (SELECT oid FROM pg_database WHERE datname = current_database())").SingleAsync(patience.Token) == 0)
            await Task.Yield();
        Assert.False(accepting.IsCompleted);
        await making.CommitAsync();
        Assert.True((await accepting).Succeeded);
    }

    [Fact]
    public async Task Desk_promises_no_day_that_has_become_later_since_it_was_shown()
    {
        var other = await OtherAsync();
        foreach (var number in new[] { _number, other })
            Assert.True((await QuoteAsync(null, number)).Succeeded);
        var soon = WorkingDays(SomeOrders.Today);
        Assert.True((await AcceptAsync(soon)).Succeeded);

        var order = await OrderAsync(other);
        Assert.Equal("laterDay", (await _shop.Desk.AcceptAsync(order.Number, order.Version, soon, "Desk", soon)).Refusal!.Code);
        var seen = (await _shop.Desk.JudgeTodayAsync(order)).PromisedOn(SomeOrders.Today);
        Assert.Equal(soon.AddDays(1), (await _shop.Desk.AcceptAsync(order.Number, order.Version, soon.AddDays(1), "Desk", seen)).Value!.PromisedOn);
    }

    [Fact]
    public async Task What_the_owner_has_forbidden_since_the_answer_is_neither_priced_nor_accepted()
    {
        var answered = await AnsweredAsync();
        await QuoteAsync();
        await RuleAsync(RuleVerdict.No);

        Assert.Contains("Rollers pit it", (await DraftAsync()).Refusal!.Reason, StringComparison.Ordinal);
        Assert.Equal("doesNotFit", (await QuoteAsync()).Refusal!.Code);
        var order = await OrderAsync();
        Assert.Equal("doesNotFit", (await _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(20), "Desk")).Refusal!.Code);
        Assert.Equal("notAsQuoted", (await PromiseAsync()).Refusal!.Code);
        Assert.Equal("notAsQuoted", (await AcceptAsync(null)).Refusal!.Code);
        Assert.Equal((OrderState.Quoted, answered), ((await OrderAsync()).State, await AnsweredAsync()));
        await RuleAsync(RuleVerdict.Ok);
        Assert.True((await AcceptAsync(null)).Succeeded);
    }

    private async Task RuleAsync(RuleVerdict verdict)
    {
        var (rule, _) = (await _shop.Rules.FindAsync("lifter/steel5150/hydraulicRoller"))!.Value;
        Assert.True((await _shop.Rules.ChangeAsync(new RuleEdit(rule.Key, rule.Version, verdict, "Rollers pit it.", "two came back"), "Owner")).Succeeded);
    }

    /// <summary>Nothing of the part may be taken any more.</summary>
    private async Task HoldBackAsync()
    {
        await using var db = _shop.Db();
        foreach (var lot in await db.BlankLots.Where(lot => lot.BlankPart.PartNumber == Part && lot.QuarantineReason == null).ToListAsync())
            lot.Quarantine("Not to be counted on.", "Owner", TestShop.Now);
        await db.SaveChangesAsync();
    }

    private async Task<bool> AsksForSpecialOrderAsync(PriceByRules drafted)
    {
        await using var db = _shop.Db();
        var codes = await db.PriceAdders.Where(adder => adder.When == AdderTrigger.SpecialOrder).Select(adder => adder.Code).ToListAsync();
        return drafted.Lines.Any(line => codes.Contains(line.Code));
    }

    /// <summary>A second order of the same cam.</summary>
    private async Task<string> OtherAsync() => (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("other"), "Ute")).Order!.Number;

    private async Task<Outcome<PriceByRules>> DraftAsync(string? number = null) => await _shop.Desk.DraftAsync(await OrderAsync(number), new Dictionary<int, CamChoice> { [1] = new(Part, []) });

    private async Task<Outcome<Order>> QuoteAsync(Func<QuoteOffer, QuoteOffer>? change = null, string? number = null)
    {
        var order = await OrderAsync(number);
        var offer = new QuoteOffer { Parts = Parts, Lines = [new PriceLine("base", "Grinding", 300) { RuleAmount = 300 }], ValidUntil = DateOnly.FromDateTime(_shop.Clock.GetUtcNow().UtcDateTime).AddDays(30) };
        return await _shop.Desk.QuoteAsync(order.Number, order.Version, change is null ? offer : change(offer), "Desk");
    }

    private async Task<Outcome<DateOnly>> PromiseAsync() => await _shop.Customer.PromiseAsync(await OrderAsync());

    private async Task<Outcome<Order>> AcceptAsync(DateOnly? shown, string? number = null)
    {
        var order = await OrderAsync(number);
        return await _shop.Customer.AcceptAsync(order.TrackingCode, order.CurrentQuoteNumber!, "Una Thornquist", agrees: true, shown);
    }

    private async Task<Order> OrderAsync(string? number = null) => (await _shop.Desk.FindAsync(number ?? _number))!;

    private async Task<string> AnsweredAsync() => JsonSerializer.Serialize((await OrderAsync()).First.Answer, ShopJson.Options);

    /// <summary>Ten working days later, counted day by day.</summary>
    private static DateOnly WorkingDays(DateOnly from) =>
        Enumerable.Range(1, 60).Select(from.AddDays).Where(day => day.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday)).ElementAt(GrindDays - 1);
}
