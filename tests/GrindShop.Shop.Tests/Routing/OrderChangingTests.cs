using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

public sealed class OrderChangingTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private string _part = null!;
    private Job _job = null!;
    private string _lot = "";
    private int _onHand, _allocated;

    /// <summary>An order of two pieces, one of which has its blank.</summary>
    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key") with { Quantity = 2 }, "Una")).Order!;
        _part = order.First.Answer!.Best!.PartNumber;
        order = (await _shop.Desk.QuoteAsync(order.Number, order.Version, _part, SomeOrders.Lines, "Desk")).Value!;
        order = (await _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(20), "Desk")).Value!;
        _job = (await _shop.StartAsync(order, _part)).Value!;
        _lot = (await JobAsync()).BlankLot!.LotNumber;
        (_onHand, _allocated) = await LotAsync();
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task A_price_and_a_date_are_revised_and_the_blank_stays()
    {
        var before = await OrderAsync();
        var quote = Json(before.Quotes[0]);

        var revised = await ReviseAsync(terms => terms with { PriceChange = 40, PriceReason = "rush", PromisedOn = SomeOrders.Today.AddDays(9) });

        Assert.Equal((1, 40m), (revised.Value!.Number, revised.Value.PriceChange));
        Assert.Equal(["Price", "Promised"], revised.Value.Changes.Select(change => change.Name));
        Assert.StartsWith($"{_job.Code} goes on with blank {_part}, lot {_lot}, at ", revised.Value.BlankEffect, StringComparison.Ordinal);
        var after = await OrderAsync();
        Assert.Equal((before.Price + 40, SomeOrders.Today.AddDays(9), OrderState.InWork), (after.Price, after.PromisedOn!.Value, after.State));
        Assert.Equal(SomeOrders.Today.AddDays(9), (await JobAsync()).DueOn);
        Assert.Equal(quote, Json(after.Quotes[0]));
        await LotHoldsAsync(onHand: 0, allocated: 0);
    }

    [Fact]
    public async Task Another_blank_gives_the_uncut_one_back_and_the_piece_waits_again()
    {
        var other = await OtherPartAsync();

        var revised = await ReviseAsync(terms => terms with { PartNumber = other });

        Assert.Contains($"goes back to lot {_lot}", revised.Value!.BlankEffect, StringComparison.Ordinal);
        Assert.Equal(JobEnd.Cancelled, (await JobAsync()).EndedAs);
        var order = await OrderAsync();
        Assert.Equal((OrderState.Accepted, 0, other), (order.State, order.First.Started, order.First.QuotedPartNumber));
        await LotHoldsAsync(onHand: 0, allocated: -1);
    }

    [Fact]
    public async Task A_grind_that_is_changed_after_the_first_cut_costs_the_blank()
    {
        await CutAsync();

        var revised = await ReviseAsync(terms => terms with { Spec = terms.Spec with { LobeSeparationCamDeg = 110.5 } });

        Assert.Contains("was cut already and stays used", revised.Value!.BlankEffect, StringComparison.Ordinal);
        Assert.Equal(JobEnd.Cancelled, (await JobAsync()).EndedAs);
        await LotHoldsAsync(onHand: -1, allocated: -1);
        var order = await OrderAsync();
        Assert.Equal((OrderState.Accepted, 2), (order.State, order.First.Waiting));
        var again = await _shop.Allocation.StartAsync(order.Number, order.Version, _part, "Desk");
        Assert.Equal($"{_job.Code}-2", again.Value!.Code);
    }

    [Fact]
    public async Task A_note_changes_nothing_on_the_floor_even_after_the_first_cut()
    {
        await CutAsync();

        var revised = await ReviseAsync(terms => terms with { Spec = terms.Spec with { Notes = "Ship to the track." } });

        Assert.Contains("goes on", revised.Value!.BlankEffect, StringComparison.Ordinal);
        Assert.True((await JobAsync()).IsOpen);
    }

    [Fact]
    public async Task Nothing_new_nobody_asked_or_no_reason_is_no_revision()
    {
        Assert.Equal("nothingChanged", (await ReviseAsync(terms => terms)).Refusal!.Code);
        Assert.Equal("notAgreed", (await ReviseAsync(terms => terms with { PromisedOn = terms.PromisedOn.AddDays(1), AgreedBy = " " })).Refusal!.Code);
        Assert.Equal("noReason", (await ReviseAsync(terms => terms with { PriceChange = 5 })).Refusal!.Code);
        Assert.Equal("noReason", (await ReviseAsync(terms => terms with { PromisedOn = terms.PromisedOn.AddDays(1), Why = "" })).Refusal!.Code);
        Assert.Equal("emptyPrice", (await ReviseAsync(terms => terms with { PriceChange = -10_000, PriceReason = "gift" })).Refusal!.Code);
        Assert.Empty((await OrderAsync()).Revisions);
    }

    [Fact]
    public async Task Of_two_revisions_at_once_one_is_written_down_and_the_other_is_told()
    {
        var seen = await OrderAsync();

        var outcomes = await Task.WhenAll(new[] { 10, 20 }.Select(change => Task.Run(() => _shop.Changing.ReviseAsync(
            seen.Number, seen.Version, Terms(seen) with { PriceChange = change, PriceReason = "agreed" }, $"Desk {change}"))));

        Assert.Single(outcomes, outcome => outcome.Succeeded);
        Assert.Equal("stale", Assert.Single(outcomes, outcome => !outcome.Succeeded).Refusal!.Code);
        Assert.Single((await OrderAsync()).Revisions);
    }

    [Fact]
    public async Task Cancelling_gives_uncut_blanks_back_and_says_what_came_in()
    {
        var order = await OrderAsync();
        await _shop.Desk.RecordDepositAsync(order.Number, order.Version, new DepositEntry(100, PaidBy.Check, SomeOrders.Today, "", "key"), "Desk");

        Assert.True((await CancelAsync()).Succeeded);

        var after = await OrderAsync();
        Assert.Equal(OrderState.Cancelled, after.State);
        Assert.Contains($"goes back to lot {_lot}", after.History[^1].What, StringComparison.Ordinal);
        Assert.Contains("A deposit of $100.00 was received", after.History[^1].What, StringComparison.Ordinal);
        Assert.Equal(JobEnd.Cancelled, (await JobAsync()).EndedAs);
        Assert.DoesNotContain(await _shop.Floor.OpenJobsAsync(), job => job.Code == _job.Code);
        await LotHoldsAsync(onHand: 0, allocated: -1);
        Assert.Equal("wrongState", (await CancelAsync()).Refusal!.Code);
    }

    [Fact]
    public async Task Cancelling_after_the_first_cut_leaves_the_blank_used()
    {
        await CutAsync();

        Assert.True((await CancelAsync()).Succeeded);

        Assert.Contains("was cut already and stays used", (await OrderAsync()).History[^1].What, StringComparison.Ordinal);
        await LotHoldsAsync(onHand: -1, allocated: -1);
        Assert.Equal("ended", (await _shop.Floor.CompleteAsync(_job.Code, Stage.Finish, "Floor", "late")).Refusal!.Code);
    }

    [Fact]
    public async Task A_step_and_a_cancellation_at_once_leave_one_story()
    {
        var first = _job.Steps[0].Stage;

        await Task.WhenAll(Task.Run(() => _shop.Floor.CompleteAsync(_job.Code, first, "Floor", "step")), Task.Run(CancelAsync));

        var (job, order) = (await JobAsync(), await OrderAsync());
        Assert.Equal((JobEnd.Cancelled, OrderState.Cancelled), (job.EndedAs, order.State));
        await LotHoldsAsync(onHand: job.IsCut ? -1 : 0, allocated: -1);
        Assert.Contains(job.IsCut ? "stays used" : "goes back", order.History[^1].What, StringComparison.Ordinal);
    }

    private static RevisionTerms Terms(Order order) => new()
    {
        Spec = order.First.Spec,
        PartNumber = order.First.QuotedPartNumber,
        PromisedOn = order.PromisedOn!.Value,
        AgreedBy = "Una Thornquist",
        AgreedHow = OrderChannel.Phone,
        Why = "Asked on the phone.",
    };

    private async Task<Outcome<OrderRevision>> ReviseAsync(Func<RevisionTerms, RevisionTerms> change)
    {
        var order = await OrderAsync();
        return await _shop.Changing.ReviseAsync(order.Number, order.Version, change(Terms(order)), "Desk");
    }

    private async Task<Outcome<Order>> CancelAsync()
    {
        var order = await OrderAsync();
        return await _shop.Changing.CancelAsync(order.Number, order.Version, "The engine is sold.", "Desk");
    }

    private async Task CutAsync() => Assert.True((await _shop.Floor.CompleteAsync(_job.Code, _job.Steps[0].Stage, "Floor", "cut")).Succeeded);

    private async Task<Order> OrderAsync() => (await _shop.Desk.FindAsync(_job.Order.Number))!;

    private async Task<Job> JobAsync() => (await _shop.Floor.FindAsync(_job.Code))!;

    private async Task<string> OtherPartAsync() => (await OrderAsync()).First.Answer!.Blanks.First(fit => fit.Usable && fit.PartNumber != _part).PartNumber;

    /// <summary>Against the moment after the first piece had its blank.</summary>
    private async Task LotHoldsAsync(int onHand, int allocated) => Assert.Equal((_onHand + onHand, _allocated + allocated), await LotAsync());

    private async Task<(int OnHand, int Allocated)> LotAsync()
    {
        await using var db = _shop.Db();
        var lot = await db.BlankLots.Include(lot => lot.Movements).SingleAsync(lot => lot.Id == _job.BlankLotId);
        Assert.Equal((lot.OnHand, lot.Allocated), (lot.Movements.Sum(line => line.OnHandChange), lot.Movements.Sum(line => line.AllocatedChange)));
        return (lot.OnHand, lot.Allocated);
    }

    private static string Json(Quote quote) => System.Text.Json.JsonSerializer.Serialize(quote, ShopJson.Options);
}
