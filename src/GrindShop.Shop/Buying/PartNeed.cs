using System.Globalization;
using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Buying;

/// <summary>A part that may be used instead, and how many of it are free.</summary>
public sealed record FreeAlternate(string PartNumber, int Free);

/// <summary>What should be bought of one part now, and why. A pure function of stock, history, terms and the owner's assumptions.</summary>
public sealed class PartNeed
{
    public PartNeed(SupplyTerms terms, StockPosition stock, DemandHistory history, LeadTime lead, BuyingRules rules)
    {
        (Terms, Stock, History, Lead, Rules) = (terms, stock, history, lead, rules);
        var quantity = History.Wanted == 0 ? terms.LeastQuantity : OrderQuantity.Best(history.YearlyMean, terms, rules, Math.Max(1, rules.MostYearsOfCover * history.YearlyMean));
        var rule = ReorderPoint.ForCycleService(history.Over(lead), ServiceLevel, quantity);
        Rule = rule with { Point = Math.Ceiling(Math.Max(0, rule.Point) - 1e-9) };
    }

    public BlankPart Part => Terms.BlankPart;

    public SupplyTerms Terms { get; }

    public StockPosition Stock { get; }

    public DemandHistory History { get; }

    public LeadTime Lead { get; }

    public BuyingRules Rules { get; }

    /// <summary>Part numbers whose demand and stock are counted with this one's, because it replaces them.</summary>
    public IReadOnlyList<string> Replaces { get; init; } = [];

    /// <summary>What may be used instead, by the catalog.</summary>
    public IReadOnlyList<FreeAlternate> Alternates { get; init; } = [];

    /// <summary>Reorder point and quantity in whole blanks, and the service they give.</summary>
    public ReorderPoint Rule { get; }

    /// <summary>Wanted of this part: its own, or the shop's.</summary>
    public double ServiceLevel => Terms.ServiceLevel ?? Rules.ServiceLevel;

    public int Point => (int)Rule.Point;

    /// <summary>Something has to be bought, counting neither nor with what stands in drafts.</summary>
    public bool IsDue => IsShort(Stock.Position);

    /// <summary>It was due, and a draft that is not sent covers it.</summary>
    public bool IsInDraft => IsDue && !IsShort(Stock.Position + Stock.InDrafts);

    /// <summary>What to order beside the drafts: the best quantity, more where that would not lift the stock over the point; 0 where nothing is due.</summary>
    public int Quantity => IsDue && !IsInDraft ? OrderQuantity.Sold(Math.Max(Rule.Quantity, Missing), Terms.LeastQuantity, Terms.Multiple) : 0;

    /// <summary>For the quantity to order; where nothing is due, for the one that is ordered at a time.</summary>
    public decimal UnitPrice => Terms.UnitPrice(Quantity > 0 ? Quantity : (int)Rule.Quantity);

    /// <summary>Years that the quantity lasts at the demand of the history; null where nothing was wanted.</summary>
    public double? YearsOfCover => History.YearlyMean > 0 ? Math.Max(Quantity, Rule.Quantity) / History.YearlyMean : null;

    public bool CoversTooLong => YearsOfCover > Rules.MostYearsOfCover;

    public DateOnly ExpectedOn(DateOnly today) => today.AddDays((int)Math.Ceiling(Lead.MeanDays));

    /// <summary>Why, with the figures.</summary>
    public string Why => History.Wanted == 0
        ? $"{Whole(Stock.Waiting)} wait for it and {Whole(Stock.Available + Stock.OnOrder)} are there or coming{OfReplaced}; {History.Words}, so only these are bought."
        : $"{(Stock.Position < 0 ? $"{Whole(-Stock.Position)} short" : $"{Whole(Stock.Position)} to count on")} ({Whole(Stock.Available)} available, {Whole(Stock.OnOrder)} on order, less {Whole(Stock.Waiting)} waited for{OfReplaced}); the point is {Point}: "
            + $"over {Whole(Lead.MeanDays)} days ({Lead.Words}) {Tenth(Rule.Demand.Mean)} ± {Tenth(Rule.Demand.Deviation)} are wanted ({History.Words}; {Rule.Demand.Words}), "
            + $"and no more than {Point} with {Rule.CycleService.ToString("P1", CultureInfo.InvariantCulture)} probability.";

    private string OfReplaced => (Replaces.Count, Stock.OfReplaced) switch
    {
        (0, _) => "",
        (_, < 0) => $", less {Whole(-Stock.OfReplaced)} waited for of {string.Join(" and ", Replaces)}, which it replaces",
        _ => $", and {Whole(Stock.OfReplaced)} of {string.Join(" and ", Replaces)}, which it replaces",
    };

    private int Missing => History.Wanted == 0 ? -Stock.Position - Stock.InDrafts : Point + 1 - Stock.Position - Stock.InDrafts;

    private bool IsShort(int position) => History.Wanted == 0 ? position < 0 : position <= Point;

    private static string Whole(double count) => count.ToString("0", CultureInfo.InvariantCulture);

    private static string Tenth(double count) => count.ToString("0.0", CultureInfo.InvariantCulture);
}
