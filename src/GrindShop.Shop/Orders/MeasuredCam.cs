using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>A used cam as it was measured when it came in: the metal that a regrind is made from. Lengths in inches, durations in crank degrees.</summary>
public sealed record MeasuredCam
{
    /// <summary>How the used cam is named among blanks.</summary>
    public const string PartNumber = "USED CAM";

    /// <summary>Diameter.</summary>
    public required double BaseCircleDiameterIn { get; init; }

    public required double IntakeLobeLiftIn { get; init; }

    public required double ExhaustLobeLiftIn { get; init; }

    public required double IntakeDurationAt050CrankDeg { get; init; }

    public required double ExhaustDurationAt050CrankDeg { get; init; }

    public required BlankAlloy Alloy { get; init; }

    public required Hardening Hardening { get; init; }

    /// <summary>Hardened layer that is left under the used lobe; null where it has no end or nobody knows.</summary>
    public double? CaseLeftIn { get; init; }

    /// <summary>Figures that no used cam has.</summary>
    public IEnumerable<FieldProblem> Problems()
    {
        (string Field, string Name, double Value, double Least, double Most, string Unit)[] figures =
        [
            ("measured.baseCircleDiameterIn", "base circle", BaseCircleDiameterIn, .3, 3, "in"),
            ("measured.intakeLobeLiftIn", "intake lobe lift", IntakeLobeLiftIn, .1, .8, "in"),
            ("measured.exhaustLobeLiftIn", "exhaust lobe lift", ExhaustLobeLiftIn, .1, .8, "in"),
            ("measured.intakeDurationAt050CrankDeg", "intake duration at .050", IntakeDurationAt050CrankDeg, 150, 320, "crank deg"),
            ("measured.exhaustDurationAt050CrankDeg", "exhaust duration at .050", ExhaustDurationAt050CrankDeg, 150, 320, "crank deg"),
        ];
        foreach (var (field, name, value, least, most, unit) in figures.Where(figure => !(figure.Value >= figure.Least && figure.Value <= figure.Most)))
            yield return new FieldProblem(field, FormattableString.Invariant($"The measured {name} must lie between {least} and {most} {unit}."));
        if ((Hardening is Hardening.Induction or Hardening.Carburized) != (CaseLeftIn is not null))
            yield return new FieldProblem("measured.caseLeftIn", "An induction-hardened or carburized cam has a case: give what is left of it, and nothing for any other.");
        if (CaseLeftIn is < 0 or > .6)
            yield return new FieldProblem("measured.caseLeftIn", "The case left must lie between 0 and .6 in.");
    }

    /// <summary>Lift and duration that no lobe of the wanted ramps can have together, or null.</summary>
    public FieldProblem? Undrawable(GrindSpec grind)
    {
        (string Field, LobeSpec Lobe)[] lobes =
        [
            ("measured.intakeDurationAt050CrankDeg", Worn(grind.Intake, IntakeLobeLiftIn, IntakeDurationAt050CrankDeg)),
            ("measured.exhaustDurationAt050CrankDeg", Worn(grind.Exhaust, ExhaustLobeLiftIn, ExhaustDurationAt050CrankDeg)),
        ];
        return lobes.Where(lobe => !PolynomialLaw.TrySolve(lobe.Lobe, out _, out _)).Select(lobe => new FieldProblem(lobe.Field, "Measured lift and duration do not go together: measure again.")).FirstOrDefault();
    }

    /// <summary>
    /// Can the grind be made from this used cam? Its lobes are taken as worn lobes of the grind's own ramps, with no stock around them; they are cleaned up
    /// everywhere like any blank's.
    /// </summary>
    public FeasibilityAnswer Judge(GrindSpec grind, EngineFamily family, ShopRules rules)
    {
        var answer = FeasibilityJudge.Judge(grind, family, [new StockedBlank(PreparedBlank.Of(AsBlank(grind, family)), 1)], rules);
        var fit = answer.Blanks[0];
        return answer with { Reasons = fit.Usable ? ["The used cam has the metal for this grind."] : ["The used cam cannot become this grind.", .. fit.Reasons] };
    }

    private BlankPart AsBlank(GrindSpec grind, EngineFamily family) => new()
    {
        PartNumber = PartNumber,
        EngineFamily = family,
        Form = BlankForm.Milled,
        Alloy = Alloy,
        Hardening = Hardening,
        CaseDepthIn = CaseLeftIn,
        Gear = family.Gear == GearPosition.None ? CamGear.None : Gear,
        Side = grind.Side,
        FuelPumpLobe = family.FuelPumpLobe,
        Nominal = new NominalGrind
        {
            Intake = Worn(grind.Intake, IntakeLobeLiftIn, IntakeDurationAt050CrankDeg),
            Exhaust = Worn(grind.Exhaust, ExhaustLobeLiftIn, ExhaustDurationAt050CrankDeg),
            FollowerKind = grind.Lifter.IsRoller() ? FollowerKind.Roller : FollowerKind.Flat,
            RollerRadiusIn = grind.Lifter.IsRoller() ? grind.FollowerDiameterIn / 2 : 0,
            BaseCircleDiameterIn = BaseCircleDiameterIn,
            StockIn = 0,
            LobeSeparationCamDeg = grind.LobeSeparationCamDeg,
            IntakeCenterlineCrankDeg = grind.IntakeCenterlineCrankDeg,
        },
        FiringOrder = grind.FiringOrder,
        LeastBaseCircleIn = family.LeastBaseCircleIn,
        Supplier = new Vendor { Code = "OWN", Name = "the customer", Kind = VendorKind.BlankSupplier, LeadTimeDays = 0 },
        Cost = 0,
        LeadTimeDays = 0,
    };

    private CamGear Gear => Alloy switch
    {
        BlankAlloy.HardenableIron => CamGear.HardenableIron,
        BlankAlloy.AustemperedDuctileIron => CamGear.AustemperedDuctileIron,
        _ => CamGear.Steel,
    };

    private static LobeSpec Worn(LobeSpec wanted, double liftIn, double at050CrankDeg) =>
        new(liftIn, at050CrankDeg, at050CrankDeg + wanted.AdvertisedDurationCrankDeg - wanted.DurationAt050CrankDeg, wanted.AdvertisedAtIn);
}
