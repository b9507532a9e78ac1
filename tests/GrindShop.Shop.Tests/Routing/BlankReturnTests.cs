using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

/// <summary>A good blank that was taken by mistake, or whose lot is held back, goes back to its shelf.</summary>
public sealed class BlankReturnTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private BlankLot _lot = null!;
    private Order _order = null!;
    private Job _job = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        (var part, _lot) = await _shop.StockAsync(1);
        _order = (await _shop.AcceptedOrdersAsync(part.PartNumber, 1))[0];
        _job = (await _shop.StartAsync(_order, part.PartNumber)).Value!;
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task The_blank_is_free_again_and_the_piece_waits_for_one()
    {
        Assert.True((await GiveBackAsync("Wrong order.")).Succeeded);

        Assert.Equal((1, 0), await CountsAsync());
        var order = (await _shop.Desk.FindAsync(_order.Number))!;
        Assert.Equal((OrderState.Accepted, 1), (order.State, order.First.Waiting));
        Assert.Equal($"{_job.Code} gave its blank back: Wrong order. The piece waits for a blank again.", order.History[^1].What);
        var job = (await _shop.Floor.FindAsync(_job.Code))!;
        Assert.Equal((false, "blank given back", "Wrong order."), (job.IsOpen, job.History[^1].What, job.History[^1].Why));
        var piece = Assert.Single(await _shop.Batch.WaitingAsync(), piece => piece.Order.Number == _order.Number);
        Assert.True(piece.CanUse((await _shop.StockRoom.FindAsync(_lot.LotNumber))!));

        var again = await _shop.StartAsync(order, _lot.BlankPart.PartNumber);

        Assert.Equal($"{_job.Code}-2", again.Value!.Code);
        Assert.Equal((1, 1), await CountsAsync());
    }

    /// <summary>The floor may not cut a blank of a lot that is held back, and a stock-take may not go below what is promised: this is the way out of both.</summary>
    [Fact]
    public async Task A_lot_that_is_held_back_takes_it_too_and_can_then_be_counted_lower()
    {
        Assert.True((await _shop.StockRoom.QuarantineAsync(Command(), "Cracks.")).Succeeded);
        var refusal = (await _shop.Floor.CompleteAsync(_job.Code, _job.Current!.Stage, "Grinder", "cut")).Refusal!;
        Assert.Equal("quarantined", refusal.Code);
        Assert.Contains("give the blank back", refusal.Reason, StringComparison.Ordinal);
        Assert.Equal("promised", (await _shop.StockRoom.CountAsync(Command(), 0, "gone")).Refusal!.Code);

        Assert.True((await GiveBackAsync("Lot held back.")).Succeeded);

        Assert.True((await _shop.StockRoom.CountAsync(Command(), 0, "gone")).Succeeded);
        Assert.Equal((0, 0), await CountsAsync());
    }

    [Fact]
    public async Task Sent_again_and_again_it_is_done_once()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => GiveBackAsync("Wrong order."))));

        Assert.All(outcomes, outcome => Assert.True(outcome.Succeeded));
        Assert.Equal((1, 0), await CountsAsync());
        Assert.Equal(1, (await _shop.Desk.FindAsync(_order.Number))!.First.Waiting);
        Assert.Equal("ended", (await _shop.Of<BlankReturn>().GiveBackAsync(_job.Code, "Again", "Desk", "other")).Refusal!.Code);
    }

    [Fact]
    public async Task A_cut_blank_does_not_go_back_and_none_goes_without_a_reason()
    {
        Assert.Equal("noReason", (await GiveBackAsync(" ")).Refusal!.Code);
        Assert.True((await _shop.Floor.CompleteAsync(_job.Code, _job.Current!.Stage, "Grinder", "cut")).Succeeded);
        Assert.Equal("cut", (await GiveBackAsync("Wrong order.")).Refusal!.Code);
        Assert.Equal("unknown", (await _shop.Of<BlankReturn>().GiveBackAsync("J0", "Wrong order.", "Desk", "back")).Refusal!.Code);
    }

    private Task<Outcome<Job>> GiveBackAsync(string why) => _shop.Of<BlankReturn>().GiveBackAsync(_job.Code.ToLowerInvariant(), why, "Desk", "back");

    private LotCommand Command() => new(_lot.LotNumber, null, "Owner", Guid.NewGuid().ToString("N"));

    private async Task<(int OnHand, int Allocated)> CountsAsync()
    {
        await using var db = _shop.Db();
        var lot = await db.BlankLots.SingleAsync(lot => lot.Id == _lot.Id);
        return (lot.OnHand, lot.Allocated);
    }
}
