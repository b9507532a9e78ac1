namespace GrindShop.Shop.Buying;

/// <summary>How many blanks are wanted over some time, as a distribution.</summary>
public abstract class Demand
{
    /// <summary>From this mean on the whole-number steps no longer matter. Silver, Pyke and Peterson give 10 (memory).</summary>
    public const double LeastNormalMean = 10;

    /// <summary>A normal curve as wide as this against its mean would reach too far below zero.</summary>
    public const double MostNormalSpread = .5;

    /// <summary>Up to this ratio of variance to mean the demand counts as Poisson.</summary>
    public const double MostPoissonRatio = 1.05;

    public abstract double Mean { get; }

    public abstract double Variance { get; }

    /// <summary>How it is counted, in words.</summary>
    public abstract string Words { get; }

    public double Deviation => Math.Sqrt(Variance);

    /// <summary>Probability that no more than this is wanted.</summary>
    public abstract double AtMost(double quantity);

    /// <summary>Expected shortage when this much is there: E[(demand - quantity)+].</summary>
    public abstract double Shortage(double quantity);

    /// <summary>The least quantity that suffices with this probability; a whole number where demand is counted.</summary>
    public abstract double Sufficient(double probability);

    /// <summary>
    /// The distribution of a mean and a variance by a fixed rule: normal from a mean of <see cref="LeastNormalMean"/> on where the deviation is at
    /// most half the mean; otherwise counted exactly, as Poisson where the variance is about the mean or less, as negative binomial where it is more.
    /// </summary>
    public static Demand Of(double mean, double variance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(mean);
        ArgumentOutOfRangeException.ThrowIfNegative(variance);
        if (mean >= LeastNormalMean && Math.Sqrt(variance) <= MostNormalSpread * mean)
            return new NormalDemand(mean, variance);
        return mean == 0 || variance <= MostPoissonRatio * mean ? CountedDemand.Poisson(mean) : CountedDemand.NegativeBinomial(mean, variance);
    }

    /// <summary>
    /// Demand while a delivery is under way: the mean is rate times time, the variance time times the rate's variance plus the squared rate times
    /// the time's variance (Hadley and Whitin; as in Chopra and Meindl, Supply Chain Management).
    /// </summary>
    /// <param name="meanADay">Blanks a day.</param>
    /// <param name="varianceADay">Variance of one day's demand; days are independent.</param>
    /// <param name="leadDays">Mean days from order to receipt.</param>
    /// <param name="leadVariance">Variance of those days.</param>
    public static Demand OverLeadTime(double meanADay, double varianceADay, double leadDays, double leadVariance) =>
        Of(meanADay * leadDays, leadDays * varianceADay + meanADay * meanADay * leadVariance);
}
