using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>Finished cams by their figures, so that every lobe of a question is drawn once.</summary>
internal sealed class DrawnCams(EngineFamily family)
{
    private readonly Dictionary<(LobeSpec, Follower), FinishLobe> _lobes = [];

    public FinishedCam Of(GrindSpec grind) => new(grind, family, lobe => Drawn(lobe, grind.Follower()));

    private FinishLobe Drawn(LobeSpec lobe, Follower follower)
    {
        if (!_lobes.TryGetValue((lobe, follower), out var drawn))
            _lobes.Add((lobe, follower), drawn = new FinishLobe(PolynomialLaw.Solve(lobe), follower));
        return drawn;
    }
}

/// <summary>Tries grinds on one blank whose rules of the trade allow them: metal, case, least base circle and shape, without words.</summary>
internal sealed class BlankTrial(StockedBlank stocked, DrawnCams cams, ShopRules rules, CancellationToken cancel)
{
    private const int QuarterDegrees = 4, WidestTurnCamDeg = 30;
    private const double ToleranceCamDeg = .004;
    private readonly BandLimits _limits = rules.Limits(stocked.Blank);

    public StockedBlank Stocked => stocked;

    public bool InStock => stocked.Available > 0;

    public bool Takes(GrindSpec? grind)
    {
        if (grind is null)
            return false;
        var turns = Turns.Of(grind, stocked.Blank.Part.Nominal);
        var cam = cams.Of(grind);
        return Takes(cam, cam.Intake, stocked.Blank.Intake, turns.MetalIntakeCamDeg) && Takes(cam, cam.Exhaust, stocked.Blank.Exhaust, turns.MetalExhaustCamDeg);
    }

    /// <summary>How far either lobe may be turned from the blank's, cam degrees; null where one of them does not come out even in line with it.</summary>
    public Turns? Reach(GrindSpec grind)
    {
        var cam = cams.Of(grind);
        return Reach(cam, cam.Intake, stocked.Blank.Intake) is { } intake && Reach(cam, cam.Exhaust, stocked.Blank.Exhaust) is { } exhaust
            ? new Turns(intake, exhaust)
            : null;
    }

    /// <summary>Both lobes are symmetric, so the metal is best in line and grows scarcer with the turn, alike on both sides.</summary>
    private double? Reach(FinishedCam cam, FinishLobe lobe, BlankOutline blank)
    {
        if (!Takes(cam, lobe, blank, 0))
            return null;
        if (stocked.Blank.Part.Nominal is null)
            return double.PositiveInfinity;
        if (LeastStep.Of(WidestTurnCamDeg * QuarterDegrees, step => !Takes(cam, lobe, blank, (double)step / QuarterDegrees)) is not { } first)
            return WidestTurnCamDeg;
        double fits = (first - 1.0) / QuarterDegrees, fails = (double)first / QuarterDegrees;
        while (fails - fits > ToleranceCamDeg)
        {
            var middle = (fits + fails) / 2;
            (fits, fails) = Takes(cam, lobe, blank, middle) ? (middle, fails) : (fits, middle);
        }
        return fits;
    }

    private bool Takes(FinishedCam cam, FinishLobe lobe, BlankOutline blank, double turnCamDeg)
    {
        cancel.ThrowIfCancellationRequested();
        var least = Math.Max(stocked.Blank.Part.LeastBaseCircleIn, cam.Family.LeastBaseCircleIn);
        if (cam.LargestBaseCircleIn < least || LobeShape.OutgrowsFoot(lobe, cam.Grind) || cam.LargestBaseCircleIn < lobe.LeastBaseCircleDiameterIn)
            return false;
        var answer = new BandJudge(lobe, _limits, null, cam.LargestBaseCircleIn).Judge(blank, turnCamDeg);
        return answer.Fits && answer.BaseCircleDiameterIn >= least;
    }
}
