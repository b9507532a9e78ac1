using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>Is a second offer worth a person's time beside the first?</summary>
internal static class ReallyDifferent
{
    /// <summary>Changes within these are the same offer: cam degrees, crank degrees, crank degrees, in.</summary>
    private const double SeparationCamDeg = 1.5, CenterlineCrankDeg = 3, DurationCrankDeg = 4, LiftIn = .010;

    public static bool From(GrindSpec wish, GrindSpec offered, GrindSpec other) =>
        !AsNear(wish, offered, other) && (Kind(wish, offered) != Kind(wish, other) || Figures(offered).Zip(Figures(other)).Any(pair => Math.Abs(pair.First.Value - pair.Second.Value) >= pair.First.Clear));

    /// <summary>Whatever the other gives up, the first gives up no more of it: the other has nothing to say for it.</summary>
    private static bool AsNear(GrindSpec wish, GrindSpec offered, GrindSpec other) =>
        (offered.DistributorGear == wish.DistributorGear || offered.DistributorGear == other.DistributorGear)
            && Changes(wish, offered).Zip(Changes(wish, other)).All(pair => pair.First * pair.Second >= 0 && Math.Abs(pair.First) <= Math.Abs(pair.Second) + 1e-9);

    private static (bool Phase, bool Duration, bool Lift, bool Gear) Kind(GrindSpec wish, GrindSpec grind)
    {
        var changed = Changes(wish, grind).Select(change => change != 0).ToList();
        return (changed[0] || changed[1], changed[2] || changed[3], changed[4] || changed[5], wish.DistributorGear != grind.DistributorGear);
    }

    private static IEnumerable<double> Changes(GrindSpec wish, GrindSpec grind) =>
        Figures(grind).Zip(Figures(wish), (offered, wanted) => offered.Value - wanted.Value);

    private static IEnumerable<(double Value, double Clear)> Figures(GrindSpec grind) =>
    [
        (grind.LobeSeparationCamDeg, SeparationCamDeg),
        (grind.IntakeCenterlineCrankDeg, CenterlineCrankDeg),
        (grind.Intake.DurationAt050CrankDeg, DurationCrankDeg),
        (grind.Exhaust.DurationAt050CrankDeg, DurationCrankDeg),
        (grind.Intake.LobeLiftIn, LiftIn),
        (grind.Exhaust.LobeLiftIn, LiftIn),
    ];
}
