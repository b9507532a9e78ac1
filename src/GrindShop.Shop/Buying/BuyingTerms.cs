using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>How a part is sold and how safely the shop wants to have it, as they are typed; see <see cref="SupplyTerms"/>.</summary>
public sealed record TermsWanted(int Multiple, decimal SetupCharge, IReadOnlyList<PriceBreak> PriceBreaks, double? ServiceLevel);

/// <summary>Sets what buying stands on: the owner's assumptions and the terms of single parts. A stale version is refused and nothing changes.</summary>
public sealed class BuyingTerms(IDbContextFactory<ShopDb> factory)
{
    public async Task<Outcome<BuyingRules>> AssumeAsync(uint version, BuyingAssumptions wanted, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var rules = await db.BuyingRules.SingleAsync(cancel);
        return rules.Version == version ? await SaveAsync(db, rules.Set(wanted), cancel) : Stale;
    }

    /// <summary>How a part is sold by its usual supplier; null where there is no such part.</summary>
    public async Task<SupplyTerms?> FindAsync(string partNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.BlankParts.SingleOrDefaultAsync(part => part.PartNumber == partNumber, cancel) is { } part
            ? SupplyTerms.Of(part, part.SupplierId, await db.SupplyTerms.SingleOrDefaultAsync(known => known.BlankPartId == part.Id, cancel))
            : null;
    }

    /// <param name="partNumber">The part.</param>
    /// <param name="version">Of the terms on the screen; 0 where there were none.</param>
    /// <param name="wanted">What was typed.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<Outcome<SupplyTerms>> SellAsync(string partNumber, uint version, TermsWanted wanted, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.BlankParts.SingleOrDefaultAsync(part => part.PartNumber == partNumber, cancel) is not { } part)
            return new Refusal("unknownPart", $"There is no blank {partNumber} in the catalog.");
        var terms = await db.SupplyTerms.SingleOrDefaultAsync(known => known.BlankPartId == part.Id, cancel);
        if ((terms?.Version ?? 0) != version)
            return Stale;
        terms ??= db.Add(new SupplyTerms(part)).Entity;
        var sold = terms.SoldAs(wanted.Multiple, wanted.SetupCharge, wanted.PriceBreaks);
        return await SaveAsync(db, sold.Succeeded ? terms.Serve(wanted.ServiceLevel) : sold, cancel);
    }

    private static readonly Refusal Stale = new("stale", "Somebody else changed this in the meantime. Read it again, then save.");

    private static async Task<Outcome<T>> SaveAsync<T>(ShopDb db, Outcome<T> outcome, CancellationToken cancel)
    {
        if (!outcome.Succeeded)
            return outcome;
        try
        {
            await db.SaveAndTellAsync(BuyingNotice.Terms, cancel);
            return outcome;
        }
        catch (DbUpdateException error) when (error.IsFasterWriter())
        {
            return Stale;
        }
    }
}

/// <summary>How changes of buying are called when the web nodes are told.</summary>
public static class BuyingNotice
{
    public const string Terms = "buying terms";
}
