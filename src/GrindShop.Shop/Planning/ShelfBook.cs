using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Planning;

/// <summary>Reads a shelf plan's demand from the order book and its blanks from the catalog.</summary>
public sealed class ShelfBook(IDbContextFactory<ShopDb> factory, Catalog catalog)
{
    /// <summary>New cams of the family that were asked for since a day.</summary>
    public async Task<ShelfHistory> HistoryAsync(EngineFamily family, DateTimeOffset since, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var orders = await db.Orders.AsNoTracking().Include(order => order.Cams)
            .Where(order => order.ReceivedAt >= since && order.State != OrderState.Cancelled).OrderBy(order => order.ReceivedAt).ThenBy(order => order.Id).ToListAsync(cancel);
        var wishes = orders.SelectMany(order => order.Cams.Where(cam => cam.Kind == WorkKind.NewGrind && cam.Spec.EngineFamily == family.Code).Select(cam => Wish(order, cam, family))).ToList();
        return new ShelfHistory([.. wishes.OfType<ShelfDemand>()], wishes.Count(wish => wish is null));
    }

    /// <summary>The family's blanks but replaced ones of which none is left, which of them are free in stock, and which are only used up.</summary>
    public async Task<(IReadOnlyList<PreparedBlank> Blanks, IReadOnlyList<string> Today, IReadOnlyList<string> UsedUp)> BlanksAsync(EngineFamily family, CancellationToken cancel = default)
    {
        var content = await catalog.ContentAsync(cancel);
        var free = await catalog.AvailableAsync(cancel);
        var blanks = content.Blanks.Where(blank => blank.Part.EngineFamily.Code == family.Code && (free.ContainsKey(blank.Part.Id) || !content.Succession.IsReplaced(blank.Part))).ToList();
        return (blanks, Numbers(blank => free.ContainsKey(blank.Part.Id)), Numbers(blank => content.Succession.IsReplaced(blank.Part)));

        IReadOnlyList<string> Numbers(Func<PreparedBlank, bool> which) => [.. blanks.Where(which).Select(blank => blank.Part.PartNumber)];
    }

    private static ShelfDemand? Wish(Order order, OrderCam cam, EngineFamily family) =>
        SpecCompletion.Complete(cam.Spec, family).Grind is { } grind && ShelfDemand.KindOf(order.State, cam.Verdict) is { } kind
            ? new ShelfDemand(order.Number, order.ReceivedAt, kind, cam.Quantity, string.IsNullOrWhiteSpace(cam.Spec.Use) ? ShelfDemand.NoUse : cam.Spec.Use.Trim().ToLowerInvariant(), grind)
            : null;
}
