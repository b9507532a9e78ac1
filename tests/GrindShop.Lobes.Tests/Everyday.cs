namespace GrindShop.Lobes.Tests;

/// <summary>An invented but plausible street roller lobe, its blank, and helpers shared by the tests.</summary>
internal static class Everyday
{
    public const double BaseCircleIn = 1.25, StockIn = 0.030, CleanupIn = 0.005;

    public static Follower Roller { get; } = Follower.Roller(0.375);

    public static PolynomialLaw Law { get; } = Lobe(222);

    public static BlankOutline Blank { get; } = BlankOutline.Milled(Law, Roller, BaseCircleIn, StockIn);

    public static FinishLobe Finish { get; } = new(Law, Roller);

    /// <summary>A lobe whose advertised duration (.006 in) is 50 crank degrees longer than at .050.</summary>
    public static PolynomialLaw Lobe(double at050, double lift = 0.335) => PolynomialLaw.Solve(new(lift, at050, at050 + 50, 0.006));

    public static double Rad(double deg) => deg * Math.PI / 180;
}
