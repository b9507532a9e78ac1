using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>Judges one blank for one cam: rules of the trade first, then the metal of both lobes.</summary>
internal static class BlankJudge
{
    public static BlankFit Judge(FinishedCam cam, StockedBlank stocked, CamRules rules)
    {
        var part = stocked.Blank.Part;
        var limits = rules.Shop.Limits(stocked.Blank);
        var turns = Turns.Of(cam.Grind, part.Nominal);
        var intake = cam.IntakeJudge(limits).Judge(stocked.Blank.Intake, turns.MetalIntakeCamDeg);
        var exhaust = cam.ExhaustJudge(limits).Judge(stocked.Blank.Exhaust, turns.MetalExhaustCamDeg);
        var against = BlankObjections.Of(cam, stocked.Blank, intake, exhaust, rules).ToList();
        var lobes = against.Count == 0 ? LobeTurns.Of(cam.Grind, cam.Family, part) : null;
        if (lobes?.Words is { } elsewhere)
        {
            var (movedIntake, movedExhaust) = Moved(cam, stocked.Blank, limits, lobes);
            against = [.. BlankObjections.Of(cam, stocked.Blank, movedIntake, movedExhaust, rules)];
            if (against.Count > 0 || lobes.Unknown is not null)
                against.Insert(0, elsewhere);
            else
                (intake, exhaust) = (movedIntake, movedExhaust);
        }
        var fits = against.Count == 0;
        var common = fits ? Common(cam, stocked.Blank, limits, lobes!, intake, exhaust) : null;
        var gear = rules.Gear(part.Gear);
        return new BlankFit
        {
            PartNumber = part.PartNumber,
            InStock = stocked.Available > 0,
            Fits = fits,
            Lot = stocked.Lot,
            Metal = stocked.Lot is null ? null : stocked.Blank.Metal,
            IntakeBaseCircleDiameterIn = Found(intake.BaseCircleDiameterIn),
            ExhaustBaseCircleDiameterIn = Found(exhaust.BaseCircleDiameterIn),
            CommonBaseCircleDiameterIn = common,
            MinRemovalIn = Found(intake, exhaust) ? Math.Min(intake.MinRemovalIn, exhaust.MinRemovalIn) : null,
            MaxRemovalIn = Found(intake, exhaust) ? Math.Max(intake.MaxRemovalIn, exhaust.MaxRemovalIn) : null,
            LeastCaseLeftIn = Found(intake, exhaust) ? Smaller(intake.LeastCaseLeftIn, exhaust.LeastCaseLeftIn) : null,
            IntakeTurnCamDeg = turns.IntakeCamDeg,
            ExhaustTurnCamDeg = turns.ExhaustCamDeg,
            NeedsHeatTreat = part.IsSoft,
            LeadTimeDays = stocked.Available > 0 ? 0 : part.LeadTimeDays,
            Gear = gear,
            Free = fits && gear.Verdict != GearVerdict.No && stocked.Available > 0
                ? [new FreeMetal(stocked.Blank.Metal, stocked.Available, Math.Max(intake.MaxRemovalIn, exhaust.MaxRemovalIn))]
                : [],
            Cautions = fits ? rules.Advice(part) : [],
            Reasons = [.. FromLot(stocked), .. fits ? BlankMerits.Of(cam, stocked.Blank, intake, exhaust, turns, common, rules) : against],
        };
    }

    private static IEnumerable<string> FromLot(StockedBlank stocked) =>
        stocked.Lot is null ? [] : [$"From lot {stocked.Lot}: {stocked.Blank.Metal.Words(stocked.Blank.Part)}."];

    /// <summary>The smaller of the two base circles, if the other lobe keeps its case and its shape on it.</summary>
    private static double? Common(FinishedCam cam, PreparedBlank blank, BandLimits limits, LobeTurns lobes, BandAnswer intake, BandAnswer exhaust)
    {
        var common = Math.Min(intake.BaseCircleDiameterIn, exhaust.BaseCircleDiameterIn);
        var other = intake.BaseCircleDiameterIn > common
            ? AllAt(new BandJudge(cam.Intake, limits, common), blank.Intake, lobes.Metal(ValveKind.Intake))
            : AllAt(new BandJudge(cam.Exhaust, limits, common), blank.Exhaust, lobes.Metal(ValveKind.Exhaust));
        return other.Fits ? common : null;
    }

    /// <summary>Whatever the owner's rule says to another firing order: the metal must be where its lobes are.</summary>
    private static (BandAnswer Intake, BandAnswer Exhaust) Moved(FinishedCam cam, PreparedBlank blank, BandLimits limits, LobeTurns lobes) =>
    (
        LeastOf(cam.IntakeJudge(limits), circle => new BandJudge(cam.Intake, limits, circle), blank.Intake, lobes.Metal(ValveKind.Intake)),
        LeastOf(cam.ExhaustJudge(limits), circle => new BandJudge(cam.Exhaust, limits, circle), blank.Exhaust, lobes.Metal(ValveKind.Exhaust))
    );

    /// <summary>All lobes of a kind are ground on one base circle: the largest that the worst placed of them allows.</summary>
    private static BandAnswer LeastOf(BandJudge judge, Func<double, BandJudge> at, BlankOutline blank, IReadOnlyList<double> turnsCamDeg)
    {
        var worst = turnsCamDeg.Select(turn => judge.Judge(blank, turn)).MinBy(answer => (answer.Fits, answer.BaseCircleDiameterIn));
        return turnsCamDeg.Count == 1 || !worst.Fits ? worst : AllAt(at(worst.BaseCircleDiameterIn), blank, turnsCamDeg);
    }

    /// <summary>Of all lobes of a kind the one that comes out worst on the judge's base circle.</summary>
    private static BandAnswer AllAt(BandJudge judge, BlankOutline blank, IReadOnlyList<double> turnsCamDeg) =>
        turnsCamDeg.Select(turn => judge.Judge(blank, turn)).MinBy(answer => (answer.Fits, -answer.MaxRemovalIn));

    private static bool Found(BandAnswer intake, BandAnswer exhaust) => intake.BaseCircleDiameterIn > 0 && exhaust.BaseCircleDiameterIn > 0;

    private static double? Found(double diameterIn) => diameterIn > 0 ? diameterIn : null;

    private static double? Smaller(double? one, double? other) => one is { } a && other is { } b ? Math.Min(a, b) : null;
}

/// <summary>By how much each lobe is turned against the blank's, by the definition (cam degrees) and as a turn of the metal.</summary>
internal readonly record struct Turns(double IntakeCamDeg, double ExhaustCamDeg)
{
    public double MetalIntakeCamDeg => IntakeCamDeg;

    /// <summary>An earlier exhaust turns the metal the other way.</summary>
    public double MetalExhaustCamDeg => -ExhaustCamDeg;

    public static Turns Of(GrindSpec grind, NominalGrind? nominal) => nominal is null
        ? default
        : new Turns((grind.IntakeCenterlineCrankDeg - nominal.IntakeCenterlineCrankDeg) / 2, (grind.ExhaustCenterlineCrankDeg - nominal.ExhaustCenterlineCrankDeg) / 2);
}
