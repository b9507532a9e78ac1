namespace GrindShop.Shop.Buying;

/// <summary>How many to order at a time.</summary>
public static class OrderQuantity
{
    /// <summary>
    /// The quantity at which ordering and holding cost the same: sqrt(2 K D / (h c)) (F. W. Harris, "How Many Parts to Make at Once", 1913).
    /// </summary>
    /// <param name="yearlyDemand">Blanks a year.</param>
    /// <param name="orderCost">Cost of one order, whatever its size.</param>
    /// <param name="yearlyHoldingCost">Cost of holding one blank for a year; above zero.</param>
    public static double Economic(double yearlyDemand, decimal orderCost, decimal yearlyHoldingCost)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(yearlyDemand);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(yearlyHoldingCost);
        return Math.Sqrt(2 * yearlyDemand * (double)orderCost / (double)yearlyHoldingCost);
    }

    /// <summary>
    /// The quantity of the least yearly cost where the price falls with the quantity: the economic quantity of each price and the breaks themselves
    /// are compared (all-units discount; Chopra and Meindl, Supply Chain Management). Only quantities that the supplier sells, and of those that cover no
    /// more than <paramref name="mostBlanks"/> where any do.
    /// </summary>
    public static int Best(double yearlyDemand, SupplyTerms terms, BuyingRules rules, double mostBlanks)
    {
        var orderCost = rules.OrderCost + terms.SetupCharge;
        var wanted = terms.PriceBreaks.Select(step => step.UnitPrice).Append(terms.Source.Cost)
            .Select(price => Math.Min(mostBlanks, Economic(yearlyDemand, orderCost, rules.HoldingCost(price))))
            .Concat(terms.PriceBreaks.Select(step => (double)step.FromQuantity).Where(from => from <= mostBlanks));
        return wanted.Select(quantity => Sold(quantity, terms.LeastQuantity, terms.Multiple)).Distinct().MinBy(quantity => YearlyCost(quantity, yearlyDemand, terms, rules));
    }

    private static decimal YearlyCost(int quantity, double yearlyDemand, SupplyTerms terms, BuyingRules rules)
    {
        var (price, demand) = (terms.UnitPrice(quantity), (decimal)yearlyDemand);
        return demand * price + demand / quantity * (rules.OrderCost + terms.SetupCharge) + quantity / 2m * rules.HoldingCost(price);
    }

    /// <summary>The next quantity that the supplier sells: at least the least one and a multiple, rounded up.</summary>
    /// <param name="wanted">Blanks; at least one is ordered.</param>
    /// <param name="least">The supplier's least quantity, 1 or more.</param>
    /// <param name="multiple">The supplier's package, 1 or more.</param>
    public static int Sold(double wanted, int least, int multiple)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(least, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(multiple, 1);
        var whole = Math.Max(least, (int)Math.Ceiling(Math.Max(1, wanted) - 1e-9));
        return (whole + multiple - 1) / multiple * multiple;
    }
}
