using GrindShop.Lobes;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Allocating;

/// <summary>Lots that measure too thin for a cam count for nothing to it, and still for the cams that come out of them.</summary>
public sealed class ThinLotTests : IAsyncLifetime
{
    private const string Part = "RV8R-516-08";

    private static readonly GrindSpec Turned = Shelf.Nominal(Shelf.Blank(Part)) with { LobeSeparationCamDeg = Shelf.Nominal(Shelf.Blank(Part)).LobeSeparationCamDeg + 3 };

    /// <summary>A case that is enough for the very grind of the blank alone, and one from which no cam comes out.</summary>
    private static readonly SampleFigures Thin = new(1, null, ThinCase(), null, null), Hopeless = new(1, null, .010, null, null);

    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        await using var db = _shop.Db();
        foreach (var lot in (await db.WholeLots().ToListAsync()).Where(lot => lot.Free > 0))
            Assert.True(lot.Scrap(lot.Free, "Flood", "Owner", TestShop.Now).Succeeded);
        await db.SaveChangesAsync();
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Blanks_that_the_cam_does_not_come_out_of_are_not_free_for_it()
    {
        await LotAsync(5, Hopeless);
        var order = (await _shop.AcceptedOrdersAsync(Part, 1))[0];

        var piece = Assert.Single(await _shop.Batch.WaitingAsync(), piece => piece.Order.Number == order.Number);

        Assert.Null(piece.Free);
        Assert.Equal(0, piece.Ranked.Single(blank => blank.Option.Part.PartNumber == Part).Option.Available);
        Assert.Equal("noMetal", (await _shop.StartAsync(order, Part)).Refusal!.Code);
    }

    [Fact]
    public async Task One_good_blank_among_thin_ones_is_given_to_one_cam_and_the_others_wait()
    {
        await LotAsync(5, Hopeless);
        await LotAsync(1, null);
        await _shop.AcceptedOrdersAsync(Part, 6);

        var proposal = BatchAllocation.Propose(await _shop.Batch.WaitingAsync());

        Assert.Single(proposal.Takes);
        Assert.Single((await _shop.Batch.TakeAsync(proposal, "Desk")).Value!);
        Assert.Empty(BatchAllocation.Propose(await _shop.Batch.WaitingAsync()).Takes);
    }

    [Fact]
    public async Task The_cam_that_needs_the_metal_gets_it_and_the_other_the_thin_blank()
    {
        var (thin, full) = (await LotAsync(1, Thin), await LotAsync(1, null));
        var easy = (await _shop.AcceptedOrdersAsync(Part, 1))[0];
        var hard = await AcceptedAsync(Turned);
        var both = (await _shop.Batch.WaitingAsync()).Where(piece => piece.Order.Id == easy.Id || piece.Order.Id == hard.Id).ToList();

        var jobs = (await _shop.Batch.TakeAsync(BatchAllocation.Propose(both), "Desk")).Value!;

        Assert.Equal(thin.Id, Assert.Single(jobs, job => job.OrderId == easy.Id).BlankLotId);
        Assert.Equal(full.Id, Assert.Single(jobs, job => job.OrderId == hard.Id).BlankLotId);
    }

    /// <summary>Whatever lies on the shelf and whoever waits: as many as any way of giving out could serve, and every one of them gets it.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public async Task What_is_proposed_can_be_taken_whole_and_no_other_way_serves_more(int seed)
    {
        var random = new Random(seed);
        List<BlankLot> lots = [];
        for (var count = random.Next(1, 5); count > 0; count--)
            lots.Add(await LotAsync(random.Next(1, 3), new[] { null, null, Thin, Hopeless }[random.Next(4)]));
        if (random.Next(0, 4) is var easy && easy > 0)
            await _shop.AcceptedOrdersAsync(Part, 1, easy);
        for (var hard = random.Next(0, 4); hard > 0; hard--)
            await AcceptedAsync(Turned);
        var waiting = await _shop.Batch.WaitingAsync();
        var most = await MostAsync(waiting, lots);

        var proposal = BatchAllocation.Propose(waiting);

        Assert.Equal(most, proposal.Takes.Count);
        Assert.Equal(most, (await _shop.Batch.TakeAsync(proposal, "Desk")).Value!.Count);
        Assert.All(await _shop.Batch.WaitingAsync(), piece => Assert.Null(piece.Free));
    }

    /// <summary>By trying every way: each piece takes a blank of each lot that this very lot was judged to give, or none.</summary>
    private async Task<int> MostAsync(IReadOnlyList<WaitingPiece> waiting, List<BlankLot> lots)
    {
        await using var db = _shop.Db();
        var now = await db.WholeLots().AsNoTracking().Where(lot => lots.Select(one => one.Id).Contains(lot.Id)).ToListAsync();
        List<int[]> fits = [];
        foreach (var piece in waiting.Where(piece => piece.Cam.Answer!.Grind.EngineFamily == now[0].BlankPart.EngineFamily.Code))
        {
            List<int> usable = [];
            for (var lot = 0; lot < now.Count; lot++)
                if (await _shop.Catalog.JudgeLotAsync(db, piece.Cam.Answer!.Grind, now[lot]) is { Usable: true })
                    usable.Add(lot);
            if (usable.Count > 0)
                fits.Add([.. usable]);
        }
        return Most(fits, 0, [.. now.Select(lot => lot.Available)]);
    }

    private static int Most(List<int[]> fits, int from, int[] free) => from == fits.Count ? 0 : fits[from].Where(lot => free[lot] > 0)
        .Select(lot => 1 + Most(fits, from + 1, [.. free.Select((count, i) => i == lot ? count - 1 : count)]))
        .Append(Most(fits, from + 1, free)).Max();

    /// <summary>The deepest case out of which the very grind of the blank still comes, but not one turned by three degrees.</summary>
    private static double ThinCase()
    {
        var (blank, turned) = (Shelf.Blank(Part), Turned);
        return Enumerable.Range(1, 250).Select(step => .28 - step / 1000.0).First(caseIn =>
            blank.With(LotMetal.Of(blank.Part, null, caseIn)) is var thin && Shelf.Fit(Shelf.Nominal(blank), thin).Usable && !Shelf.Fit(turned, thin).Usable);
    }

    private async Task<Order> AcceptedAsync(GrindSpec grind)
    {
        var answer = await _shop.Catalog.JudgeAsync(grind);
        await using var db = _shop.Db();
        var order = SomeOrders.Accepted(await db.NextOrderNumbersAsync(default), answer, Part, await db.Customers.FirstAsync());
        db.Add(order);
        await db.SaveChangesAsync();
        return order;
    }

    private async Task<BlankLot> LotAsync(int blanks, SampleFigures? measured)
    {
        var lot = (await _shop.Receiving.ReceiveAsync(new Receipt { PartNumber = Part, Quantity = blanks, Location = "A1", Key = Guid.NewGuid().ToString("N") }, "Desk")).Value!;
        if (measured is not null)
            Assert.True((await _shop.StockRoom.MeasureAsync(new(lot.LotNumber, null, "Ann", Guid.NewGuid().ToString("N")), measured)).Succeeded);
        return lot;
    }
}
