using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Web.Drawings;

/// <summary>A timing diagram in words.</summary>
public static class TimingWords
{
    public static string Of(ValveEvents events) => string.Create(CultureInfo.InvariantCulture,
        $"Exhaust opens {Side(events.ExhaustOpensBbdc, "before", "after")} bottom dead centre and closes {Side(events.ExhaustClosesAtdc, "after", "before")} top dead centre. " +
        $"Intake opens {Side(events.IntakeOpensBtdc, "before", "after")} top dead centre and closes {Side(events.IntakeClosesAbdc, "after", "before")} bottom dead centre. ") + Overlap(events);

    private static string Overlap(ValveEvents events) => events.OverlapCrankDeg >= 0
        ? string.Create(CultureInfo.InvariantCulture, $"Both are open together for {events.OverlapCrankDeg:0.0} crank degrees.")
        : string.Create(CultureInfo.InvariantCulture, $"Both are closed between for {-events.OverlapCrankDeg:0.0} crank degrees.");

    private static string Side(double crankDeg, string side, string other) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(crankDeg):0.0} crank degrees {(crankDeg < 0 ? other : side)}");
}
