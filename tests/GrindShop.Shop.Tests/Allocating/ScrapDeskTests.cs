using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Allocating;

/// <summary>A spoilt cam takes the next best blank, and says so.</summary>
public sealed class ScrapDeskTests : IAsyncLifetime
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
    public async Task The_next_best_blank_that_is_free_is_taken_and_said()
    {
        var expected = (await _shop.NextBest.RankAsync(_job.Cam)).First(blank => blank.Option.CanBeTaken).Option.Part.PartNumber;
        await _shop.Floor.CompleteAsync(_job.Code, _job.Current!.Stage, "Grinder", "first");

        var outcome = await _shop.Scrapping.ScrapAsync(_job.Code, "Nose burnt", "Grinder", "scrap");

        var replacement = outcome.Value!.Replacement!;
        Assert.Equal((expected, _job.Code, $"{_job.Code}-2"), (replacement.BlankLot!.BlankPart.PartNumber, replacement.Replaces, replacement.Code));
        Assert.Contains(expected, outcome.Value.Words, StringComparison.Ordinal);
        var order = (await _shop.Desk.FindAsync(_order.Number))!;
        Assert.Equal((OrderState.InWork, 1, 0), (order.State, order.First.Started, order.First.Waiting));
        Assert.Contains(order.History, line => line.Kind == OrderEventKind.PieceLost && line.What.Contains("Nose burnt", StringComparison.Ordinal));
        Assert.Equal((0, 0), await CountsAsync());
        Assert.DoesNotContain(await _shop.Floor.OpenJobsAsync(), job => job.Code == _job.Code);
        Assert.Equal("ended", (await _shop.Floor.CompleteAsync(_job.Code, Stage.Finish, "Grinder", "late")).Refusal!.Code);
    }

    [Fact]
    public async Task A_blank_still_on_the_shelf_is_thrown_out_in_the_book()
    {
        Assert.Equal((1, 1), await CountsAsync());
        Assert.True((await _shop.Scrapping.ScrapAsync(_job.Code, "Cracked journal", "Grinder", "scrap")).Succeeded);
        Assert.Equal((0, 0), await CountsAsync());
    }

    [Fact]
    public async Task Sent_again_and_again_it_is_done_once()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => _shop.Scrapping.ScrapAsync(_job.Code, "Cracked journal", "Grinder", "same"))));

        Assert.Single(outcomes.Select(outcome => outcome.Value!.Replacement!.Code).Distinct());
        Assert.Equal(2, (await _shop.Floor.JobsOfAsync(_order.Number)).Count);
        Assert.Equal("ended", (await _shop.Scrapping.ScrapAsync(_job.Code, "Again", "Grinder", "other")).Refusal!.Code);
    }

    [Fact]
    public async Task Without_a_free_blank_the_order_waits_again()
    {
        await using (var db = _shop.Db())
            foreach (var lot in (await db.WholeLots().ToListAsync()).Where(lot => lot.Free > 0))
                Assert.True(lot.Scrap(lot.Free, "Flood", "Owner", TestShop.Now).Succeeded && await db.SaveChangesAsync() > 0);

        var outcome = await _shop.Scrapping.ScrapAsync(_job.Code, "Cracked journal", "Grinder", "scrap");

        Assert.Null(outcome.Value!.Replacement);
        Assert.Contains("waits for its blank again", outcome.Value.Words, StringComparison.Ordinal);
        Assert.Equal(OrderState.Accepted, (await _shop.Desk.FindAsync(_order.Number))!.State);
    }

    [Fact]
    public async Task Without_a_reason_nothing_is_scrapped() =>
        Assert.Equal("noReason", (await _shop.Scrapping.ScrapAsync(_job.Code, " ", "Grinder", "scrap")).Refusal!.Code);

    private async Task<(int OnHand, int Allocated)> CountsAsync()
    {
        await using var db = _shop.Db();
        var lot = await db.BlankLots.SingleAsync(lot => lot.Id == _lot.Id);
        return (lot.OnHand, lot.Allocated);
    }
}
