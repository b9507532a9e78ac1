using MathNet.Numerics;

namespace GrindShop.Shop.Buying;

/// <summary>The standard normal distribution.</summary>
public static class Gauss
{
    public static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>Share of the distribution at or below z.</summary>
    public static double Below(double z) => SpecialFunctions.Erfc(-z / Math.Sqrt(2)) / 2;

    /// <summary>The z below which this share lies; the share between 0 and 1, both excluded.</summary>
    public static double Quantile(double share) => -Math.Sqrt(2) * SpecialFunctions.ErfcInv(2 * share);

    /// <summary>By how much the distribution goes over z on average: E[(Z - z)+] = density(z) - z (1 - below(z)).</summary>
    public static double Loss(double z) => Math.Max(0, Density(z) - z * Below(-z));
}
