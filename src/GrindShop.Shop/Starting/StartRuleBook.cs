using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Starting;

/// <summary>The rules in force, who set them when and why, and how the owner changes them.</summary>
public sealed class StartRuleBook(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>Null in a shop that has set none yet.</summary>
    public async Task<StartRuleSet?> CurrentAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.StartRuleSets.AsNoTracking().OrderByDescending(set => set.Number).FirstOrDefaultAsync(cancel);
    }

    /// <summary>All sets, the newest first.</summary>
    public async Task<IReadOnlyList<StartRuleSet>> HistoryAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.StartRuleSets.AsNoTracking().OrderByDescending(set => set.Number).ToListAsync(cancel);
    }

    /// <param name="basedOn">Number of the set that was changed, 0 for none.</param>
    public async Task<Outcome<StartRuleSet>> SaveAsync(int basedOn, StartRules rules, string why, string by, CancellationToken cancel = default)
    {
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("why", "Say why the rules are changed: it stands in their history.");
        if (StartRuleCheck.Problems(rules).FirstOrDefault() is { } problem)
            return new Refusal("badRules", problem.Message);
        var current = await CurrentAsync(cancel);
        if ((current?.Number ?? 0) != basedOn)
            return Stale(current!);
        if (current is not null && !StartRuleCheck.Changes(current.Rules, rules).Any())
            return new Refusal("nothing", "Nothing is changed.");
        return await AddAsync(new StartRuleSet(basedOn + 1, rules, by, clock.GetUtcNow(), why.Trim()), cancel);
    }

    private async Task<Outcome<StartRuleSet>> AddAsync(StartRuleSet set, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        db.Add(set);
        return await db.TrySaveAsync(cancel) ? set : Stale((await CurrentAsync(cancel))!);
    }

    private static Refusal Stale(StartRuleSet current) =>
        new("stale", $"{current.By} changed the rules in the meantime: {current.Why} What you typed is kept; look at the change and save again.");
}
