using GrindShop.Lobes;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers;

/// <summary>What both papers say about the lobes and the whole cam, row by row.</summary>
internal static class LobeTable
{
    public const string CrankDeg = "crank deg", CamDeg = "cam deg", Inch = "in";

    /// <summary>Rows of: what, intake, exhaust, unit.</summary>
    public static IEnumerable<string[]> Lobes(JobCam cam)
    {
        var (grind, fit) = (cam.Grind, cam.Fit);
        yield return Row("Lobe lift", grind.Intake.LobeLiftIn, grind.Exhaust.LobeLiftIn, Figures.Lift, Inch);
        yield return Row($"Valve lift, {Figures.Ratio(grind.RockerRatio)} rocker", AtValve(grind, grind.Intake, 0), AtValve(grind, grind.Exhaust, 0), Figures.Lift, Inch);
        if (grind.Lifter.IsSolid())
            yield return Row("Valve lift less lash", AtValve(grind, grind.Intake, grind.IntakeLashIn), AtValve(grind, grind.Exhaust, grind.ExhaustLashIn), Figures.Lift, Inch);
        yield return Row("Duration at .050 lift", grind.Intake.DurationAt050CrankDeg, grind.Exhaust.DurationAt050CrankDeg, Figures.Deg, CrankDeg);
        yield return Row("Advertised duration", grind.Intake.AdvertisedDurationCrankDeg, grind.Exhaust.AdvertisedDurationCrankDeg, Figures.Deg, CrankDeg);
        yield return Row("Advertised at a lift of", grind.Intake.AdvertisedAtIn, grind.Exhaust.AdvertisedAtIn, Figures.In, Inch);
        yield return grind.Lifter.IsSolid()
            ? Row("Lash at the valve", grind.IntakeLashIn, grind.ExhaustLashIn, Figures.In, Inch)
            : ["Lash", "none", "none", ""];
        yield return ["Base circle diameter", Figures.In(fit.IntakeBaseCircleDiameterIn), Figures.In(fit.ExhaustBaseCircleDiameterIn), Inch];
    }

    /// <summary>Rows of: what, value, unit.</summary>
    public static IEnumerable<string[]> WholeCam(GrindSpec grind) =>
    [
        ["Lobe separation (LSA)", Figures.Deg(grind.LobeSeparationCamDeg), CamDeg],
        ["Intake centreline (ICL)", Figures.Deg(grind.IntakeCenterlineCrankDeg), CrankDeg],
        ["Exhaust centreline (ECL)", Figures.Deg(grind.ExhaustCenterlineCrankDeg), CrankDeg],
        ["Advance", Figures.SignedDeg(grind.AdvanceCrankDeg), CrankDeg],
        [grind.Lifter.IsRoller() ? "Roller diameter" : "Tappet foot diameter", Figures.In(grind.FollowerDiameterIn), Inch],
    ];

    private static double AtValve(GrindSpec grind, LobeSpec lobe, double lashIn) => ValveLift.AtValve(lobe.LobeLiftIn, grind.RockerRatio, lashIn);

    private static string[] Row(string what, double intake, double exhaust, Func<double, string> write, string unit) => [what, write(intake), write(exhaust), unit];
}
