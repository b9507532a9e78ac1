namespace GrindShop.Shop.Buying;

/// <summary>Days from order to receipt, and what that stands on.</summary>
/// <param name="MeanDays">Days.</param>
/// <param name="VarianceDays">Their variance, days squared.</param>
/// <param name="Words">Where the figures come from.</param>
public sealed record LeadTime(double MeanDays, double VarianceDays, string Words)
{
    /// <summary>Fewer deliveries are too little for a variance.</summary>
    public const int LeastDeliveries = 3;

    /// <summary>Deviation against mean that is assumed where only the catalog's lead time is known; the shop's choice.</summary>
    public const double AssumedSpread = .25;

    public double DeviationDays => Math.Sqrt(VarianceDays);

    /// <summary>
    /// From the part's own deliveries where there are enough, else from all of its supplier's in proportion to what was expected of each,
    /// else the catalog's days with an assumed spread.
    /// </summary>
    /// <param name="ofPart">Days that each delivery of the part took.</param>
    /// <param name="ofSupplier">Days taken over days usual for each delivery of the supplier.</param>
    /// <param name="usualDays">The catalog's lead time.</param>
    public static LeadTime From(IReadOnlyList<double> ofPart, IReadOnlyList<double> ofSupplier, int usualDays)
    {
        if (ofPart.Count >= LeastDeliveries)
            return Of(ofPart, 1, $"from {ofPart.Count} deliveries of this part");
        if (ofSupplier.Count >= LeastDeliveries)
            return Of(ofSupplier, usualDays, $"from {ofSupplier.Count} deliveries of its supplier, applied to the usual {usualDays} days");
        return new LeadTime(usualDays, Math.Pow(AssumedSpread * usualDays, 2), FormattableString.Invariant($"the catalog's {usualDays} days; no history, so a spread of {100 * AssumedSpread:0} % is assumed"));
    }

    private static LeadTime Of(IReadOnlyList<double> deliveries, double unit, string words)
    {
        var mean = deliveries.Average();
        return new LeadTime(unit * mean, unit * unit * deliveries.Sum(days => (days - mean) * (days - mean)) / (deliveries.Count - 1), words);
    }
}
