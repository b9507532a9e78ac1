using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Routing;

/// <summary>Whoever works on the same order or the same lots at the same moment waits for the other; nobody is thrown out and nobody waits for ever.</summary>
public sealed class LockOrderTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!, _other = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        (_shop, _other) = (new TestShop(_database), new TestShop(_database, "two"));
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _other.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Two_pieces_of_an_order_are_shipped_at_once_while_the_desk_writes_to_it()
    {
        var (part, _) = await _shop.StockAsync(2);
        var order = (await _shop.AcceptedOrdersAsync(part.PartNumber, 1, quantity: 2))[0];
        var jobs = new[] { await StartAsync(order, part), await StartAsync(order, part) };
        foreach (var job in jobs)
            foreach (var step in job.Steps.SkipLast(1))
                Assert.True((await _shop.Floor.CompleteAsync(job.Code, step.Stage, "Grinder", $"{step.Stage}")).Succeeded);
        await using var desk = await HeldRows.TakeAsync(_database, $"SELECT 1 FROM orders WHERE id = {order.Id} FOR UPDATE");
        Task<Outcome<JobStep>>[] shipping =
        [
            Task.Run(() => _shop.Floor.CompleteAsync(jobs[0].Code, Stage.Ship, "Packer", "one")),
            Task.Run(() => _other.Floor.CompleteAsync(jobs[1].Code, Stage.Ship, "Packer", "two")),
        ];
        await desk.UntilWaitingAsync(shipping);
        await desk.RunAsync($"UPDATE orders SET changes = changes + 1 WHERE id = {order.Id}");
        await desk.ReleaseAsync();

        Assert.All(await Task.WhenAll(shipping), outcome => Assert.True(outcome.Succeeded));
        var shipped = (await _shop.Desk.FindAsync(order.Number))!;
        Assert.Equal((OrderState.Shipped, 2), (shipped.State, shipped.First.Shipped));
    }

    [Fact]
    public async Task An_order_is_cancelled_while_another_takes_a_blank_of_the_same_lots()
    {
        var (part, older, newer) = await TwoLotsAsync();
        var order = (await _shop.AcceptedOrdersAsync(part.PartNumber, 1, quantity: 2))[0];
        Assert.Equal(newer.Id, (await StartAsync(order, part)).BlankLotId);
        Assert.Equal(older.Id, (await StartAsync(order, part)).BlankLotId);
        var version = (await _shop.Desk.FindAsync(order.Number))!.Version;

        await WithTakerAsync(part, older, () => _other.Changing.CancelAsync(order.Number, version, "No engine any more.", "Desk"));

        Assert.Equal((1, 0), (await AllocatedAsync(older), await AllocatedAsync(newer)));
    }

    [Fact]
    public async Task A_cam_is_scrapped_while_another_takes_a_blank_of_the_same_lots()
    {
        var (part, older, newer) = await TwoLotsAsync();
        var job = await StartAsync((await _shop.AcceptedOrdersAsync(part.PartNumber, 1))[0], part);
        Assert.Equal(newer.Id, job.BlankLotId);

        await WithTakerAsync(part, older, () => _other.Scrapping.ScrapAsync(job.Code, "Cracked journal", "Grinder", "scrap"));
    }

    /// <summary>Both blanks of one lot come back; the book says so twice.</summary>
    [Fact]
    public async Task Two_blanks_of_one_lot_come_back_at_once()
    {
        var (part, lot) = await _shop.StockAsync(3);
        var order = (await _shop.AcceptedOrdersAsync(part.PartNumber, 1, quantity: 2))[0];
        await StartAsync(order, part);
        await StartAsync(order, part);

        Assert.True((await _shop.Changing.CancelAsync(order.Number, (await _shop.Desk.FindAsync(order.Number))!.Version, "No engine any more.", "Desk")).Succeeded);

        var after = (await _shop.StockRoom.FindAsync(lot.LotNumber))!;
        Assert.Equal((3, 0, 2), (after.OnHand, after.Allocated, after.Movements.Count(line => line.Kind == StockMovementKind.Release)));
    }

    /// <summary>The oldest lot is held by a third; the taker waits for it first, the other act after it. Let go, neither may hold what the other still needs.</summary>
    private async Task WithTakerAsync<T>(BlankPart part, BlankLot oldest, Func<Task<Outcome<T>>> act)
    {
        var wanting = (await _shop.AcceptedOrdersAsync(part.PartNumber, 1))[0];
        await using var third = await HeldRows.TakeAsync(_database, $"SELECT 1 FROM blank_lots WHERE id = {oldest.Id} FOR UPDATE");
        var taking = Task.Run(() => _shop.StartAsync(wanting, part.PartNumber));
        await third.UntilWaitingAsync(taking);
        var acting = Task.Run(act);
        await third.UntilWaitingAsync(taking, acting);
        await third.ReleaseAsync();

        Assert.Null((await taking).Refusal);
        Assert.Null((await acting).Refusal);
    }

    /// <summary>An older lot that measures a little less and a newer one as the catalog says, which is taken first.</summary>
    private async Task<(BlankPart Part, BlankLot Older, BlankLot Newer)> TwoLotsAsync()
    {
        var (part, older) = await _shop.StockAsync(3);
        Assert.True((await _shop.StockRoom.MeasureAsync(new(older.LotNumber, null, "Ann", "m"), new SampleFigures(1, null, null, part.Nominal!.StockIn - .004, null))).Succeeded);
        var newer = (await _shop.Receiving.ReceiveAsync(new Receipt { PartNumber = part.PartNumber, Quantity = 1, Location = "A2", Key = "new" }, "Desk")).Value!;
        return (part, older, newer);
    }

    private async Task<int> AllocatedAsync(BlankLot lot) => (await _shop.StockRoom.FindAsync(lot.LotNumber))!.Allocated;

    private async Task<Job> StartAsync(Order order, BlankPart part) =>
        (await _shop.StartAsync((await _shop.Desk.FindAsync(order.Number))!, part.PartNumber)).Value!;
}
