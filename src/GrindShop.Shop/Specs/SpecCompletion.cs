using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs;

/// <summary>A specification made complete: the grind to judge, what the shop filled in, or what is still needed.</summary>
public sealed record CompletedSpec(GrindSpec? Grind, IReadOnlyList<FilledField> Filled, IReadOnlyList<FieldProblem> Problems, IReadOnlyList<FieldProblem> Needed)
{
    /// <summary>What does not stand in the way of judging, but of ordering.</summary>
    public IReadOnlyList<FieldProblem> NeededToOrder { get; init; } = [];

    /// <summary>Everything that stands in the way of an order.</summary>
    public IEnumerable<FieldProblem> InTheWay => [.. Problems, .. Needed, .. NeededToOrder];
}

/// <summary>Fills the blanks of a specification by the shop's usual values, each marked with its reason.</summary>
public static class SpecCompletion
{
    /// <summary>Usual difference between the advertised duration and the one at .050, crank degrees (common practice).</summary>
    private const double UsualRampsCrankDeg = 50, UsualSolidRampsCrankDeg = 34;

    /// <summary>Usual lash of solid lifters at the valve, in (common practice; the maker of the valve train decides).</summary>
    private const double UsualLashIn = .016;

    public static CompletedSpec Complete(CamSpec spec, EngineFamily? family)
    {
        var problems = SpecCheck.Problems(spec, family);
        var needed = Needed(spec).ToList();
        var toOrder = NeededToOrder(spec, family);
        if (problems.Count > 0 || needed.Count > 0 || family is null || spec.Lifter is not { } lifter)
            return new CompletedSpec(null, [], problems, needed) { NeededToOrder = toOrder };
        var filling = new Filling();
        var grind = Fill(spec, family, lifter, filling);
        var late = LateProblems(grind).ToList();
        return new CompletedSpec(late.Count == 0 ? grind : null, filling.Fields, late, []) { NeededToOrder = toOrder };
    }

    /// <summary>Without it both hands can be judged, but neither can be ordered.</summary>
    private static IReadOnlyList<FieldProblem> NeededToOrder(CamSpec spec, EngineFamily? family) => family is { HasSides: true } && spec.Side is null
        ? [new FieldProblem("side", "This engine has a left and a right camshaft: choose which one.")]
        : [];

    private static IEnumerable<FieldProblem> Needed(CamSpec spec)
    {
        if (spec.EngineFamily is null)
            yield return new FieldProblem("engineFamily", "Choose the engine family.");
        if (spec.Lifter is null)
            yield return new FieldProblem("lifter", "Choose the kind of lifter.");
        if (spec.Intake.LobeLiftIn is null && spec.Intake.ValveLiftIn is null)
            yield return new FieldProblem("intake.lobeLiftIn", "Give the lobe lift or the valve lift of the intake.");
        if (spec.Intake.DurationAt050CrankDeg is null)
            yield return new FieldProblem("intake.durationAt050CrankDeg", "Give the intake duration at .050.");
    }

    private static GrindSpec Fill(CamSpec spec, EngineFamily family, LifterType lifter, Filling fill)
    {
        var ratio = fill.In(spec.RockerRatio, family.RockerRatio, "rockerRatio", "the family's usual rocker");
        var lsa = fill.Deg(spec.LobeSeparationCamDeg ?? FromAdvance(spec), family.UsualLobeSeparationCamDeg, "lobeSeparationCamDeg", "the family's usual lobe separation");
        var icl = fill.Deg(spec.IntakeCenterlineCrankDeg ?? (lsa - spec.AdvanceCrankDeg), lsa - family.UsualAdvanceCrankDeg, "intakeCenterlineCrankDeg", "lobe separation less the family's usual advance");
        var usualFollower = lifter.IsRoller() ? family.RollerDiameterIn : family.FootDiameterIn;
        var intake = Lobe(spec.Intake, "intake", lifter, ratio, fill);
        var exhaustIsBlank = spec.Exhaust == new LobeWish();
        var exhaust = exhaustIsBlank ? intake : Lobe(Merge(spec.Exhaust, spec.Intake, fill), "exhaust", lifter, ratio, fill);
        if (exhaustIsBlank)
            fill.Note("exhaust", "like the intake", "nothing was given for the exhaust lobe");
        return new GrindSpec
        {
            EngineFamily = family.Code,
            Side = spec.Side,
            Lifter = lifter,
            FollowerDiameterIn = fill.In(spec.FollowerDiameterIn, usualFollower, "followerDiameterIn", "the family's usual lifter"),
            Intake = intake,
            Exhaust = exhaust,
            RockerRatio = ratio,
            LobeSeparationCamDeg = lsa,
            IntakeCenterlineCrankDeg = icl,
            IntakeLashIn = Lash(spec.Intake.LashIn, "intake", lifter, fill),
            ExhaustLashIn = Lash(spec.Exhaust.LashIn ?? spec.Intake.LashIn, "exhaust", lifter, fill),
            DistributorGear = spec.DistributorGear,
            MechanicalFuelPump = spec.MechanicalFuelPump,
            MaxBaseCircleDiameterIn = spec.MaxBaseCircleDiameterIn,
            FiringOrder = fill.Text(spec.FiringOrder, family.FiringOrder, "firingOrder", "the family's usual order"),
        };
    }

    private static double? FromAdvance(CamSpec spec) => spec.IntakeCenterlineCrankDeg + spec.AdvanceCrankDeg;

    /// <summary>An exhaust lobe that is only partly known takes the rest from the intake.</summary>
    private static LobeWish Merge(LobeWish exhaust, LobeWish intake, Filling fill)
    {
        var noLift = exhaust.LobeLiftIn is null && exhaust.ValveLiftIn is null;
        return exhaust with
        {
            LobeLiftIn = noLift ? fill.Like(null, intake.LobeLiftIn, "exhaust.lobeLiftIn") : exhaust.LobeLiftIn,
            ValveLiftIn = noLift ? fill.Like(null, intake.ValveLiftIn, "exhaust.valveLiftIn") : exhaust.ValveLiftIn,
            DurationAt050CrankDeg = fill.Like(exhaust.DurationAt050CrankDeg, intake.DurationAt050CrankDeg, "exhaust.durationAt050CrankDeg"),
            AdvertisedAtIn = fill.Like(exhaust.AdvertisedAtIn, intake.AdvertisedAtIn, "exhaust.advertisedAtIn"),
        };
    }

    private static LobeSpec Lobe(LobeWish wish, string path, LifterType lifter, double ratio, Filling fill)
    {
        var at = fill.In(wish.AdvertisedAtIn, lifter.AdvertisedAtIn(), $"{path}.advertisedAtIn", $"usual for a {lifter.Words()}");
        var lift = wish.LobeLiftIn ?? wish.ValveLiftIn!.Value / ratio;
        var at050 = wish.DurationAt050CrankDeg!.Value;
        var advertised = wish.AdvertisedDurationCrankDeg
            ?? fill.Deg(null, UsualAdvertised(lift, at050, at, lifter), $"{path}.advertisedDurationCrankDeg", "the shop's usual ramps");
        return new LobeSpec(lift, at050, advertised, at);
    }

    /// <summary>The usual advertised duration, or the nearest one that the lift law reaches.</summary>
    private static double UsualAdvertised(double lift, double at050, double at, LifterType lifter)
    {
        var usual = at050 + (lifter.IsSolid() ? UsualSolidRampsCrankDeg : UsualRampsCrankDeg);
        if (PolynomialLaw.TrySolve(new LobeSpec(lift, at050, usual, at), out _, out var error))
            return usual;
        return error is { ReachableAdvertisedMinCrankDeg: { } least, ReachableAdvertisedMaxCrankDeg: { } most }
            ? Math.Clamp(usual, Math.Ceiling(least), Math.Max(Math.Ceiling(least), Math.Floor(most)))
            : usual;
    }

    private static double Lash(double? given, string path, LifterType lifter, Filling fill) =>
        lifter.IsSolid() ? fill.In(given, UsualLashIn, $"{path}.lashIn", "usual for solid lifters; the valve train's maker decides") : 0;

    private static IEnumerable<FieldProblem> LateProblems(GrindSpec grind)
    {
        foreach (var (lobe, path) in new[] { (grind.Intake, "intake"), (grind.Exhaust, "exhaust") })
        {
            if (FieldRange.LobeLift.Check(lobe.LobeLiftIn, $"{path}.lobeLiftIn") is { } lift)
                yield return lift;
            else if (!PolynomialLaw.TrySolve(lobe, out _, out var error))
                yield return new FieldProblem($"{path}.advertisedDurationCrankDeg", error.Message, error.ReachableAdvertisedMinCrankDeg, error.ReachableAdvertisedMaxCrankDeg);
        }
        if (FieldRange.LobeSeparation.Check(grind.LobeSeparationCamDeg, "lobeSeparationCamDeg") is { } separation)
            yield return separation;
        if (FieldRange.IntakeCenterline.Check(grind.IntakeCenterlineCrankDeg, "intakeCenterlineCrankDeg") is { } centerline)
            yield return centerline;
        if (SpecCheck.ExhaustCenterline(grind.LobeSeparationCamDeg, grind.IntakeCenterlineCrankDeg) is { } exhaust)
            yield return exhaust;
    }

    /// <summary>Takes the given value, or the usual one and notes that it did.</summary>
    private sealed class Filling
    {
        public List<FilledField> Fields { get; } = [];

        public double In(double? given, double usual, string field, string why) => Take(given, usual, field, usual.ToString(".000#", CultureInfo.InvariantCulture), why);

        public double Deg(double? given, double usual, string field, string why) => Take(given, usual, field, usual.ToString("0.#", CultureInfo.InvariantCulture), why);

        public string Text(string? given, string usual, string field, string why)
        {
            if (given is null)
                Note(field, usual, why);
            return given ?? usual;
        }

        /// <summary>The exhaust's own figure, or the intake's where that is known.</summary>
        public double? Like(double? own, double? intake, string field)
        {
            if (own is null && intake is { } taken)
                Note(field, taken.ToString("0.###", CultureInfo.InvariantCulture), "like the intake");
            return own ?? intake;
        }

        public void Note(string field, string value, string why) => Fields.Add(new FilledField(field, value, why));

        private double Take(double? given, double usual, string field, string text, string why)
        {
            if (given is null)
                Note(field, text, why);
            return given ?? usual;
        }
    }
}
