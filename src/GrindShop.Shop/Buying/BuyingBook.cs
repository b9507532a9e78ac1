using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>Reads what buying decides on: stock, demand and lead-time history, terms and assumptions.</summary>
public sealed class BuyingBook(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>The history reaches no further back.</summary>
    public const int MostWeeks = 52;

    public async Task<BuyingRules> RulesAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.BuyingRules.AsNoTracking().SingleAsync(cancel);
    }

    /// <summary>Every part of the catalog with what should be bought of it, by part number.</summary>
    public async Task<IReadOnlyList<PartNeed>> NeedsAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var parts = await db.BlankParts.AsNoTrackingWithIdentityResolution().Include(part => part.Supplier).Include(part => part.EngineFamily).OrderBy(part => part.PartNumber).ToListAsync(cancel);
        var terms = await db.SupplyTerms.AsNoTracking()
            .Include(terms => terms.BlankPart).ThenInclude(part => part.Supplier)
            .Include(terms => terms.BlankPart).ThenInclude(part => part.EngineFamily).ToDictionaryAsync(terms => terms.BlankPartId, cancel);
        var (rules, stock, demand, leads) = (await db.BuyingRules.AsNoTracking().SingleAsync(cancel), await StockBook.ReadAsync(db, cancel), await DemandBook.ReadAsync(db, clock.GetUtcNow(), cancel), await LeadTimeBook.ReadAsync(db, cancel));
        return [.. parts.Select(part => new PartNeed(terms.GetValueOrDefault(part.Id) ?? new SupplyTerms(part), stock.Of(part), demand.Of(part), leads.Of(part), rules))];
    }
}
