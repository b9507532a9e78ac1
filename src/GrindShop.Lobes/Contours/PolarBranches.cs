using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>
/// Polar radius of a contour given by its touching points. A direction may meet several branches when the contour is undercut;
/// the innermost one is metal, since the follower's passes remove everything beyond it.
/// </summary>
internal sealed class PolarBranches(ImmutableArray<ContourPoint> points, Rolling rolling)
{
    private readonly double[] angles = [.. points.Select(p => p.PolarAngleRad)];

    public double RadiusIn(double polarRad)
    {
        var radius = double.PositiveInfinity;
        for (var i = 0; i < angles.Length; i++)
        {
            double a = AngleMath.Wrap(angles[i] - polarRad), b = AngleMath.Wrap(angles[(i + 1) % angles.Length] - polarRad);
            if (a * b <= 0 && Math.Abs(a - b) < 1)
                radius = Math.Min(radius, OnBranch(i, polarRad));
        }
        return double.IsPositiveInfinity(radius) ? rolling.BaseRadiusIn : radius;
    }

    private double OnBranch(int i, double polarRad)
    {
        var from = points[i].CamRad;
        var cam = Root.InBracket(
            x => AngleMath.Wrap(rolling.At(x).PolarAngleRad - polarRad), from, from + Math.Tau / points.Length, 1e-14);
        return rolling.At(cam).PolarRadiusIn;
    }
}
