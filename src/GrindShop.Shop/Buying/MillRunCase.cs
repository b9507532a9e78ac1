namespace GrindShop.Shop.Buying;

/// <summary>A way to do without the mill run: another blank, bought one by one as it is needed.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="UnitPrice">Price of one blank.</param>
/// <param name="ShareServed">Share of the cams wanted that can be ground from it, 0 to 1; the others are lost.</param>
public sealed record Alternative(string Name, double UnitPrice, double ShareServed)
{
    /// <summary>What each cam that is wanted costs: the blank where it serves, the lost margin where it does not.</summary>
    public double CostPerCam(double lostMargin) => ShareServed * UnitPrice + (1 - ShareServed) * lostMargin;
}

/// <summary>Everything that is assumed about a mill run: one large purchase now, against buying alternatives as they are needed.</summary>
public sealed record MillRunCase
{
    /// <summary>Expected cams a year.</summary>
    public required double YearlyDemand { get; init; }

    /// <summary>How far the true yearly demand may lie from it, as a standard deviation; 0 for a demand that is known.</summary>
    public required double YearlyDeviation { get; init; }

    /// <summary>How far ahead the shop looks; what is left then is worth nothing.</summary>
    public required double HorizonYears { get; init; }

    /// <summary>A year, as a share.</summary>
    public required double CostOfCapital { get; init; }

    /// <summary>Probability that within a year nobody wants the cam any more; then what is left is worth nothing.</summary>
    public required double ObsolescenceAYear { get; init; }

    /// <summary>Of one blank for a year.</summary>
    public required double StorageAYear { get; init; }

    /// <summary>Charged once for the run.</summary>
    public required double SetupCharge { get; init; }

    /// <summary>Price of one blank from each quantity on; the first quantity is the least that is milled.</summary>
    public required IReadOnlyList<PriceBreak> PriceBreaks { get; init; }

    /// <summary>What the shop loses with a cam that it must turn away: its price less the work, before any blank.</summary>
    public required double LostMargin { get; init; }

    public required IReadOnlyList<Alternative> Alternatives { get; init; }

    /// <summary>Turning every cam away is what is left where nothing else serves.</summary>
    public static readonly Alternative TurnedAway = new("Turn the cams away", 0, 0);

    /// <summary>The cheapest way without the mill run; it also serves when the run is used up.</summary>
    public Alternative Best => Alternatives.Append(TurnedAway).MinBy(other => other.CostPerCam(LostMargin))!;

    public int LeastQuantity => PriceBreaks.Min(step => step.FromQuantity);

    public double UnitPrice(int quantity) => (double)PriceBreaks.Where(step => step.FromQuantity <= quantity).MaxBy(step => step.FromQuantity)!.UnitPrice;

    /// <summary>Why nothing can be computed; null where it can.</summary>
    public Refusal? Refuse() => this switch
    {
        { YearlyDemand: not (> 0 and <= 100_000) } => new("badDemand", "The yearly demand must lie above 0 and at most at 100,000 cams: where the books know of none, type what you expect."),
        _ when !(YearlyDeviation >= 0 && YearlyDeviation <= 2 * YearlyDemand) => new("badDeviation", "The uncertainty of the demand must lie between 0 and twice the demand."),
        { HorizonYears: not (>= .5 and <= 30) } => new("badHorizon", "The horizon must lie between half a year and 30 years."),
        { CostOfCapital: not (>= 0 and <= 1) } or { ObsolescenceAYear: not (>= 0 and <= .9) } => new("badRate", "The cost of capital must lie between 0 and 100 %, obsolescence between 0 and 90 % a year."),
        { StorageAYear: not (>= 0 and <= 100_000) } or { SetupCharge: not (>= 0 and <= 10_000_000) } or { LostMargin: not (>= 0 and <= 1_000_000) } => new("badCost", "Storage, set-up and lost margin start at $0."),
        { PriceBreaks.Count: 0 } => new("noPrices", "Give at least one quantity with its price."),
        _ when PriceBreaks.Any(step => step.FromQuantity is < 1 or > 100_000 || step.UnitPrice is < 0 or > 1_000_000) => new("badPrice", "Quantities lie between 1 and 100,000, prices start at $0."),
        _ when Alternatives.Any(other => other.UnitPrice is not (>= 0 and <= 1_000_000) || other.ShareServed is not (>= 0 and <= 1)) => new("badAlternative", "Prices of alternatives start at $0; they serve between 0 and 100 % of the cams."),
        _ => null,
    };
}
