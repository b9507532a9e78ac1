using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Allocating;

/// <summary>All waiting orders at once: previewed, then all or none.</summary>
public sealed class BatchAllocationTests : IAsyncLifetime
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
    public async Task As_many_as_can_be_get_a_blank_and_the_rest_goes_on_waiting()
    {
        var (part, _) = await _shop.StockAsync(3);
        await _shop.AcceptedOrdersAsync(part.PartNumber, 5);
        var waiting = await _shop.Batch.WaitingAsync();
        var proposal = BatchAllocation.Propose(waiting);
        Assert.Equal(waiting.Count, await _shop.Batch.CountAsync());
        Assert.Equal(waiting.Count, proposal.Takes.Count + proposal.Left.Count);
        Assert.All(proposal.Takes, take => Assert.True(take.Blank.Option.CanBeTaken));
        Assert.All(proposal.Left, piece => Assert.DoesNotContain(piece.Ranked, blank => blank.Option.CanBeTaken && Spare(proposal, blank) > 0));

        var jobs = (await _shop.Batch.TakeAsync(proposal, "Desk")).Value!;

        Assert.Equal(proposal.Takes.Count, jobs.Count);
        Assert.Equal(proposal.Left.Select(piece => piece.Order.Number).Order(), (await _shop.Batch.WaitingAsync()).Select(piece => piece.Order.Number).Order());
    }

    [Fact]
    public async Task What_changed_since_the_preview_leaves_everything_as_it_was()
    {
        var (part, lot) = await _shop.StockAsync(2);
        var orders = await _shop.AcceptedOrdersAsync(part.PartNumber, 2);
        var proposal = BatchAllocation.Propose(await _shop.Batch.WaitingAsync());
        Assert.True((await _shop.StartAsync(orders[0], part.PartNumber)).Succeeded);
        await using var db = _shop.Db();
        var before = await db.Jobs.CountAsync();

        Assert.Equal("stale", (await _shop.Batch.TakeAsync(proposal, "Desk")).Refusal!.Code);

        Assert.Equal(before, await db.Jobs.CountAsync());
        Assert.Equal(1, await db.BlankLots.Where(one => one.Id == lot.Id).Select(one => one.Allocated).SingleAsync());
    }

    [Fact]
    public async Task A_blank_that_is_gone_leaves_everything_as_it_was()
    {
        var (part, lot) = await _shop.StockAsync(2);
        await _shop.AcceptedOrdersAsync(part.PartNumber, 2);
        var only = (await _shop.Batch.WaitingAsync()).Where(piece => piece.Cam.QuotedPartNumber == part.PartNumber)
            .Select(piece => (Piece: piece, Blank: piece.Ranked.First(blank => blank.Option.Part.PartNumber == part.PartNumber)))
            .Select(one => new ProposedTake(one.Piece, one.Blank, one.Blank.Option.Fit.Free.Single())).ToList();
        await using (var db = _shop.Db())
        {
            Assert.True((await db.LockLotAsync(lot.LotNumber, default))!.Scrap(1, "Cracked", "Owner", TestShop.Now).Succeeded);
            await db.SaveChangesAsync();
        }

        Assert.Equal("noStock", (await _shop.Batch.TakeAsync(new BatchProposal(only, []), "Desk")).Refusal!.Code);

        await using var after = _shop.Db();
        Assert.Equal(0, await after.BlankLots.Where(one => one.Id == lot.Id).Select(one => one.Allocated).SingleAsync());
        Assert.Equal(2, await after.Orders.CountAsync(order => order.State == OrderState.Accepted && only.Select(take => take.For.Order.Id).Contains(order.Id)));
    }

    [Fact]
    public async Task The_same_proposal_taken_from_two_nodes_at_once_is_taken_once()
    {
        var (part, _) = await _shop.StockAsync(3);
        await _shop.AcceptedOrdersAsync(part.PartNumber, 3);
        var proposal = BatchAllocation.Propose(await _shop.Batch.WaitingAsync());

        var outcomes = await Task.WhenAll(Task.Run(() => _shop.Batch.TakeAsync(proposal, "Desk")), Task.Run(() => _other.Batch.TakeAsync(proposal, "Owner")));

        Assert.Equal("stale", Assert.Single(outcomes, outcome => !outcome.Succeeded).Refusal!.Code);
        await using var db = _shop.Db();
        var lots = await db.BlankLots.Include(lot => lot.Movements).ToListAsync();
        Assert.All(lots, lot => Assert.Equal((lot.OnHand, lot.Allocated), (lot.Movements.Sum(line => line.OnHandChange), lot.Movements.Sum(line => line.AllocatedChange))));
    }

    [Fact]
    public async Task A_receipt_finds_the_orders_that_waited_for_it()
    {
        var (part, lot) = await _shop.StockAsync(1);
        var orders = await _shop.AcceptedOrdersAsync(part.PartNumber, 1);
        await using (var db = _shop.Db())
        {
            Assert.True((await db.LockLotAsync(lot.LotNumber, default))!.Scrap(1, "Cracked", "Owner", TestShop.Now).Succeeded);
            await db.SaveChangesAsync();
        }
        var came = (await _shop.Receiving.ReceiveAsync(new Receipt { PartNumber = part.PartNumber, Quantity = 4, Location = "B2", Key = "came-in" }, "Desk")).Value!;

        var match = Assert.Single(await _shop.Batch.WaitingAsync(), piece => piece.Order.Number == orders[0].Number);
        Assert.True(match.CanUse(came));
        Assert.Equal(4, match.Ranked.First(blank => blank.Option.Part.PartNumber == part.PartNumber).Option.Available);
    }

    private static int Spare(BatchProposal proposal, RankedBlank blank) =>
        blank.Option.Available - proposal.Takes.Count(take => take.Blank.Option.Part.PartNumber == blank.Option.Part.PartNumber);
}
