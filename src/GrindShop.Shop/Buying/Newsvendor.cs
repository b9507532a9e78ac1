namespace GrindShop.Shop.Buying;

/// <summary>One purchase for an uncertain demand that cannot be repeated: what is left over is lost, what is missing cost its gain.</summary>
/// <param name="Demand">What will be wanted in all.</param>
/// <param name="Gain">Gained by one more blank that is wanted; above zero.</param>
/// <param name="Loss">Lost on one blank that is not; above zero.</param>
public sealed record Newsvendor(Demand Demand, double Gain, double Loss)
{
    /// <summary>The probability with which the best quantity suffices: gain / (gain + loss).</summary>
    public double CriticalRatio => Gain / (Gain + Loss);

    public double BestQuantity => Demand.Sufficient(CriticalRatio);

    /// <summary>Expected gain less expected loss of a quantity.</summary>
    public double Expected(double quantity)
    {
        var used = Demand.Mean - Demand.Shortage(quantity);
        return Gain * used - Loss * (quantity - used);
    }
}
