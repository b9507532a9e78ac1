using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What the owner makes of a figure of the price list, and the version it was decided on.</summary>
/// <param name="Amount">The new figure; null takes it off the list.</param>
public sealed record PriceEdit(string Key, uint Version, decimal? Amount, string Why)
{
    /// <summary>The name of an adder, and how it is measured; unheeded for anything else.</summary>
    public string Name { get; init; } = "";

    public AdderMeasure Measure { get; init; }
}

/// <summary>Where the owner reads and changes the price list. A change counts for the next price, on every web node, and stays in the history.</summary>
public sealed class PriceBook(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    public async Task<IReadOnlyList<PriceEntry>> AllAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.PriceListAsync(cancel);
    }

    /// <summary>The figure and its changes, newest first: one that is not set has version 0 and amount 0; null where no such figure can be.</summary>
    public async Task<(PriceEntry Entry, IReadOnlyList<RuleChange> History)?> FindAsync(string key, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await EntryAsync(db, key, cancel) is { } entry
            ? (entry, [.. (await db.HistoryAsync(HistoryKey(key), cancel: cancel)).Where(change => change.Key == HistoryKey(key))])
            : null;
    }

    public async Task<Outcome<PriceEntry>> ChangeAsync(PriceEdit edit, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await EntryAsync(db, edit.Key, cancel) is not { } entry)
            return new Refusal("unknown", $"The price list has no place {edit.Key}.");
        if (entry.Version != edit.Version)
            return await StaleAsync(edit.Key, cancel);
        if (PriceCheck.Problem(entry, edit) is { } wrong)
            return wrong;
        var before = Said(entry);
        Write(db, entry, edit);
        var after = edit.Amount is null ? "" : Said(entry);
        if (before == after)
            return new Refusal("unchanged", "This is what the price list says already.");
        db.Add(new RuleChange(HistoryKey(edit.Key), entry.Subject, before, after, edit.Why.Trim(), by, clock.GetUtcNow()));
        return await db.TrySaveAsync(cancel) ? entry : await StaleAsync(edit.Key, cancel);
    }

    private static void Write(ShopDb db, PriceEntry entry, PriceEdit edit)
    {
        if (edit.Amount is not { } amount)
        {
            db.Remove(entry);
            return;
        }
        if (entry.Version == 0)
            db.Add(entry);
        entry.Amount = amount;
        if (entry is PriceAdder adder)
            (adder.Name, adder.Measure) = (edit.Name.Trim(), edit.Measure);
    }

    /// <summary>The figure with the name that the owner may change too; nothing where it is not set.</summary>
    private static string Said(PriceEntry entry) =>
        entry.Version == 0 && entry.Amount == 0 ? "" : entry is PriceAdder adder ? $"{adder.Name}: {adder.Words}" : entry.Words;

    private static async Task<PriceEntry?> EntryAsync(ShopDb db, string key, CancellationToken cancel) =>
        (await db.PriceListAsync(cancel)).FirstOrDefault(entry => entry.Key == key)
        ?? (PricePlaces.Of(key, await db.EngineFamilies.ToListAsync(cancel)) is { } place && place.Key == key ? place : null);

    private static string HistoryKey(string key) => $"price/{key}";

    private async Task<Refusal> StaleAsync(string key, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var last = (await db.HistoryAsync(HistoryKey(key), cancel: cancel)).FirstOrDefault(change => change.Key == HistoryKey(key));
        return new Refusal("stale", $"{last?.InWords() ?? "It was changed in the meantime."} What you typed is kept; look at the change and save again.");
    }
}

/// <summary>May this figure become that one?</summary>
internal static class PriceCheck
{
    private const decimal MostDollars = 20_000, MostPercentUp = 300, MostPercentOff = 50;
    private const int LongestName = 80;

    public static Refusal? Problem(PriceEntry entry, PriceEdit edit)
    {
        if (string.IsNullOrWhiteSpace(edit.Why))
            return new Refusal("noWhy", "Say why you change the price; it stays in its history.");
        if (SpecCheck.Text(edit.Why, ChangeBook.LongestWhy, "why", "The why") is { } wrong)
            return new Refusal("badText", wrong.Message);
        if (edit.Amount is not { } amount)
            return Removal(entry);
        if (decimal.Round(amount, 2) != amount)
            return new Refusal("badAmount", "Give at most two decimals.");
        return entry is PriceAdder adder ? Adder(adder, edit, amount) : Amount(entry, amount);
    }

    private static Refusal? Removal(PriceEntry entry) => entry switch
    {
        { Version: 0 } => new Refusal("unchanged", "It is not on the price list."),
        PriceAdder { When: not AdderTrigger.Manual } => new Refusal("automatic", "This one applies by itself; set it to 0 to charge nothing."),
        _ => null,
    };

    private static Refusal? Amount(PriceEntry entry, decimal amount) =>
        entry is QuantityBreak
            ? Between(amount, .01m, MostPercentOff, "percent")
            : Between(amount, .01m, MostDollars, "dollars");

    private static Refusal? Adder(PriceAdder adder, PriceEdit edit, decimal amount)
    {
        if (string.IsNullOrWhiteSpace(edit.Name))
            return new Refusal("noName", "Give the name that stands on the customer's price.");
        if (SpecCheck.Text(edit.Name, LongestName, "name", "The name") is { } wrong)
            return new Refusal("badText", wrong.Message);
        var least = adder.When == AdderTrigger.Manual ? .01m : 0;
        return edit.Measure == AdderMeasure.Percent ? Between(amount, least, MostPercentUp, "percent") : Between(amount, least, MostDollars, "dollars");
    }

    private static Refusal? Between(decimal amount, decimal least, decimal most, string unit) =>
        amount >= least && amount <= most ? null : new Refusal("badAmount", FormattableString.Invariant($"The figure must lie between {least:0.##} and {most:N0} {unit}."));
}
