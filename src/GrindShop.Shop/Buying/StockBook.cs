using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>The stock position of every part at one moment.</summary>
internal sealed class StockBook
{
    private readonly ILookup<int, BlankLot> _lots;
    private readonly Dictionary<int, int> _onOrder, _inDrafts;
    private readonly ILookup<string, WaitingCams> _waiting;

    private StockBook(IEnumerable<BlankLot> lots, Dictionary<int, int> onOrder, Dictionary<int, int> inDrafts, IEnumerable<WaitingCams> waiting) =>
        (_lots, _onOrder, _inDrafts, _waiting) = (lots.ToLookup(lot => lot.BlankPartId), onOrder, inDrafts, waiting.ToLookup(cams => cams.PartNumber));

    public static async Task<StockBook> ReadAsync(ShopDb db, CancellationToken cancel) => new(
        await db.BlankLots.AsNoTracking().Where(lot => lot.OnHand > 0).ToListAsync(cancel),
        await db.OnOrderAsync(cancel),
        await db.InDraftsAsync(cancel),
        await db.WaitingCamsAsync(cancel));

    /// <param name="part">The part.</param>
    /// <param name="older">The parts that it replaces: they are used up first, and who waits for them can have this one.</param>
    public StockPosition Of(BlankPart part, IEnumerable<BlankPart> older) => Of(part) with { OfReplaced = older.Sum(each => Of(each).Position) };

    private StockPosition Of(BlankPart part) => new(
        _lots[part.Id].Sum(lot => lot.OnHand),
        _lots[part.Id].Sum(lot => lot.Allocated),
        _lots[part.Id].Sum(lot => lot.Available),
        _onOrder.GetValueOrDefault(part.Id),
        _inDrafts.GetValueOrDefault(part.Id),
        _waiting[part.PartNumber].Sum(cams => cams.Count));
}
