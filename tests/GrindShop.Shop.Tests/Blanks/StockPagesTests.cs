using CsCheck;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Blanks;

/// <summary>What the pages of a stock book say stands to what really happened, whatever that was.</summary>
public sealed class StockPagesTests : IAsyncLifetime
{
    private const string Part = "RV8R-516-08";
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
    public void The_figures_and_what_they_are_made_of_are_those_of_the_model() => Gen.Select(Gen.Int[1, 6], LotAct.Any.Array[0, 40]).Array[0, 3].Sample(histories =>
    {
        var (lots, models) = (new List<BlankLot>(), new List<LotModel>());
        foreach (var (quantity, acts) in histories)
        {
            var lot = BlankLot.Receive(Feasibility.Shelf.Blank(Part).Part, $"L{lots.Count}", "A1", quantity, "Somebody", TestShop.Now);
            var model = new LotModel(quantity);
            foreach (var act in acts)
                Assert.Equal(act.Do(model), act.Do(lot).Succeeded);
            lots.Add(lot);
            models.Add(model);
        }
        var sums = StockSums.Of(lots);
        Assert.Equal((models.Sum(model => model.OnHand), models.Sum(model => model.Jobs.Count), models.Sum(model => model.Available)), (sums.OnHand, sums.Allocated, sums.Available));
        Assert.Equal((lots.Sum(lot => lot.OnHand), lots.Sum(lot => lot.Allocated), lots.Sum(lot => lot.Available)), (sums.OnHand, sums.Allocated, sums.Available));
        Assert.True(sums is { Received: >= 0, Taken: >= 0, Scrapped: >= 0, SetAside: >= 0, GivenBack: >= 0, HeldBack: >= 0 });
    });

    [Fact]
    public async Task Every_line_stands_on_one_page_with_what_stood_in_the_book_after_it() => await Gen.Select(Gen.Int[1, 5], LotAct.Any.Array[0, 60]).SampleAsync(
        async (quantity, acts) =>
        {
            var lot = await LivedAsync(quantity, acts);
            foreach (var book in new[] { await AllAsync(page => _shop.Of<StockPages>().OfLotAsync(lot, page)), await AllAsync(page => _shop.Of<StockPages>().OfPartAsync(Part, page)) })
            {
                var (onHand, allocated) = (0, 0);
                foreach (var row in Enumerable.Reverse(book))
                    Assert.Equal((onHand += row.Line.OnHandChange, allocated += row.Line.AllocatedChange), (row.OnHand, row.Allocated));
                Assert.Equal(book.OrderByDescending(row => row.Line.At).ThenByDescending(row => row.Line.Id), book);
            }
        }, iter: 8, threads: 1);

    [Fact]
    public async Task A_page_that_is_not_there_is_the_nearest_and_a_book_without_lines_is_empty()
    {
        var pages = _shop.Of<StockPages>();
        var last = await pages.OfPartAsync(Part, 999);
        Assert.Equal(last.Pages, last.Number);
        Assert.Equal(1, (await pages.OfPartAsync(Part, -3)).Number);
        Assert.Equal((0, 1, 0), ((await pages.OfLotAsync("L-NONE", 1)).Count, (await pages.OfLotAsync("L-NONE", 1)).Pages, (await pages.OfLotAsync("L-NONE", 1)).Lines.Count));
    }

    private async Task<string> LivedAsync(int quantity, IEnumerable<LotAct> acts)
    {
        await using var db = _shop.Db();
        var lot = BlankLot.Receive(await db.BlankParts.SingleAsync(part => part.PartNumber == Part), await db.NextLotNumberAsync(default), "A1", quantity, "Somebody", TestShop.Now);
        foreach (var act in acts)
            act.Do(lot);
        db.Add(lot);
        await db.SaveChangesAsync();
        return lot.LotNumber;
    }

    private static async Task<List<BookLine>> AllAsync(Func<int, Task<BookPage>> read)
    {
        var lines = new List<BookLine>();
        for (var page = await read(1); ; page = await read(page.Number + 1))
        {
            Assert.Equal(page.Number < page.Pages ? BookPage.Size : page.Count - lines.Count, page.Lines.Count);
            lines.AddRange(page.Lines);
            if (page.Number == page.Pages)
                return lines;
        }
    }
}
