using System.Data;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Feasibility;

/// <summary>Families, prepared blanks and rules as they were read together. Immutable.</summary>
public sealed record CatalogContent(IReadOnlyList<EngineFamily> Families, IReadOnlyList<PreparedBlank> Blanks, ShopRules Rules)
{
    public EngineFamily? Family(string? code) => Families.FirstOrDefault(family => string.Equals(family.Code, code, StringComparison.OrdinalIgnoreCase));

    public PreparedBlank? Blank(string partNumber) => Blanks.FirstOrDefault(blank => blank.Part.PartNumber == partNumber);
}

/// <summary>
/// The catalog with its geometry, kept in memory and read anew as soon as its <see cref="CatalogVersion"/> has changed, whoever changed it
/// on whatever web node; stock is read fresh for every question.
/// </summary>
public sealed class Catalog(IDbContextFactory<ShopDb> factory)
{
    private readonly SemaphoreSlim _one = new(1, 1);
    private volatile Reading? _last;

    public async Task<CatalogContent> ContentAsync(CancellationToken cancel = default)
    {
        var version = await VersionAsync(cancel);
        if (_last is { } ready && ready.Version >= version)
            return ready.Content;
        await _one.WaitAsync(cancel);
        try
        {
            if (_last is not { } read || read.Version < version)
                _last = read = await ReadAsync(cancel);
            return read.Content;
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>Completes a specification by the family's usual values; see <see cref="SpecCompletion"/>.</summary>
    public async Task<CompletedSpec> CompleteAsync(CamSpec spec, CancellationToken cancel = default) =>
        SpecCompletion.Complete(spec, (await ContentAsync(cancel)).Family(spec.EngineFamily));

    /// <summary>Judges a complete specification against every blank of its family, with the stock of this moment.</summary>
    public async Task<FeasibilityAnswer> JudgeAsync(GrindSpec grind, CancellationToken cancel = default)
    {
        var (family, blanks, rules) = await ForAsync(grind, cancel);
        return FeasibilityJudge.Judge(grind, family, blanks, rules);
    }

    /// <summary>The closest specifications that come out of a blank, with the stock of this moment; none where this one does from stock.</summary>
    public async Task<IReadOnlyList<NearestGrind>> NearestAsync(GrindSpec grind, CancellationToken cancel = default) =>
        await NearestAsync(await JudgeAsync(grind, cancel), cancel);

    /// <summary>The same for a specification that has just been judged.</summary>
    public async Task<IReadOnlyList<NearestGrind>> NearestAsync(FeasibilityAnswer answer, CancellationToken cancel = default)
    {
        var (family, blanks, rules) = await ForAsync(answer.Grind, cancel);
        return NearestGrinds.Of(answer, family, blanks, rules, cancel);
    }

    private async Task<(EngineFamily Family, List<StockedBlank> Blanks, ShopRules Rules)> ForAsync(GrindSpec grind, CancellationToken cancel)
    {
        var content = await ContentAsync(cancel);
        var family = content.Family(grind.EngineFamily) ?? throw new ArgumentException("Unknown engine family.", nameof(grind));
        var available = await AvailableAsync(cancel);
        var blanks = content.Blanks.Where(blank => blank.Part.EngineFamily.Code == family.Code);
        return (family, [.. blanks.Select(blank => new StockedBlank(blank, available.GetValueOrDefault(blank.Part.Id)))], content.Rules);
    }

    /// <summary>Blanks in stock, not in quarantine and not promised to a job, by part id; parts without any are left out.</summary>
    public async Task<IReadOnlyDictionary<int, int>> AvailableAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.BlankLots.Where(lot => lot.QuarantineReason == null).GroupBy(lot => lot.BlankPartId)
            .Select(lots => new { lots.Key, Free = lots.Sum(lot => lot.OnHand - lot.Allocated) })
            .Where(part => part.Free > 0)
            .ToDictionaryAsync(part => part.Key, part => part.Free, cancel);
    }

    private async Task<long> VersionAsync(CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.CatalogVersions.Select(version => version.Number).SingleAsync(cancel);
    }

    /// <summary>All of it and its version from one snapshot of the database.</summary>
    private async Task<Reading> ReadAsync(CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var snapshot = await db.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancel);
        var version = await db.CatalogVersions.Select(version => version.Number).SingleAsync(cancel);
        var families = await db.EngineFamilies.AsNoTracking().OrderBy(family => family.Id).ToListAsync(cancel);
        var parts = await db.BlankParts.AsNoTrackingWithIdentityResolution()
            .Include(part => part.EngineFamily).Include(part => part.Supplier).OrderBy(part => part.PartNumber).ToListAsync(cancel);
        var rules = await RulesAsync(db, cancel);
        return new Reading(version, new CatalogContent(families, [.. parts.AsParallel().AsOrdered().Select(PreparedBlank.Of)], rules));
    }

    private static async Task<ShopRules> RulesAsync(ShopDb db, CancellationToken cancel) => new(
        await db.Settings.AsNoTracking().SingleAsync(cancel),
        await db.WrittenRulesAsync(cancel));

    private sealed record Reading(long Version, CatalogContent Content);
}
