namespace GrindShop.Shop.Buying;

/// <summary>Demand as a normal curve. A variance of zero is a demand that is known.</summary>
public sealed class NormalDemand(double mean, double variance) : Demand
{
    public override double Mean { get; } = mean;

    public override double Variance { get; } = variance;

    public override string Words => "normal curve";

    public override double AtMost(double quantity) => Deviation > 0 ? Gauss.Below((quantity - Mean) / Deviation) : quantity >= Mean ? 1 : 0;

    public override double Shortage(double quantity) => Deviation > 0 ? Deviation * Gauss.Loss((quantity - Mean) / Deviation) : Math.Max(0, Mean - quantity);

    public override double Sufficient(double probability) => Mean + (Deviation > 0 ? Deviation * Gauss.Quantile(probability) : 0);
}
