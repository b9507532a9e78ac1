using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>The wanted cam with everything that does not depend on the blank, computed once for a question.</summary>
public sealed class FinishedCam
{
    public FinishedCam(GrindSpec grind, EngineFamily family)
        : this(grind, family, lobe => new FinishLobe(PolynomialLaw.Solve(lobe), grind.Follower()))
    {
    }

    internal FinishedCam(GrindSpec grind, EngineFamily family, Func<LobeSpec, FinishLobe> drawn)
    {
        (Grind, Family) = (grind, family);
        Intake = drawn(grind.Intake);
        Exhaust = grind.Exhaust == grind.Intake ? Intake : drawn(grind.Exhaust);
        LargestBaseCircleIn = RoomIn(grind, family);
    }

    public GrindSpec Grind { get; }

    public EngineFamily Family { get; }

    public FinishLobe Intake { get; }

    public FinishLobe Exhaust { get; }

    /// <summary>What bearing bores and the customer's engine leave room for, diameter in inches; null where nothing limits it.</summary>
    public double? LargestBaseCircleIn { get; }

    /// <inheritdoc cref="LargestBaseCircleIn"/>
    public static double? RoomIn(GrindSpec grind, EngineFamily family) =>
        Smaller(family.BoreLimitIn(Math.Max(grind.Intake.LobeLiftIn, grind.Exhaust.LobeLiftIn)), grind.MaxBaseCircleDiameterIn);

    public BandJudge IntakeJudge(BandLimits limits) => Judge(Intake, limits);

    public BandJudge ExhaustJudge(BandLimits limits) => Judge(Exhaust, limits);

    /// <summary>No room at all is judged as the least a length can be.</summary>
    private BandJudge Judge(FinishLobe lobe, BandLimits limits) => new(lobe, limits, null, LargestBaseCircleIn is { } largest ? Math.Max(largest, 1e-3) : null);

    private static double? Smaller(double? one, double? other) => one is { } a && other is { } b ? Math.Min(a, b) : one ?? other;
}
