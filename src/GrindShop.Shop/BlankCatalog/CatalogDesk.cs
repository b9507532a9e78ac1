using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>What became of a saved form: the part, or what is wrong in its cells, or why it could not be saved now.</summary>
public sealed record BlankSaving(BlankPart? Saved, IReadOnlyList<RowProblem> Problems, Refusal? Refusal)
{
    public static BlankSaving Wrong(IReadOnlyList<RowProblem> problems) => new(null, problems, null);

    public static BlankSaving Refused(string code, string reason) => new(null, [], new Refusal(code, reason));
}

/// <summary>Adds and changes parts one at a time, each change a line of the part's history.</summary>
public sealed class CatalogDesk(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    public async Task<IReadOnlyList<EngineFamily>> FamiliesAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.EngineFamilies.AsNoTracking().OrderBy(family => family.Code).ToListAsync(cancel);
    }

    public async Task<IReadOnlyList<Vendor>> SuppliersAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.Vendors.AsNoTracking().Where(vendor => vendor.Kind == VendorKind.BlankSupplier).OrderBy(vendor => vendor.Name).ToListAsync(cancel);
    }

    /// <summary>Saves a part from the cells of <see cref="BlankColumns"/>.</summary>
    /// <param name="cells">Every column's text.</param>
    /// <param name="version">The version that was on the screen; null for a new part.</param>
    /// <param name="why">Why it changes; needed for a change.</param>
    /// <param name="by">Who.</param>
    /// <param name="cancel">Ends it before anything is saved.</param>
    public async Task<BlankSaving> SaveAsync(IReadOnlyDictionary<string, string> cells, uint? version, string why, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var state = await CatalogState.LockAsync(db, cancel);
        var problems = new List<RowProblem>();
        var row = new CsvRow("catalog", 0, cells, problems);
        if (BlankRow.Read(row, state.Families, state.Vendors, state.Parts) is not { } part || problems.Count > 0)
            return BlankSaving.Wrong(problems);
        PartLinks.Check(row, part, [.. state.Parts.Values.Where(other => other.PartNumber != part.PartNumber), part]);
        if (problems.Count > 0)
            return BlankSaving.Wrong(problems);
        var before = state.Parts.GetValueOrDefault(part.PartNumber);
        if (Refuse(before, version, why, await LastAsync(db, before, cancel)) is { } refusal)
            return refusal;
        var saved = state.Write(part, before, why, by, clock.GetUtcNow());
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return new BlankSaving(saved, [], null);
    }

    private static BlankSaving? Refuse(BlankPart? before, uint? version, string why, BlankPartEvent? last) => (before, version) switch
    {
        (not null, null) => BlankSaving.Refused("exists", $"There is a part {before.PartNumber} already."),
        (null, not null) => BlankSaving.Refused("unknown", "A part number does not change; add a new part that replaces this one."),
        (not null, _) when before.Version != version => BlankSaving.Refused("stale", Stale(last)),
        (not null, _) when string.IsNullOrWhiteSpace(why) => BlankSaving.Refused("noReason", "Say why the part changes, in a few words."),
        _ => null,
    };

    private static string Stale(BlankPartEvent? last) => last is null
        ? "Somebody changed this part in the meantime. What you typed is kept; look at the change and save again."
        : $"{last.By} changed this part in the meantime: {string.Join(", ", last.Changes.Select(change => $"{change.Column} from {Named(change.Before)} to {Named(change.After)}"))}. What you typed is kept; look at it and save again.";

    private static string Named(string text) => text.Length == 0 ? "nothing" : text;

    private static async Task<BlankPartEvent?> LastAsync(ShopDb db, BlankPart? part, CancellationToken cancel) =>
        part is null ? null : await db.BlankPartEvents.AsNoTracking().Where(line => line.BlankPartId == part.Id).OrderByDescending(line => line.Id).FirstOrDefaultAsync(cancel);
}
