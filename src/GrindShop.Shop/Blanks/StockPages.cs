using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Blanks;

/// <summary>One line of a stock book and what stood in the book after it.</summary>
/// <param name="Line">The line.</param>
/// <param name="LotNumber">Its lot.</param>
/// <param name="PurchaseNumber">The purchase order the lot came on, for the line of the receipt.</param>
/// <param name="OnHand">On hand after it, over all the lots of the book.</param>
/// <param name="Allocated">Allocated after it.</param>
public sealed record BookLine(StockMovement Line, string LotNumber, string? PurchaseNumber, int OnHand, int Allocated);

/// <summary>One page of a stock book, newest line first.</summary>
/// <param name="Lines">Its lines.</param>
/// <param name="Number">From 1; the newest lines stand on the first.</param>
/// <param name="Pages">How many there are, at least one.</param>
/// <param name="Count">Lines in the whole book.</param>
public sealed record BookPage(IReadOnlyList<BookLine> Lines, int Number, int Pages, int Count)
{
    public const int Size = 25;
}

/// <summary>Turns the pages of the stock book of a part, all its lots together, or of one lot.</summary>
public sealed class StockPages(IDbContextFactory<ShopDb> factory)
{
    public Task<BookPage> OfPartAsync(string partNumber, int page, CancellationToken cancel = default) => ReadAsync(lots => lots.Where(lot => lot.BlankPart.PartNumber == partNumber), page, cancel);

    public Task<BookPage> OfLotAsync(string lotNumber, int page, CancellationToken cancel = default) => ReadAsync(lots => lots.Where(lot => lot.LotNumber == lotNumber), page, cancel);

    /// <summary>What stood after a line is what all lines sum to, less the changes of the newer ones. A page that is not there is the nearest that is.</summary>
    private async Task<BookPage> ReadAsync(Func<IQueryable<BlankLot>, IQueryable<BlankLot>> of, int page, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var book = of(db.BlankLots.AsNoTracking()).SelectMany(lot => lot.Movements, (lot, line) => new { Line = line, lot.LotNumber, lot.PurchaseLine });
        var whole = await book.GroupBy(_ => 1).Select(all => new { Count = all.Count(), OnHand = all.Sum(one => one.Line.OnHandChange), Allocated = all.Sum(one => one.Line.AllocatedChange) }).SingleOrDefaultAsync(cancel);
        var (count, pages) = (whole?.Count ?? 0, Math.Max(1, ((whole?.Count ?? 0) + BookPage.Size - 1) / BookPage.Size));
        var number = Math.Clamp(page, 1, pages);
        var newestFirst = book.OrderByDescending(one => one.Line.At).ThenByDescending(one => one.Line.Id);
        var newer = await newestFirst.Take((number - 1) * BookPage.Size).Select(one => new { one.Line.OnHandChange, one.Line.AllocatedChange }).ToListAsync(cancel);
        var (onHand, allocated) = ((whole?.OnHand ?? 0) - newer.Sum(line => line.OnHandChange), (whole?.Allocated ?? 0) - newer.Sum(line => line.AllocatedChange));
        var lines = new List<BookLine>();
        foreach (var one in await newestFirst.Skip(newer.Count).Take(BookPage.Size).ToListAsync(cancel))
        {
            lines.Add(new BookLine(one.Line, one.LotNumber, one.Line.Kind == StockMovementKind.Receipt ? one.PurchaseLine : null, onHand, allocated));
            (onHand, allocated) = (onHand - one.Line.OnHandChange, allocated - one.Line.AllocatedChange);
        }
        return new BookPage(lines, number, pages, count);
    }
}
