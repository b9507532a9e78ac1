namespace GrindShop.Web.Drawings;

/// <summary>One place on a finished lobe.</summary>
/// <param name="CamDeg">Cam angle from the nose, opening side negative.</param>
/// <param name="LiftIn">Lifter lift there.</param>
/// <param name="RemovalIn">Metal that comes off there along the normal, in; negative where it is missing.</param>
/// <param name="CaseLeftIn">Hardened case left there, in; null where it has no end, negative where it is ground through.</param>
/// <param name="Point">The place in the section's own frame, in.</param>
public sealed record LobeReading(double CamDeg, double LiftIn, double RemovalIn, double? CaseLeftIn, (double X, double Y) Point);

/// <summary>On which side of a blank's surface does a point lie?</summary>
internal static class BlankSide
{
    /// <param name="blank">Closed outline round the axis, its points at equal polar angles from 0 on.</param>
    /// <param name="point">The point, in.</param>
    public static bool IsInside(IReadOnlyList<(double X, double Y)> blank, (double X, double Y) point)
    {
        var turn = (Math.Atan2(point.Y, point.X) / Math.Tau + 1) % 1 * blank.Count;
        var (from, to) = (blank[(int)turn % blank.Count], blank[((int)turn + 1) % blank.Count]);
        return (to.X - from.X) * (point.Y - from.Y) - (to.Y - from.Y) * (point.X - from.X) >= 0;
    }
}
