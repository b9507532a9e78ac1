using GrindShop.Lobes;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

/// <summary>An everyday hydraulic-roller lobe of our own and a blank milled for it with .030 in of stock per side.</summary>
internal static class SampleLobe
{
    public const double LiftIn = .335, BaseCircleIn = 1.130, StockIn = .030;

    public static readonly Follower Roller = Follower.Roller(.375);
    public static readonly PolynomialLaw Law = PolynomialLaw.Solve(new LobeSpec(LiftIn, 222, 272, .006));
    public static readonly BlankOutline Blank = BlankOutline.Milled(Law, Roller, BaseCircleIn, StockIn);
    public static readonly FinishLobe Finish = new(Law, Roller);

    public static LobeSection Section(double turnCamDeg = 0, double? caseDepthIn = .150, double baseCircleIn = BaseCircleIn) =>
        LobeSection.Of("intake", Blank, Finish, baseCircleIn, turnCamDeg, caseDepthIn);
}
