namespace GrindShop.Shop.Buying;

/// <summary>
/// The rule "when no more than <see cref="Point"/> are available or on order, order <see cref="Quantity"/>": what service it gives. Continuous
/// review, late demand waits for the delivery.
/// </summary>
/// <param name="Demand">What is wanted while a delivery is under way.</param>
/// <param name="Point">s, blanks.</param>
/// <param name="Quantity">Q, blanks; above zero.</param>
public sealed record ReorderPoint(Demand Demand, double Point, double Quantity)
{
    private const double Tolerance = 1e-9;

    /// <summary>What lies on the shelf on average when a delivery comes.</summary>
    public double SafetyStock => Point - Demand.Mean;

    /// <summary>Probability that nothing runs out between an order and its delivery.</summary>
    public double CycleService => Demand.AtMost(Point);

    /// <summary>Expected number of blanks short between an order and its delivery.</summary>
    public double ShortagePerCycle => Demand.Shortage(Point);

    /// <summary>
    /// Share of the demand met from the shelf: 1 - (shortage(s) - shortage(s + Q)) / Q (Hadley and Whitin, Analysis of Inventory Systems, 1963; from
    /// memory), exact for demand one at a time. Books with large Q leave the second shortage out.
    /// </summary>
    public double FillRate => FillRateOf(Demand, Point, Quantity);

    /// <summary>The least point that gives this cycle service, between 0 and 1.</summary>
    public static ReorderPoint ForCycleService(Demand demand, double service, double quantity) =>
        new(demand, demand.Sufficient(service), quantity);

    /// <summary>The least point, not below zero, that gives this fill rate, between 0 and 1.</summary>
    public static ReorderPoint ForFillRate(Demand demand, double fillRate, double quantity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(quantity);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(fillRate, 1);
        return new(demand, demand is CountedDemand ? Count(demand, fillRate, quantity) : Bisect(demand, fillRate, quantity), quantity);
    }

    private static double FillRateOf(Demand demand, double point, double quantity) =>
        1 - (demand.Shortage(point) - demand.Shortage(point + quantity)) / quantity;

    private static double Count(Demand demand, double fillRate, double quantity)
    {
        var point = 0;
        while (FillRateOf(demand, point, quantity) < fillRate)
            point++;
        return point;
    }

    private static double Bisect(Demand demand, double fillRate, double quantity)
    {
        var (low, high) = (0.0, demand.Mean + 40 * demand.Deviation + quantity);
        if (FillRateOf(demand, low, quantity) >= fillRate)
            return low;
        while (high - low > Tolerance * (1 + high))
        {
            var middle = (low + high) / 2;
            (low, high) = FillRateOf(demand, middle, quantity) < fillRate ? (middle, high) : (low, middle);
        }
        return high;
    }
}
