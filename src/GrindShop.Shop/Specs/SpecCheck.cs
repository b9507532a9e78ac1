using System.Text;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

/// <summary>What is wrong with what was typed, field by field; blanks are no error here. Field paths are those of the JSON.</summary>
public static class SpecCheck
{
    public const int LongestNote = 4000;
    public const int LongestText = 200;
    public const int LongestFiringOrder = 60;

    public static IReadOnlyList<FieldProblem> Problems(CamSpec spec, EngineFamily? family) =>
    [
        .. Ranges(spec),
        .. Lobe(spec.Intake, "intake", Ratio(spec, family)),
        .. Lobe(spec.Exhaust, "exhaust", Ratio(spec, family)),
        .. Timing(spec),
        .. Texts(spec),
        .. Engine(spec, family),
    ];

    private static IEnumerable<FieldProblem> Ranges(CamSpec spec) => Only(
        FieldRange.FollowerDiameter.Check(spec.FollowerDiameterIn, "followerDiameterIn"),
        FieldRange.RockerRatio.Check(spec.RockerRatio, "rockerRatio"),
        FieldRange.LobeSeparation.Check(spec.LobeSeparationCamDeg, "lobeSeparationCamDeg"),
        FieldRange.IntakeCenterline.Check(spec.IntakeCenterlineCrankDeg, "intakeCenterlineCrankDeg"),
        FieldRange.Advance.Check(spec.AdvanceCrankDeg, "advanceCrankDeg"),
        FieldRange.MaxBaseCircle.Check(spec.MaxBaseCircleDiameterIn, "maxBaseCircleDiameterIn"));

    /// <summary>The ratio the lobes are checked with; null where there is none to rely on.</summary>
    private static double? Ratio(CamSpec spec, EngineFamily? family) =>
        FieldRange.RockerRatio.Check(spec.RockerRatio, "rockerRatio") is null ? spec.RockerRatio ?? family?.RockerRatio : null;

    private static IEnumerable<FieldProblem> Lobe(LobeWish lobe, string path, double? ratio)
    {
        var alone = Only(
            FieldRange.LobeLift.Check(lobe.LobeLiftIn, $"{path}.lobeLiftIn"),
            FieldRange.ValveLift.Check(lobe.ValveLiftIn, $"{path}.valveLiftIn"),
            FieldRange.DurationAt050.Check(lobe.DurationAt050CrankDeg, $"{path}.durationAt050CrankDeg"),
            FieldRange.Advertised.Check(lobe.AdvertisedDurationCrankDeg, $"{path}.advertisedDurationCrankDeg"),
            FieldRange.AdvertisedAt.Check(lobe.AdvertisedAtIn, $"{path}.advertisedAtIn"),
            FieldRange.Lash.Check(lobe.LashIn, $"{path}.lashIn")).ToList();
        return alone.Count > 0 ? alone : Together(lobe, path, ratio);
    }

    private static IEnumerable<FieldProblem> Together(LobeWish lobe, string path, double? ratio)
    {
        if (lobe.AdvertisedDurationCrankDeg <= lobe.DurationAt050CrankDeg)
            yield return new FieldProblem($"{path}.advertisedDurationCrankDeg",
                "Advertised duration must be longer than the duration at .050: it is counted at a smaller lift.", lobe.DurationAt050CrankDeg);
        if (ratio is { } r && lobe is { LobeLiftIn: { } lift, ValveLiftIn: { } valve } && Math.Abs(lift * r - valve) > .006)
            yield return new FieldProblem($"{path}.valveLiftIn",
                FormattableString.Invariant($"Valve lift and lobe lift disagree: {lift:.000} x {r:0.##} is {lift * r:.000} in. Give one of the two."));
        else if (lobe.LobeLiftIn is null && FieldRange.LobeLift.Check(lobe.ValveLiftIn / ratio, $"{path}.valveLiftIn") is { } thatLift)
            yield return thatLift with { Message = FormattableString.Invariant($"{thatLift.Message} This valve lift would need {lobe.ValveLiftIn / ratio:.000} in."), Least = thatLift.Least * ratio, Most = thatLift.Most * ratio };
        else if (Unreachable(lobe, ratio) is { } error)
            yield return new FieldProblem($"{path}.advertisedDurationCrankDeg", error.Message, error.ReachableAdvertisedMinCrankDeg, error.ReachableAdvertisedMaxCrankDeg);
    }

    private static LiftLawError? Unreachable(LobeWish lobe, double? ratio)
    {
        var lift = lobe.LobeLiftIn ?? lobe.ValveLiftIn / ratio;
        if (lift is not { } known || lobe is not { DurationAt050CrankDeg: { } at050, AdvertisedDurationCrankDeg: { } advertised, AdvertisedAtIn: { } at })
            return null;
        return advertised <= at050 || PolynomialLaw.TrySolve(new LobeSpec(known, at050, advertised, at), out _, out var error) ? null : error;
    }

    private static IEnumerable<FieldProblem> Timing(CamSpec spec)
    {
        if (spec is { LobeSeparationCamDeg: { } lsa, IntakeCenterlineCrankDeg: { } icl })
        {
            if (spec.AdvanceCrankDeg is { } advance && Math.Abs(lsa - icl - advance) > .25)
                yield return new FieldProblem("advanceCrankDeg",
                    FormattableString.Invariant($"Advance is lobe separation less intake centreline: {lsa:0.#} - {icl:0.#} = {lsa - icl:0.#} crank degrees. Give one of the two."));
            if (ExhaustCenterline(lsa, icl) is { } exhaust)
                yield return exhaust;
        }
        if (spec.Lifter is { } lifter && !lifter.IsSolid() && (spec.Intake.LashIn > 0 || spec.Exhaust.LashIn > 0))
            yield return new FieldProblem(spec.Intake.LashIn > 0 ? "intake.lashIn" : "exhaust.lashIn", "Hydraulic lifters run without lash: leave it empty or 0 in.", 0, 0);
    }

    /// <summary>Null where the exhaust centreline that follows, 2 LSA - ICL, is one a cam can have.</summary>
    internal static FieldProblem? ExhaustCenterline(double lobeSeparationCamDeg, double intakeCenterlineCrankDeg) =>
        2 * lobeSeparationCamDeg - intakeCenterlineCrankDeg is var exhaust and (< 50 or > 170)
            ? new FieldProblem("lobeSeparationCamDeg",
                FormattableString.Invariant($"This lobe separation and intake centreline put the exhaust centreline at {exhaust:0.#}; it must lie between 50 and 170 crank degrees."), 50, 170)
            : null;

    private static IEnumerable<FieldProblem> Texts(CamSpec spec) => Only(
        Text(spec.EngineFamily, 20, "engineFamily", "Engine family"),
        Text(spec.FiringOrder, LongestFiringOrder, "firingOrder", "Firing order"),
        Text(spec.Use, LongestText, "use", "Use"),
        Text(spec.Notes, LongestNote, "notes", "Notes"));

    /// <summary>Null where the text is short enough and printable.</summary>
    public static FieldProblem? Text(string? text, int longest, string field, string name)
    {
        if (text is null)
            return null;
        if (text.Length > longest)
            return new FieldProblem(field, $"{name} must be at most {longest} characters long; this is {text.Length}.", 0, longest);
        return text.EnumerateRunes().Any(IsUnprintable)
            ? new FieldProblem(field, $"{name} has characters that cannot be printed.")
            : null;
    }

    /// <summary>Half of a UTF-16 pair, which reads as the replacement character, is no letter either; the database takes none.</summary>
    private static bool IsUnprintable(Rune letter) => letter == Rune.ReplacementChar || (Rune.IsControl(letter) && letter.Value is not ('\n' or '\r' or '\t'));

    private static IEnumerable<FieldProblem> Engine(CamSpec spec, EngineFamily? family)
    {
        if (spec.EngineFamily is not null && family is null)
            yield return new FieldProblem("engineFamily", "There is no engine family of this code; GET /api/v1/engines lists them.");
        if (family is null)
            yield break;
        if (spec.FiringOrder is { Length: <= LongestFiringOrder } order && FiringOrder.Parse(order, family.Cylinders).Problem is { } problem)
            yield return new FieldProblem("firingOrder", $"{problem} A firing order of this engine names its cylinders 1 to {family.Cylinders} once each, such as {family.FiringOrder}.");
        if (spec.Side is not null && !family.HasSides)
            yield return new FieldProblem("side", "This engine has one camshaft; leave the side empty.");
        if (spec.DistributorGear is not null && family.Gear == GearPosition.None)
            yield return new FieldProblem("distributorGear", "This engine has no distributor; leave the gear empty.");
        if (spec.MechanicalFuelPump == true && !family.FuelPumpLobe)
            yield return new FieldProblem("mechanicalFuelPump", "This engine's cam drives no mechanical fuel pump; leave it empty or say no.");
    }

    private static IEnumerable<FieldProblem> Only(params FieldProblem?[] problems) => problems.OfType<FieldProblem>();
}
