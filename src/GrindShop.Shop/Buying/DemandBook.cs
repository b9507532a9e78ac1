using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>
/// Blanks that cams took, week by week: one for every allocation that was not given back, and one for every accepted cam that still waits. A part is
/// watched from its first lot on, or from the shop's first where it never had one.
/// </summary>
internal sealed class DemandBook
{
    private readonly DateTimeOffset _now;
    private readonly Dictionary<int, DateTimeOffset> _watched;
    private readonly ILookup<int, DateTimeOffset> _taken;
    private readonly ILookup<string, WaitingCams> _waiting;

    private DemandBook(DateTimeOffset now, Dictionary<int, DateTimeOffset> watched, ILookup<int, DateTimeOffset> taken, ILookup<string, WaitingCams> waiting) =>
        (_now, _watched, _taken, _waiting) = (now, watched, taken, waiting);

    public static async Task<DemandBook> ReadAsync(ShopDb db, DateTimeOffset now, CancellationToken cancel)
    {
        var watched = await db.BlankLots.GroupBy(lot => lot.BlankPartId).Select(lots => new { lots.Key, First = lots.Min(lot => lot.ReceivedAt) }).ToDictionaryAsync(part => part.Key, part => part.First, cancel);
        var moves = await db.BlankLots.AsNoTracking().SelectMany(lot => lot.Movements, (lot, line) => new { lot.BlankPartId, Line = line })
            .Where(move => (move.Line.Kind == StockMovementKind.Allocate || move.Line.Kind == StockMovementKind.Release) && move.Line.At > now.AddDays(-7 * BuyingBook.MostWeeks))
            .OrderBy(move => move.Line.Id).ToListAsync(cancel);
        var taken = moves.GroupBy(move => (move.BlankPartId, move.Line.BlankLotId)).SelectMany(lot => KeptBlanks.Of(lot.Select(move => move.Line)).Select(line => (lot.Key.BlankPartId, line.At)));
        return new DemandBook(now, watched, taken.ToLookup(blank => blank.BlankPartId, blank => blank.At), (await db.WaitingCamsAsync(cancel)).ToLookup(cams => cams.PartNumber));
    }

    /// <param name="part">The part.</param>
    /// <param name="older">The parts that it replaces: what was wanted of them is wanted of it.</param>
    public DemandHistory Of(BlankPart part, IEnumerable<BlankPart> older)
    {
        BlankPart[] all = [part, .. older];
        var since = all.Where(each => _watched.ContainsKey(each.Id)).Select(each => _watched[each.Id]).DefaultIfEmpty(_watched.Values.DefaultIfEmpty(_now).Min()).Min();
        var weeks = new int[Math.Clamp(WeeksAgo(since), 0, BuyingBook.MostWeeks)];
        foreach (var (at, count) in all.SelectMany(Wanted))
            if (WeeksAgo(at) is var week && week >= 0 && week < weeks.Length)
                weeks[^(week + 1)] += count;
        return new DemandHistory(weeks);
    }

    private IEnumerable<(DateTimeOffset At, int Count)> Wanted(BlankPart part) =>
        _taken[part.Id].Select(at => (at, 1)).Concat(_waiting[part.PartNumber].Select(cams => (cams.Since, cams.Count)));

    private int WeeksAgo(DateTimeOffset at) => (int)Math.Floor((_now - at).TotalDays / 7);
}
