using GrindShop.Lobes;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>
/// How much a customer gives up. The weights are the shop's choice: lobe separation and centreline are given up first, then duration, then lift.
/// </summary>
public static class GrindDistance
{
    private const double PerCrankDegOfDuration = 1.5, PerThousandthOfLift = 1, OtherGear = 4, Waiting = 5;

    /// <summary>Plain distance in the plane of lobe separation (cam degrees) and intake centreline (crank degrees).</summary>
    public static double Phase(GrindSpec wish, GrindSpec grind) => Phase(
        grind.LobeSeparationCamDeg - wish.LobeSeparationCamDeg, grind.IntakeCenterlineCrankDeg - wish.IntakeCenterlineCrankDeg);

    public static double Cost(GrindSpec wish, GrindSpec grind, bool inStock) =>
        Phase(wish, grind) + Lobe(wish.Intake, grind.Intake) + Lobe(wish.Exhaust, grind.Exhaust)
            + (wish.DistributorGear == grind.DistributorGear ? 0 : OtherGear) + (inStock ? 0 : Waiting);

    internal static double Phase(double separation, double centerline) => Math.Sqrt(separation * separation + centerline * centerline);

    private static double Lobe(LobeSpec wish, LobeSpec lobe) =>
        PerCrankDegOfDuration * Math.Abs(lobe.DurationAt050CrankDeg - wish.DurationAt050CrankDeg)
            + PerThousandthOfLift * 1000 * Math.Abs(lobe.LobeLiftIn - wish.LobeLiftIn);
}
