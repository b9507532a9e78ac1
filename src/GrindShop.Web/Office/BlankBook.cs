using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Web.Office;

/// <summary>A part with its stock; every figure is a sum over its lots and purchase orders.</summary>
public sealed record BlankStock(BlankPart Part, int OnHand, int Allocated, int Available, int OnOrder, DateTimeOffset? Oldest);

/// <summary>What the pages about blanks show.</summary>
public sealed class BlankBook(IDbContextFactory<ShopDb> factory)
{
    public async Task<IReadOnlyList<BlankStock>> ListAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var parts = await Parts(db).OrderBy(part => part.PartNumber).ToListAsync(cancel);
        var lots = (await db.BlankLots.AsNoTracking().Where(lot => lot.OnHand > 0).ToListAsync(cancel)).ToLookup(lot => lot.BlankPartId);
        var coming = await db.OnOrderAsync(cancel);
        return [.. parts.Select(part => Of(part, [.. lots[part.Id]], coming.GetValueOrDefault(part.Id)))];
    }

    /// <summary>The part, or null where there is none of this number.</summary>
    public async Task<BlankPart?> FindAsync(string partNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Parts(db).SingleOrDefaultAsync(part => part.PartNumber == partNumber, cancel);
    }

    public async Task<BlankView?> ViewAsync(string partNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await Parts(db).SingleOrDefaultAsync(part => part.PartNumber == partNumber, cancel) is not { } part)
            return null;
        var lots = await db.BlankLots.AsNoTracking().Include(lot => lot.Movements).Where(lot => lot.BlankPartId == part.Id).OrderByDescending(lot => lot.ReceivedAt).ThenByDescending(lot => lot.Id).ToListAsync(cancel);
        return new BlankView(
            part, StockSums.Of(lots), await ComingAsync(db, part, cancel), lots,
            await db.BlankPartEvents.AsNoTracking().Where(line => line.BlankPartId == part.Id).OrderByDescending(line => line.Id).ToListAsync(cancel),
            await db.BlankFiles.AsNoTracking().Where(file => file.BlankPartId == part.Id).OrderBy(file => file.Id).Select(file => new BlankFileRow(file.Id, file.Name, file.MediaType, file.By, file.At)).ToListAsync(cancel),
            await db.BlankParts.Where(other => other.Supersedes == partNumber).Select(other => other.PartNumber).SingleOrDefaultAsync(cancel));
    }

    /// <summary>The numbers of the orders that jobs belong to, by job code.</summary>
    public async Task<IReadOnlyDictionary<string, string>> OrdersOfAsync(IReadOnlyList<string> jobs, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.Jobs.Where(job => jobs.Contains(job.Code)).Select(job => new { job.Code, job.Order.Number }).ToDictionaryAsync(job => job.Code, job => job.Number, cancel);
    }

    private static Task<List<ComingLine>> ComingAsync(ShopDb db, BlankPart part, CancellationToken cancel) => (
        from order in db.PurchaseOrders
        where order.State == PurchaseState.Sent || order.State == PurchaseState.PartlyReceived
        from line in order.Lines
        where line.BlankPartId == part.Id && line.Received < line.Quantity
        orderby line.ExpectedOn, order.Id
        select new ComingLine(order.Number, line.Quantity - line.Received, line.ExpectedOn)).ToListAsync(cancel);

    private static BlankStock Of(BlankPart part, IReadOnlyList<BlankLot> lots, int coming) => new(
        part, lots.Sum(lot => lot.OnHand), lots.Sum(lot => lot.Allocated), lots.Sum(lot => lot.Available), coming, lots.Select(lot => (DateTimeOffset?)lot.ReceivedAt).Min());

    private static IQueryable<BlankPart> Parts(ShopDb db) => db.WholeParts().AsNoTrackingWithIdentityResolution();
}

/// <summary>Everything about one part.</summary>
public sealed record BlankView(
    BlankPart Part, StockSums Sums, IReadOnlyList<ComingLine> Coming, IReadOnlyList<BlankLot> Lots, IReadOnlyList<BlankPartEvent> History, IReadOnlyList<BlankFileRow> Files, string? ReplacedBy);

/// <summary>Blanks of a part that a purchase order still owes.</summary>
public sealed record ComingLine(string Number, int Missing, DateOnly ExpectedOn);

/// <summary>A picture or drawing without its bytes.</summary>
public sealed record BlankFileRow(int Id, string Name, string MediaType, string By, DateTimeOffset At)
{
    public bool IsPicture => MediaType is "image/png" or "image/jpeg";
}
