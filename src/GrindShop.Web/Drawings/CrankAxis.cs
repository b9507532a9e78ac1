using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>Crank degrees from left to right round overlap top dead centre (0): exhaust before it, intake after it.</summary>
public sealed class CrankAxis(double fromCrankDeg, double toCrankDeg)
{
    public const double Width = 640, Left = 16, Right = 16;

    public double FromCrankDeg => fromCrankDeg;

    public double ToCrankDeg => toCrankDeg;

    /// <summary>Wide enough for both bottom dead centres and for the openings themselves.</summary>
    public static CrankAxis For(ValveEvents events, double margin = 20)
    {
        var (exhaust, intake) = (Openings.Exhaust(events), Openings.Intake(events));
        return new CrankAxis(Math.Min(-220, exhaust.From - margin), Math.Max(220, intake.To + margin));
    }

    public double X(double crankDeg) => Left + (crankDeg - fromCrankDeg) / (toCrankDeg - fromCrankDeg) * (Width - Left - Right);
}

/// <summary>From where to where a valve is open, crank degrees after overlap top dead centre.</summary>
public readonly record struct Openings(double From, double To)
{
    public double Middle => (From + To) / 2;

    public static Openings Exhaust(ValveEvents events) => new(-180 - events.ExhaustOpensBbdc, events.ExhaustClosesAtdc);

    public static Openings Intake(ValveEvents events) => new(-events.IntakeOpensBtdc, 180 + events.IntakeClosesAbdc);
}
