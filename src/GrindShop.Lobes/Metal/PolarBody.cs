namespace GrindShop.Lobes;

/// <summary>
/// A solid seen from the shaft axis as one surface radius in each of <see cref="Count"/> equally spaced directions; between them
/// the surface is a chord (error under 2e-6 in on any lobe that can be ground).
/// </summary>
internal sealed class PolarBody
{
    public const int Count = 4096;
    private const double Step = Math.Tau / Count;
    private const int Stride = 8;
    private readonly double[] radius, x = new double[Count + 1], y = new double[Count + 1];

    private PolarBody(double[] radius)
    {
        (this.radius, LeastRadiusIn, GreatestRadiusIn) = (radius, radius.Min(), radius.Max());
        for (var i = 0; i <= Count; i++)
            (y[i], x[i]) = (radius[i % Count] * Math.Sin(i * Step), radius[i % Count] * Math.Cos(i * Step));
    }

    public ReadOnlySpan<double> Radii => radius;

    public double LeastRadiusIn { get; }

    public double GreatestRadiusIn { get; }

    public static PolarBody Circle(double radiusIn)
    {
        var radius = new double[Count];
        Array.Fill(radius, radiusIn);
        return new(radius);
    }

    /// <summary>The lobe of a follower, grown along its normals; crossing branches are trimmed the way the metal is.</summary>
    public static PolarBody Of(Rolling rolling, double offsetIn)
    {
        var sweep = new PolarSweep(Count, outermost: !rolling.IsFlat && offsetIn > rolling.Follower.RadiusIn);
        for (var i = 0; i <= Count; i++)
        {
            var p = rolling.At(i % Count * Step, offsetIn);
            sweep.Add(p.PolarAngleRad, p.PolarRadiusIn);
        }
        return new(sweep.Finish(rolling.BaseRadiusIn + offsetIn));
    }

    /// <summary>Distance to the surface, in: positive below it, negative outside the solid.</summary>
    public double Depth(double px, double py)
    {
        double angle = Math.Atan2(py, px), r = Math.Sqrt(px * px + py * py);
        var turns = (angle < 0 ? angle + Math.Tau : angle) / Step;
        var below = (int)turns % Count;
        var nearest = NearestSquared(px, py, below, r);
        var surface = radius[below] + (turns - Math.Floor(turns)) * (radius[(below + 1) % Count] - radius[below]);
        return r <= surface ? Math.Sqrt(nearest) : -Math.Sqrt(nearest);
    }

    /// <summary>Only directions whose rays pass nearer than the surface straight above can hold the nearest point.</summary>
    private double NearestSquared(double px, double py, int below, double r)
    {
        double best = VertexSquared(below, px, py);
        var bestAt = below;
        var share = Math.Sqrt(best) / r;
        var reach = share >= 1 ? Count / 2 : (int)(Math.Asin(share) / Step) + 2;
        for (var i = below - reach; i <= below + reach; i += Stride)
            if (VertexSquared(i, px, py) is var d && d < best)
                (best, bestAt) = (d, i);
        for (var i = bestAt - Stride; i <= bestAt + Stride; i++)
            best = Math.Min(best, ChordSquared(i & (Count - 1), px, py));
        return best;
    }

    private double VertexSquared(int i, double px, double py)
    {
        double dx = x[i & (Count - 1)] - px, dy = y[i & (Count - 1)] - py;
        return dx * dx + dy * dy;
    }

    private double ChordSquared(int i, double px, double py)
    {
        double cx = x[i + 1] - x[i], cy = y[i + 1] - y[i], dx = px - x[i], dy = py - y[i];
        var t = Math.Clamp((dx * cx + dy * cy) / (cx * cx + cy * cy), 0, 1);
        (dx, dy) = (dx - t * cx, dy - t * cy);
        return dx * dx + dy * dy;
    }
}
