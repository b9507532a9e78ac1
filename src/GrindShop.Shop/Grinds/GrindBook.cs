using System.Globalization;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Grinds;

/// <summary>The shop's list of grinds: what customers may start from, and how the owner keeps it.</summary>
public sealed class GrindBook(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>The grinds on offer; with <paramref name="retired"/> the retired ones too.</summary>
    public async Task<IReadOnlyList<CatalogGrind>> ListAsync(bool retired = false, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.CatalogGrinds.AsNoTrackingWithIdentityResolution().Include(grind => grind.EngineFamily)
            .Where(grind => retired || !grind.Retired).OrderBy(grind => grind.EngineFamilyId).ThenBy(grind => grind.Code).ToListAsync(cancel);
    }

    /// <summary>One grind with its history, or null.</summary>
    public async Task<CatalogGrind?> FindAsync(string code, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(grind => grind.Code == code, cancel);
    }

    public async Task<Outcome<CatalogGrind>> AddAsync(GrindEntry entry, string why, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (Unreasoned(why) is { } unreasoned)
            return unreasoned;
        var family = await FamilyAsync(db, entry, cancel);
        if (entry.Problems(family).FirstOrDefault() is { } problem)
            return new Refusal("badGrind", problem.Message);
        var grind = CatalogGrind.Add(await NextCodeAsync(db, family!, cancel), family!, entry, by, clock.GetUtcNow(), why.Trim());
        db.Add(grind);
        return await db.TrySaveAsync(cancel) ? grind : new Refusal("stale", "Somebody else added a grind in the same moment. What you typed is kept; save again.");
    }

    public Task<Outcome<CatalogGrind>> ChangeAsync(string code, uint version, GrindEntry entry, string why, string by, CancellationToken cancel = default) =>
        ActAsync(code, version, async (db, grind) =>
        {
            var family = await FamilyAsync(db, entry, cancel);
            return entry.Problems(family).FirstOrDefault() is { } problem
                ? new Refusal("badGrind", problem.Message)
                : grind.Change(family!, entry, by, clock.GetUtcNow(), why.Trim());
        }, why, cancel);

    public Task<Outcome<CatalogGrind>> RetireAsync(string code, uint version, string why, string by, CancellationToken cancel = default) =>
        ActAsync(code, version, (_, grind) => Task.FromResult(grind.Retire(by, clock.GetUtcNow(), why.Trim())), why, cancel);

    public Task<Outcome<CatalogGrind>> BringBackAsync(string code, uint version, string why, string by, CancellationToken cancel = default) =>
        ActAsync(code, version, (_, grind) => Task.FromResult(grind.BringBack(by, clock.GetUtcNow(), why.Trim())), why, cancel);

    private async Task<Outcome<CatalogGrind>> ActAsync(string code, uint version, Func<ShopDb, CatalogGrind, Task<Outcome<CatalogGrind>>> act, string why, CancellationToken cancel)
    {
        if (Unreasoned(why) is { } unreasoned)
            return unreasoned;
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await Whole(db).SingleOrDefaultAsync(grind => grind.Code == code, cancel) is not { } grind)
            return new Refusal("unknown", $"There is no grind {code}.");
        if (grind.Version != version)
            return Stale(grind);
        var outcome = await act(db, grind);
        if (!outcome.Succeeded)
            return outcome;
        return await db.TrySaveAsync(cancel) ? outcome : Stale((await FindAsync(code, cancel))!);
    }

    private static Refusal? Unreasoned(string why) =>
        string.IsNullOrWhiteSpace(why) ? new Refusal("why", "Say why: it stands in the grind's history.")
        : SpecCheck.Text(why, ChangeBook.LongestWhy, "why", "The why") is { } wrong ? new Refusal("badText", wrong.Message)
        : null;

    private static IQueryable<CatalogGrind> Whole(ShopDb db) =>
        db.CatalogGrinds.Include(grind => grind.EngineFamily).Include(grind => grind.History.OrderBy(line => line.Id));

    private static Task<EngineFamily?> FamilyAsync(ShopDb db, GrindEntry entry, CancellationToken cancel) =>
        db.EngineFamilies.SingleOrDefaultAsync(family => family.Code == entry.Spec.EngineFamily, cancel);

    /// <summary>The family's code and the next number of its grinds.</summary>
    private static async Task<string> NextCodeAsync(ShopDb db, EngineFamily family, CancellationToken cancel)
    {
        var start = $"{family.Code}-";
        var codes = await db.CatalogGrinds.Where(grind => grind.Code.StartsWith(start)).Select(grind => grind.Code).ToListAsync(cancel);
        var last = codes.Select(code => int.TryParse(code[start.Length..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0).DefaultIfEmpty(100).Max();
        return start + (last + 1).ToString(CultureInfo.InvariantCulture);
    }

    private static Refusal Stale(CatalogGrind grind)
    {
        var last = grind.History.OrderBy(line => line.Id).Last();
        return new Refusal("stale", $"{last.By} changed this grind in the meantime ({last.Kind.Words()}): {last.Why.TrimEnd('.')}. What you typed is kept; look at the change and save again.");
    }
}
