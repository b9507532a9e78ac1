using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>The family's blanks with the stock of this moment, as every judgement stands on them.</summary>
public sealed class StockedTests : IAsyncLifetime
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
    public async Task A_lot_that_measures_less_stands_apart_and_gives_the_same_answers_as_the_catalog()
    {
        var (part, _) = await _shop.StockAsync(5);
        await using (var db = _shop.Db())
        {
            var lot = await db.WholeLots().SingleAsync(lot => lot.LotNumber == "TEST-1");
            Assert.True(lot.Measure(new SampleFigures(1, null, null, .004, null), "Owner", TestShop.Now).Succeeded);
            await db.SaveChangesAsync();
        }

        var content = await _shop.Catalog.ContentAsync();
        var family = content.Family(part.EngineFamily.Code)!;
        var stocked = await _shop.Catalog.StockedAsync(family);

        Assert.Equal([(0, null), (5, "TEST-1")], stocked.Where(blank => blank.Blank.Part.PartNumber == part.PartNumber).Select(blank => (blank.Available, blank.Lot)));
        var grind = Shelf.Nominal(content.Blank(part.PartNumber)!);
        var (answer, catalogs) = (FeasibilityJudge.Judge(grind, family, stocked, content.Rules), await _shop.Catalog.JudgeAsync(grind));
        Assert.Equal((catalogs.Verdict, catalogs.Best?.PartNumber, catalogs.Best?.Lot), (answer.Verdict, answer.Best?.PartNumber, answer.Best?.Lot));
    }
}
