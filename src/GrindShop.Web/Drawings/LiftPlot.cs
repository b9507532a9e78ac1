using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>Lifter lift of both lobes over the crank angle, laid out for drawing.</summary>
public sealed class LiftPlot
{
    public const double Height = 220;
    private const double Ground = 180, Room = 160, StepCrankDeg = 2;
    private readonly double _highestIn;

    public LiftPlot(LiftLaw intake, LiftLaw exhaust, ValveEvents events)
    {
        (IntakeAtCrankDeg, ExhaustAtCrankDeg) = (events.IntakeCenterlineCrankDeg, -events.ExhaustCenterlineCrankDeg);
        _highestIn = Math.Max(intake.LobeLiftIn, exhaust.LobeLiftIn);
        Axis = CrankAxis.For(events, 60);
        Intake = Curve(intake, IntakeAtCrankDeg);
        Exhaust = Curve(exhaust, ExhaustAtCrankDeg);
    }

    public CrankAxis Axis { get; }

    /// <summary>Where the lobe centres stand, crank degrees after overlap top dead centre.</summary>
    public double IntakeAtCrankDeg { get; }

    public double ExhaustAtCrankDeg { get; }

    /// <summary>Path data.</summary>
    public string Intake { get; }

    public string Exhaust { get; }

    public double Y(double liftIn) => Ground - liftIn / _highestIn * Room;

    /// <summary>The cam turns half as fast as the crank.</summary>
    private string Curve(LiftLaw law, double centreCrankDeg)
    {
        var steps = (int)((Axis.ToCrankDeg - Axis.FromCrankDeg) / StepCrankDeg);
        var degrees = Enumerable.Range(0, steps + 1).Select(i => Axis.FromCrankDeg + i * StepCrankDeg);
        return SvgPath.Line(degrees.Select(deg => (Axis.X(deg), -Y(law.At(double.DegreesToRadians((deg - centreCrankDeg) / 2)).LiftIn))), 1);
    }
}
