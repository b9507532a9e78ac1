using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Feasibility;

/// <summary>What the owner makes of a rule, and the version it was decided on.</summary>
public sealed record RuleEdit(string Key, uint Version, RuleVerdict Verdict, string Reason, string Why);

/// <summary>Where the owner reads and changes the rules. A change counts at once, on every web node, and stays in the history.</summary>
public sealed class RuleBook(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    public const int LongestReason = 300;

    /// <summary>Every rule there is, the unwritten ones as they start.</summary>
    public async Task<IReadOnlyList<CompatibilityRule>> AllAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return [.. StartingRules.All().Concat(await db.WrittenRulesAsync(cancel)).GroupBy(rule => rule.Key).Select(rules => rules.Last())];
    }

    /// <summary>The rule and its changes, newest first; null where there is no rule of this key.</summary>
    public async Task<(CompatibilityRule Rule, IReadOnlyList<RuleChange> History)?> FindAsync(string key, CancellationToken cancel = default)
    {
        if ((await AllAsync(cancel)).FirstOrDefault(rule => rule.Key == key) is not { } rule)
            return null;
        await using var db = await factory.CreateDbContextAsync(cancel);
        return (rule, [.. (await db.HistoryAsync(key, cancel: cancel)).Where(change => change.Key == key)]);
    }

    public async Task<Outcome<CompatibilityRule>> ChangeAsync(RuleEdit edit, string by, CancellationToken cancel = default)
    {
        if (Check(edit) is { } wrong)
            return wrong;
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await TrackedAsync(db, edit.Key, cancel) is not { } rule)
            return new Refusal("unknown", $"There is no rule {edit.Key}.");
        if (rule.Version != edit.Version)
            return await StaleAsync(edit.Key, cancel);
        if (rule.Verdict == edit.Verdict && rule.Reason == edit.Reason.Trim())
            return new Refusal("unchanged", "This is what the rule says already.");
        Write(db, rule, edit, by);
        return await db.TrySaveAsync(cancel) ? rule : await StaleAsync(edit.Key, cancel);
    }

    private static Refusal? Check(RuleEdit edit)
    {
        if (string.IsNullOrWhiteSpace(edit.Reason))
            return new Refusal("noReason", "Give the reason in words: customers and the shop read it as it stands.");
        if (string.IsNullOrWhiteSpace(edit.Why))
            return new Refusal("noWhy", "Say why you change the rule; it stays in its history.");
        return (SpecCheck.Text(edit.Reason, LongestReason, "reason", "The reason") ?? SpecCheck.Text(edit.Why, ChangeBook.LongestWhy, "why", "The why")) is { } wrong
            ? new Refusal("badText", wrong.Message)
            : null;
    }

    /// <summary>The written rule, or the starting one about to be written.</summary>
    private static async Task<CompatibilityRule?> TrackedAsync(ShopDb db, string key, CancellationToken cancel) =>
        (await db.WrittenRulesAsync(cancel)).FirstOrDefault(rule => rule.Key == key)
        ?? (StartingRules.All().FirstOrDefault(rule => rule.Key == key) is { } starting ? (CompatibilityRule)db.Add(starting).Entity : null);

    private void Write(ShopDb db, CompatibilityRule rule, RuleEdit edit, string by)
    {
        var before = rule.Words;
        rule.Change(edit.Verdict, edit.Reason.Trim());
        db.Add(new RuleChange(rule.Key, rule.Subject, before, rule.Words, edit.Why.Trim(), by, clock.GetUtcNow()));
    }

    private async Task<Refusal> StaleAsync(string key, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var last = (await db.HistoryAsync(key, cancel: cancel)).FirstOrDefault(change => change.Key == key);
        return new Refusal("stale", $"{last?.InWords() ?? "It was changed in the meantime."} What you typed is kept; look at the change and save again.");
    }
}
