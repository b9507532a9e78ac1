using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Routing;

public sealed class LotChoiceTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task The_lot_as_answered_is_taken_before_an_older_one_that_measures_less()
    {
        var (part, older) = await _shop.StockAsync(1);
        await MeasureAsync(older, part.Nominal!.StockIn - .004);
        var newer = (await _shop.Receiving.ReceiveAsync(new Receipt { PartNumber = part.PartNumber, Quantity = 1, Location = "A2", Key = "new" }, "Desk")).Value!;
        var orders = await _shop.AcceptedOrdersAsync(part.PartNumber, 2);

        var first = (await _shop.StartAsync(orders[0], part.PartNumber)).Value!;
        var second = (await _shop.StartAsync(orders[1], part.PartNumber)).Value!;

        Assert.Equal((newer.Id, older.Id), (first.BlankLotId, second.BlankLotId));
        Assert.Null(first.LotFit);
        Assert.Equal(older.LotNumber, second.LotFit!.Lot);
        Assert.True(second.Fit!.IntakeBaseCircleDiameterIn < orders[1].First.Answer!.Blanks.First(fit => fit.PartNumber == part.PartNumber).IntakeBaseCircleDiameterIn);
    }

    [Fact]
    public async Task A_lot_without_the_metal_is_not_taken()
    {
        const string part = "FV8F-516-08";
        await using var db = _shop.Db();
        var order = Assert.Single(await _shop.AcceptedOrdersAsync(part, 1));
        foreach (var lot in await db.BlankLots.AsNoTracking().Where(lot => lot.BlankPart.PartNumber == part).ToListAsync())
            await _shop.StockRoom.MeasureAsync(new(lot.LotNumber, null, "Ann", "m"), new SampleFigures(1, null, .01, null, null));

        var refusal = (await _shop.StartAsync(order, part)).Refusal!;

        Assert.Equal("noMetal", refusal.Code);
    }

    [Fact]
    public async Task A_sample_that_cannot_be_is_refused()
    {
        var (part, lot) = await _shop.StockAsync(1);
        SampleFigures[] wrong =
        [
            new(0, null, null, .03, null), new(1, null, null, null, null), new(1, null, null, .5, null), new(1, new HardnessReading(75, HardnessScale.Hrc), null, null, null),
            new(1, null, part.CaseDepthIn is null ? .1 : 2, null, null),
        ];
        foreach (var figures in wrong)
            Assert.Equal("badSample", (await _shop.StockRoom.MeasureAsync(new(lot.LotNumber, null, "Ann", Guid.NewGuid().ToString()), figures)).Refusal!.Code);
        await using var db = _shop.Db();
        Assert.Empty((await db.BlankLots.Include(l => l.Samples).SingleAsync(l => l.Id == lot.Id)).Samples);
    }

    private async Task MeasureAsync(BlankLot lot, double stockIn) => Assert.True(
        (await _shop.StockRoom.MeasureAsync(new(lot.LotNumber, null, "Ann", Guid.NewGuid().ToString()), new SampleFigures(1, null, null, stockIn, null))).Succeeded);
}
