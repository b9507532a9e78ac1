namespace GrindShop.Web.Drawings;

/// <summary>The curve at a depth below a closed contour: every point moved inward along the normal, those that come nearer than the depth trimmed away.</summary>
public static class InwardOffset
{
    /// <summary>A moved point may be this much nearer than the depth because the contour is a chain of chords, in.</summary>
    private const double ToleranceIn = 2e-4;

    /// <param name="contour">Closed contour counter-clockwise round the shaft axis, in.</param>
    /// <param name="depthIn">Depth along the inward normal, in.</param>
    /// <returns>The points of the trimmed curve in order; empty where nothing lies that deep.</returns>
    public static IReadOnlyList<(double X, double Y)> Of(IReadOnlyList<(double X, double Y)> contour, double depthIn) =>
        [.. Enumerable.Range(0, contour.Count).Select(i => Moved(contour, i, depthIn)).Where(point => IsDeep(contour, point, depthIn))];

    /// <summary>Shortest distance from a point to a closed contour, in.</summary>
    public static double DistanceIn(IReadOnlyList<(double X, double Y)> contour, (double X, double Y) point)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < contour.Count; i++)
            least = Math.Min(least, ToChord(contour[i], contour[(i + 1) % contour.Count], point));
        return least;
    }

    private static bool IsDeep(IReadOnlyList<(double X, double Y)> contour, (double X, double Y) point, double depthIn) =>
        DistanceIn(contour, point) >= depthIn - ToleranceIn;

    private static (double X, double Y) Moved(IReadOnlyList<(double X, double Y)> contour, int i, double depthIn)
    {
        var (before, after) = (contour[(i + contour.Count - 1) % contour.Count], contour[(i + 1) % contour.Count]);
        double dx = after.X - before.X, dy = after.Y - before.Y, length = Math.Sqrt(dx * dx + dy * dy);
        return (contour[i].X - depthIn * dy / length, contour[i].Y + depthIn * dx / length);
    }

    private static double ToChord((double X, double Y) from, (double X, double Y) to, (double X, double Y) point)
    {
        double dx = to.X - from.X, dy = to.Y - from.Y;
        var share = Math.Clamp(((point.X - from.X) * dx + (point.Y - from.Y) * dy) / (dx * dx + dy * dy), 0, 1);
        double ox = point.X - from.X - share * dx, oy = point.Y - from.Y - share * dy;
        return Math.Sqrt(ox * ox + oy * oy);
    }
}
