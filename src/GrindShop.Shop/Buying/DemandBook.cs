using GrindShop.Shop.Blanks;
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
    private readonly ILookup<int, (DateTimeOffset At, int Count)> _taken;
    private readonly ILookup<string, WaitingCams> _waiting;

    private DemandBook(DateTimeOffset now, Dictionary<int, DateTimeOffset> watched, ILookup<int, (DateTimeOffset, int)> taken, ILookup<string, WaitingCams> waiting) =>
        (_now, _watched, _taken, _waiting) = (now, watched, taken, waiting);

    public static async Task<DemandBook> ReadAsync(ShopDb db, DateTimeOffset now, CancellationToken cancel)
    {
        var watched = await db.BlankLots.GroupBy(lot => lot.BlankPartId).Select(lots => new { lots.Key, First = lots.Min(lot => lot.ReceivedAt) }).ToDictionaryAsync(part => part.Key, part => part.First, cancel);
        var moves = await db.BlankLots.SelectMany(lot => lot.Movements, (lot, move) => new { lot.BlankPartId, move.Kind, move.At })
            .Where(move => (move.Kind == StockMovementKind.Allocate || move.Kind == StockMovementKind.Release) && move.At > now.AddDays(-7 * BuyingBook.MostWeeks)).ToListAsync(cancel);
        return new DemandBook(now, watched, moves.ToLookup(move => move.BlankPartId, move => (move.At, move.Kind == StockMovementKind.Allocate ? 1 : -1)), (await db.WaitingCamsAsync(cancel)).ToLookup(cams => cams.PartNumber));
    }

    public DemandHistory Of(BlankPart part)
    {
        var since = _watched.TryGetValue(part.Id, out var first) ? first : _watched.Values.DefaultIfEmpty(_now).Min();
        var weeks = new int[Math.Clamp(WeeksAgo(since), 0, BuyingBook.MostWeeks)];
        foreach (var (at, count) in _taken[part.Id].Concat(_waiting[part.PartNumber].Select(cams => (cams.Since, cams.Count))))
            if (WeeksAgo(at) is var week && week >= 0 && week < weeks.Length)
                weeks[^(week + 1)] += count;
        return new DemandHistory([.. weeks.Select(week => Math.Max(0, week))]);
    }

    private int WeeksAgo(DateTimeOffset at) => (int)Math.Floor((_now - at).TotalDays / 7);
}
