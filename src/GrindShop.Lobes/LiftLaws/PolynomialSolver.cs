using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>
/// Half angle and exponent step from two durations. The ratio of the half angles at the two check lifts depends on d alone and
/// falls with it, so a bracket always holds the root.
/// </summary>
internal static class PolynomialSolver
{
    private const double LeastLiftIn = 0.0501, MostLiftIn = 2;
    private const double LeastDurationCrankDeg = 10, MostDurationCrankDeg = 700;
    private const double LeastCheckLiftIn = 0.0005, MostCheckLiftIn = 0.045;

    public static LiftLawError? Refuse(LobeSpec spec) =>
        RefuseOutside(spec.LobeLiftIn, LeastLiftIn, MostLiftIn, "Lobe lift", "in")
        ?? RefuseOutside(spec.DurationAt050CrankDeg, LeastDurationCrankDeg, MostDurationCrankDeg, "Duration at .050", "crank degrees")
        ?? RefuseOutside(spec.AdvertisedAtIn, LeastCheckLiftIn, MostCheckLiftIn, "The advertised check lift", "in")
        ?? RefuseOutside(
            spec.AdvertisedDurationCrankDeg, LeastDurationCrankDeg, MostDurationCrankDeg, "Advertised duration", "crank degrees");

    public static LiftLawError? Solve(LobeSpec spec, out PolynomialLaw? law)
    {
        law = null;
        var wanted = spec.AdvertisedDurationCrankDeg / spec.DurationAt050CrankDeg;
        double most = Ratio(spec, PolynomialLaw.LeastExponentStep), least = Ratio(spec, PolynomialLaw.MostExponentStep);
        if (wanted < least || wanted > most)
            return OutOfReach(spec.DurationAt050CrankDeg * least, spec.DurationAt050CrankDeg * most);
        var d = ExponentStep(spec, wanted);
        var halfAngle = spec.DurationAt050CrankDeg / 2 / AngleMath.CrankDegPerCamRad / XAt050(spec, d);
        if (halfAngle > Math.PI)
            return new("These durations would need a lobe that takes up more than the whole turn of the cam; shorten them.");
        law = new(spec.LobeLiftIn, halfAngle, d);
        return null;
    }

    private static double ExponentStep(LobeSpec spec, double wanted)
    {
        var logD = Root.InBracket(
            x => Ratio(spec, Math.Exp(x)) - wanted, Math.Log(PolynomialLaw.LeastExponentStep), Math.Log(PolynomialLaw.MostExponentStep), 1e-13);
        return Math.Clamp(Math.Exp(logD), PolynomialLaw.LeastExponentStep, PolynomialLaw.MostExponentStep);
    }

    private static double Ratio(LobeSpec spec, double d) =>
        new PolynomialShape(d).XAtLift(spec.AdvertisedAtIn / spec.LobeLiftIn) / XAt050(spec, d);

    private static double XAt050(LobeSpec spec, double d) =>
        new PolynomialShape(d).XAtLift(LobeSpec.UsualCheckLiftIn / spec.LobeLiftIn);

    private static LiftLawError OutOfReach(double least, double most) => new(
        string.Create(
            CultureInfo.InvariantCulture,
            $"With this lift and duration at .050 the advertised duration can be {least:0.0} to {most:0.0} crank degrees."),
        least,
        most);

    private static LiftLawError? RefuseOutside(double value, double least, double most, string what, string unit) =>
        value >= least && value <= most
            ? null
            : new(string.Create(CultureInfo.InvariantCulture, $"{what} must lie between {least} and {most} {unit}."));
}
