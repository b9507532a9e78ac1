namespace GrindShop.Lobes;

/// <summary>Collects a closed curve, point by point, into one radius a direction; where branches overlap, keeps the inner or the outer.</summary>
internal sealed class PolarSweep(int count, bool outermost)
{
    private readonly double[] radius = Enumerable.Repeat(double.NaN, count).ToArray();
    private readonly double step = Math.Tau / count;
    private (double Angle, double Radius)? last;

    public void Add(double angleRad, double radiusIn)
    {
        if (last is { } from)
            Span(from.Angle, from.Radius, AngleMath.Wrap(angleRad - from.Angle), radiusIn);
        last = (angleRad, radiusIn);
    }

    /// <summary>The radii; directions that no branch met keep a fallback.</summary>
    public double[] Finish(double fallbackIn)
    {
        for (var i = 0; i < radius.Length; i++)
            if (double.IsNaN(radius[i]))
                radius[i] = Math.Max(fallbackIn, 0);
        return radius;
    }

    private void Span(double from, double r0, double width, double r1)
    {
        double a = Math.Min(from, from + width) / step, b = Math.Max(from, from + width) / step;
        for (var i = (int)Math.Ceiling(a - 1e-9); i <= b + 1e-9; i++)
        {
            var share = width == 0 ? 0 : Math.Clamp((i * step - from) / width, 0, 1);
            Keep(((i % count) + count) % count, r0 + share * (r1 - r0));
        }
    }

    private void Keep(int i, double r)
    {
        if (double.IsNaN(radius[i]) || (outermost ? r > radius[i] : r < radius[i]))
            radius[i] = r;
    }
}
