using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Records;

/// <summary>What the owner typed for the whole shop: the text of every field by its key, on the version that was seen.</summary>
public sealed record ShopEdit(uint Version, IReadOnlyDictionary<string, string> Texts, string Why);

/// <summary>Changed settings, or what is wrong: at a field (by its key), or with the whole.</summary>
public sealed record ShopEditResult(IReadOnlyDictionary<string, string> Wrong, Refusal? Refusal)
{
    public bool Succeeded => Wrong.Count == 0 && Refusal is null;
}

/// <summary>Where the owner changes the shop's own settings: each changed field is one line of the history.</summary>
public sealed class ShopSettingsBook(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    public const string KeyStart = "shop/";

    public async Task<(ShopSettings Settings, IReadOnlyList<RuleChange> History)> ReadAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return (await db.Settings.AsNoTracking().SingleAsync(cancel), await db.HistoryAsync(KeyStart, cancel: cancel));
    }

    public async Task<ShopEditResult> ChangeAsync(ShopEdit edit, string by, CancellationToken cancel = default)
    {
        if (string.IsNullOrWhiteSpace(edit.Why) || edit.Why.Length > ChangeBook.LongestWhy)
            return Refused(new Refusal("noWhy", $"Say in at most {ChangeBook.LongestWhy} characters why you change it; it stays in the history."));
        await using var db = await factory.CreateDbContextAsync(cancel);
        var settings = await db.Settings.SingleAsync(cancel);
        if (settings.Version != edit.Version)
            return Refused(await StaleAsync(db, cancel));
        var wrong = Write(db, settings, edit, by);
        if (wrong.Count > 0)
            return new ShopEditResult(wrong, null);
        if (!db.ChangeTracker.HasChanges())
            return Refused(new Refusal("unchanged", "Nothing was changed."));
        return await db.TrySaveAsync(cancel) ? new ShopEditResult(wrong, null) : Refused(await StaleAsync(db, cancel));
    }

    private Dictionary<string, string> Write(ShopDb db, ShopSettings settings, ShopEdit edit, string by)
    {
        var wrong = new Dictionary<string, string>();
        foreach (var field in ShopFields.All.Where(field => edit.Texts.ContainsKey(field.Key)))
        {
            var before = field.Words(settings);
            if (field.Set(settings, edit.Texts[field.Key].Trim()) is { } problem)
                wrong[field.Key] = problem;
            else if (field.Words(settings) is var after && after != before)
                db.Add(new RuleChange(KeyStart + field.Key, field.Name, before, after, edit.Why.Trim(), by, clock.GetUtcNow()));
        }
        return wrong;
    }

    private static async Task<Refusal> StaleAsync(ShopDb db, CancellationToken cancel)
    {
        var last = (await db.HistoryAsync(KeyStart, 1, cancel)).FirstOrDefault();
        return new Refusal("stale", $"{(last is null ? "The settings were changed in the meantime." : $"{last.Subject}: {last.InWords()}")} What you typed is kept; look at the change and save again.");
    }

    private static ShopEditResult Refused(Refusal refusal) => new(new Dictionary<string, string>(), refusal);
}
