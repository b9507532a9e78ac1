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

    /// <summary>Every part of the catalog that is still bought, with what should be bought of it from its usual supplier, by part number.</summary>
    public Task<IReadOnlyList<PartNeed>> NeedsAsync(CancellationToken cancel = default) => NeedsAsync(part => part.Usual, cancel);

    /// <summary>The parts that this vendor sells, with what should be bought of each there.</summary>
    public Task<IReadOnlyList<PartNeed>> NeedsFromAsync(int vendorId, CancellationToken cancel = default) => NeedsAsync(part => part.From(vendorId), cancel);

    private async Task<IReadOnlyList<PartNeed>> NeedsAsync(Func<BlankPart, BlankSource?> choose, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var parts = await db.WholeParts().OrderBy(part => part.PartNumber).ToListAsync(cancel);
        var kept = await db.SupplyTerms.ToDictionaryAsync(terms => terms.BlankPartId, cancel);
        var (rules, stock, demand, leads) = (await db.BuyingRules.AsNoTracking().SingleAsync(cancel), await StockBook.ReadAsync(db, cancel), await DemandBook.ReadAsync(db, clock.GetUtcNow(), cancel), await LeadTimeBook.ReadAsync(db, cancel));
        var succession = new Succession(parts);
        return [.. from part in parts
                   let source = choose(part)
                   where source is not null && !succession.IsReplaced(part)
                   let older = succession.ReplacedBy(part)
                   select new PartNeed(SupplyTerms.Of(part, source.SupplierId, kept.GetValueOrDefault(part.Id)), stock.Of(part, older), demand.Of(part, older), leads.Of(part, source), rules)
                   {
                       Replaces = [.. older.Select(each => each.PartNumber)],
                       Alternates = [.. parts.Where(other => part.Alternates.Contains(other.PartNumber)).Select(other => new FreeAlternate(other.PartNumber, stock.Of(other, []).Available))],
                   }];
    }
}
