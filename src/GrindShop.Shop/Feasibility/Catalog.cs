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
    public Succession Succession { get; } = new(Blanks.Select(blank => blank.Part));

    public EngineFamily? Family(string? code) => Families.FirstOrDefault(family => string.Equals(family.Code, code, StringComparison.OrdinalIgnoreCase));

    public PreparedBlank? Blank(string partNumber) => Blanks.FirstOrDefault(blank => blank.Part.PartNumber == partNumber);

    /// <summary>The blank as it was judged: with the metal of its lot where that is less than the catalog says.</summary>
    public PreparedBlank? Blank(BlankFit fit) => Blank(fit.PartNumber) is { } blank ? blank.With(fit.Metal ?? blank.Metal) : null;
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
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await ContentAsync(db, cancel);
    }

    /// <summary>The same on the caller's connection: whoever holds one in a transaction must not wait for a second.</summary>
    public async Task<CatalogContent> ContentAsync(ShopDb db, CancellationToken cancel = default)
    {
        var version = await VersionAsync(db, cancel);
        if (_last is { } ready && ready.Version >= version)
            return ready.Content;
        await _one.WaitAsync(cancel);
        try
        {
            if (_last is not { } read || read.Version < version)
                _last = read = await ReadAsync(db, cancel);
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
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await JudgeAsync(db, grind, cancel);
    }

    /// <summary>The same on the caller's connection and in its transaction.</summary>
    public async Task<FeasibilityAnswer> JudgeAsync(ShopDb db, GrindSpec grind, CancellationToken cancel = default)
    {
        var (family, blanks, rules) = await ForAsync(db, grind, cancel);
        return FeasibilityJudge.Judge(grind, family, blanks, rules);
    }

    /// <summary>The closest specifications that come out of a blank, with the stock of this moment; none where this one does from stock.</summary>
    public async Task<IReadOnlyList<NearestGrind>> NearestAsync(GrindSpec grind, CancellationToken cancel = default) =>
        await NearestAsync(await JudgeAsync(grind, cancel), cancel);

    /// <summary>The same for a specification that has just been judged.</summary>
    public async Task<IReadOnlyList<NearestGrind>> NearestAsync(FeasibilityAnswer answer, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var (family, blanks, rules) = await ForAsync(db, answer.Grind, cancel);
        return NearestGrinds.Of(answer, family, blanks, rules, cancel);
    }

    private async Task<(EngineFamily Family, List<StockedBlank> Blanks, ShopRules Rules)> ForAsync(ShopDb db, GrindSpec grind, CancellationToken cancel)
    {
        var content = await ContentAsync(db, cancel);
        var family = content.Family(grind.EngineFamily) ?? throw new ArgumentException("Unknown engine family.", nameof(grind));
        return (family, await StockedAsync(db, content, family, cancel), content.Rules);
    }

    /// <summary>The family's blanks with the stock of this moment, a lot that measures less apart; a replaced part only while some of it are left.</summary>
    public async Task<IReadOnlyList<StockedBlank>> StockedAsync(EngineFamily family, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await StockedAsync(db, await ContentAsync(db, cancel), family, cancel);
    }

    private static async Task<List<StockedBlank>> StockedAsync(ShopDb db, CatalogContent content, EngineFamily family, CancellationToken cancel)
    {
        var lots = (await FreeLotsAsync(db, family, cancel)).ToLookup(lot => lot.PartId);
        return [.. from blank in content.Blanks
                   where blank.Part.EngineFamily.Code == family.Code && (lots[blank.Part.Id].Any() || !content.Succession.IsReplaced(blank.Part))
                   from stocked in FreeLot.Of(blank, lots[blank.Part.Id])
                   select stocked];
    }

    /// <summary>Lots of the family with a blank that may be promised, oldest first.</summary>
    private static Task<List<FreeLot>> FreeLotsAsync(ShopDb db, EngineFamily family, CancellationToken cancel) =>
        db.BlankLots.AsNoTracking().Where(lot => lot.BlankPart.EngineFamilyId == family.Id && lot.QuarantineReason == null && lot.OnHand > lot.Allocated)
            .OrderBy(lot => lot.ReceivedAt).ThenBy(lot => lot.Id)
            .Select(lot => new FreeLot(lot.BlankPartId, lot.LotNumber, lot.OnHand - lot.Allocated, lot.MeasuredStockIn, lot.MeasuredCaseIn)).ToListAsync(cancel);

    /// <summary>What this very lot gives for a cam; null where its part is not in the catalog any more.</summary>
    public async Task<BlankFit?> JudgeLotAsync(ShopDb db, GrindSpec grind, BlankLot lot, CancellationToken cancel = default)
    {
        var content = await ContentAsync(db, cancel);
        if (content.Blank(lot.BlankPart.PartNumber) is not { } blank)
            return null;
        var metal = lot.Metal == blank.Metal ? null : lot.LotNumber;
        return FeasibilityJudge.Judge(grind, blank.Part.EngineFamily, [new StockedBlank(blank.With(lot.Metal), lot.Available, metal)], content.Rules).Blanks.FirstOrDefault();
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

    private static Task<long> VersionAsync(ShopDb db, CancellationToken cancel) => db.CatalogVersions.Select(version => version.Number).SingleAsync(cancel);

    /// <summary>All of it and its version from one snapshot of the database; within a caller's transaction the version is the older, so that nothing is missed.</summary>
    private static async Task<Reading> ReadAsync(ShopDb db, CancellationToken cancel)
    {
        await using var snapshot = db.Database.CurrentTransaction is null ? await db.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancel) : null;
        var version = await VersionAsync(db, cancel);
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
