using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>The catalog as one transaction sees it, and its version.</summary>
internal sealed class CatalogState
{
    private readonly ShopDb _db;

    private CatalogState(ShopDb db) => _db = db;

    public required long Version { get; init; }

    public required IReadOnlyDictionary<string, BlankPart> Parts { get; init; }

    public required IReadOnlyDictionary<string, EngineFamily> Families { get; init; }

    public required IReadOnlyDictionary<string, Vendor> Vendors { get; init; }

    /// <summary>Reads it and keeps everybody else from changing it until the transaction ends.</summary>
    public static async Task<CatalogState> LockAsync(ShopDb db, CancellationToken cancel)
    {
        await db.Database.ExecuteSqlRawAsync("SELECT 1 FROM catalog_version FOR UPDATE", cancel);
        return await ReadAsync(db, cancel);
    }

    public static async Task<CatalogState> ReadAsync(ShopDb db, CancellationToken cancel) => new(db)
    {
        Version = await db.CatalogVersions.Select(version => version.Number).SingleAsync(cancel),
        Parts = await db.WholeParts().ToDictionaryAsync(part => part.PartNumber, cancel),
        Families = await db.EngineFamilies.ToDictionaryAsync(family => family.Code, StringComparer.OrdinalIgnoreCase, cancel),
        Vendors = await db.Vendors.ToDictionaryAsync(vendor => vendor.Code, StringComparer.OrdinalIgnoreCase, cancel),
    };

    /// <summary>Adds the part, or makes the old one like it, with a line of history; a part that has not changed is left alone.</summary>
    public BlankPart Write(BlankPart part, BlankPart? before, string why, string by, DateTimeOffset at)
    {
        if (before is null)
        {
            _db.Add(part);
            _db.Add(new BlankPartEvent("added", by, at, why.Trim(), []) { BlankPart = part });
            return part;
        }
        var changes = BlankColumns.Changes(before, part);
        if (changes.Count == 0)
            return before;
        var old = _db.Entry(before);
        foreach (var property in _db.Entry(part).Properties.Where(property => !property.Metadata.IsKey() && !property.Metadata.IsConcurrencyToken))
            old.Property(property.Metadata).CurrentValue = property.CurrentValue;
        if (changes.Any(change => change.Column == SourceText.Column))
            Replace(before, part);
        _db.Add(new BlankPartEvent("changed", by, at, why.Trim(), changes) { BlankPart = before });
        return before;
    }

    /// <summary>The part's own row is written too, so that somebody who looks at the older state is noticed.</summary>
    private void Replace(BlankPart before, BlankPart part)
    {
        before.OtherSources.Clear();
        before.OtherSources.AddRange(part.OtherSources);
        _db.Entry(before).Property(old => old.Notes).IsModified = true;
    }
}
