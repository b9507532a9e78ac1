namespace GrindShop.Shop.Buying;

/// <summary>Demand in whole blanks, each probability following from the one before: p(k+1) = p(k) (a + b k) / (k + 1).</summary>
public sealed class CountedDemand : Demand
{
    private readonly double _none, _a, _b;

    private CountedDemand(double mean, double variance, double none, double a, double b, string words) =>
        (Mean, Variance, _none, _a, _b, Words) = (mean, variance, none, a, b, words);

    public override double Mean { get; }

    public override double Variance { get; }

    public override string Words { get; }

    public static CountedDemand Poisson(double mean) => new(mean, mean, Math.Exp(-mean), mean, 0, "Poisson");

    /// <summary>A Poisson demand whose rate itself varies; the variance exceeds the mean.</summary>
    public static CountedDemand NegativeBinomial(double mean, double variance)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(variance, mean);
        var (size, more) = (mean * mean / (variance - mean), 1 - mean / variance);
        return new CountedDemand(mean, variance, Math.Exp(size * Math.Log(mean / variance)), size * more, more, "negative binomial");
    }

    public override double AtMost(double quantity) => Math.Min(1, Probabilities(quantity).Sum(wanted => wanted.Probability));

    /// <summary>E[(X - q)+] = mean - q + E[(q - X)+], the last a finite sum.</summary>
    public override double Shortage(double quantity) =>
        Math.Max(0, Mean - quantity + Probabilities(quantity).Sum(wanted => (quantity - wanted.Quantity) * wanted.Probability));

    public override double Sufficient(double probability)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(probability, 1);
        var sum = 0.0;
        foreach (var (quantity, share) in Probabilities(Mean + 60 * Deviation + 60))
            if ((sum += share) >= probability)
                return quantity;
        return Math.Ceiling(Mean + 60 * Deviation + 60);
    }

    /// <summary>What is wanted, from nothing up to this quantity, and how likely.</summary>
    public IEnumerable<(int Quantity, double Probability)> Probabilities(double upTo)
    {
        var probability = _none;
        for (var k = 0; k <= upTo; k++)
        {
            yield return (k, probability);
            probability *= (_a + _b * k) / (k + 1);
        }
    }
}
