using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>The wanted cam with everything that does not depend on the blank, computed once for a question.</summary>
public sealed class FinishedCam
{
    public FinishedCam(GrindSpec grind, EngineFamily family)
    {
        (Grind, Family) = (grind, family);
        var follower = grind.Follower();
        Intake = new FinishLobe(PolynomialLaw.Solve(grind.Intake), follower);
        Exhaust = grind.Exhaust == grind.Intake ? Intake : new FinishLobe(PolynomialLaw.Solve(grind.Exhaust), follower);
        LargestBaseCircleIn = Smaller(family.BoreLimitIn(Math.Max(grind.Intake.LobeLiftIn, grind.Exhaust.LobeLiftIn)), grind.MaxBaseCircleDiameterIn);
    }

    public GrindSpec Grind { get; }

    public EngineFamily Family { get; }

    public FinishLobe Intake { get; }

    public FinishLobe Exhaust { get; }

    /// <summary>What bearing bores and the customer's engine leave room for, diameter in inches; null where nothing limits it.</summary>
    public double? LargestBaseCircleIn { get; }

    public BandJudge IntakeJudge(BandLimits limits) => Judge(Intake, limits);

    public BandJudge ExhaustJudge(BandLimits limits) => Judge(Exhaust, limits);

    /// <summary>No room at all is judged as the least a length can be.</summary>
    private BandJudge Judge(FinishLobe lobe, BandLimits limits) => new(lobe, limits, null, LargestBaseCircleIn is { } largest ? Math.Max(largest, 1e-3) : null);

    private static double? Smaller(double? one, double? other) => one is { } a && other is { } b ? Math.Min(a, b) : one ?? other;
}
