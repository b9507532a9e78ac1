using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>Extremes over a contour: best sample, then a golden section between its neighbours.</summary>
internal sealed class ContourExtremes(Rolling rolling, ImmutableArray<ContourPoint> points)
{
    private readonly double step = Math.Tau / points.Length;

    public double LeastConvexRadius() => Least(ConvexRadius);

    public double? LeastConcaveRadius()
    {
        var least = Least(ConcaveRadius);
        return double.IsPositiveInfinity(least) ? null : least;
    }

    public double GreatestPressureAngle() => -Least(x => -Math.Abs(rolling.PressureAngleRad(x)));

    private double ConvexRadius(double camRad) => rolling.At(camRad) is { IsConcave: false, RadiusIn: var r } ? r : double.PositiveInfinity;

    private double ConcaveRadius(double camRad) => rolling.At(camRad) is { IsConcave: true, RadiusIn: var r } ? r : double.PositiveInfinity;

    private double Least(Func<double, double> value)
    {
        double best = double.PositiveInfinity, at = 0;
        foreach (var point in points)
            if (value(point.CamRad) is var v && v < best)
                (best, at) = (v, point.CamRad);
        return double.IsPositiveInfinity(best) ? best : Math.Min(best, Root.Minimum(value, at - step, at + step).Value);
    }
}
