namespace GrindShop.Lobes;

/// <summary>
/// The path of a follower's centre (flat: its face) as it rides over a blank's surface, on a grid of .75 degrees. Distances between a
/// finished lobe and the blank along the common normal are the same between their paths, and there everything is smooth:
/// <c>distance = gap cos a - bend gap^2</c> to second order in the radial gap (docs/mathematics.md, the quick judge).
/// </summary>
internal sealed class RidePath
{
    public const int Count = 480;
    public const double StepRad = Math.Tau / Count;
    private const int Reach = 24;

    /// <summary>For a cubic over two steps; over one it is a sixteenth of that.</summary>
    private const double AllowedErrorIn = 16 * RideLift.AllowedErrorIn;

    /// <summary>4 sin^2(m step / 2): squared chord over m steps on the unit circle.</summary>
    private static readonly double[] Chord = [.. Enumerable.Range(0, 2 * Reach).Select(m => 4 * Math.Pow(Math.Sin(m * StepRad / 2), 2))];

    private RidePath(RolledLaw law, Follower follower, LobeContour surface, bool isGrown)
    {
        (Follower, ReachesAll) = (follower, law.ReachesAll && isGrown);
        DeepestIn = surface.MinConvexRadiusIn;
        FarthestOutIn = (surface.MinConcaveRadiusIn ?? double.PositiveInfinity) - follower.RadiusIn;
        var onBaseIn = surface.BaseCircleDiameterIn / 2 + follower.RadiusIn;
        LiftPoint[] lift = [.. Enumerable.Range(0, Count).Select(i => law.At(-Math.PI + i * StepRad))];
        for (var i = 0; i < Count; i++)
            Set(i, lift[i], onBaseIn);
        IsSmooth = Enumerable.Range(0, Count).All(i => HalfwayError(lift[Wrapped(i - 1)], lift[i], lift[Wrapped(i + 1)]) < AllowedErrorIn);
    }

    public Follower Follower { get; }

    /// <summary>Sharpest convex radius of the blank's surface, in: deeper than that, its normals cross.</summary>
    public double DeepestIn { get; }

    /// <summary>Sharpest hollow of the path, in: farther out than that, its normals cross.</summary>
    public double FarthestOutIn { get; }

    /// <summary>The follower touches the whole surface, so its path tells all about it.</summary>
    public bool ReachesAll { get; }

    /// <summary>The grid resolves this path; one that changes faster must be judged point by point.</summary>
    public bool IsSmooth { get; }

    /// <summary>Distance of the path from the shaft axis, in.</summary>
    public float[] Radius { get; } = new float[Count];

    /// <summary>Cosine of the angle between the path's normal and the radius.</summary>
    public float[] Cosine { get; } = new float[Count];

    /// <summary>Second-order term, 1/in.</summary>
    public float[] Bend { get; } = new float[Count];

    public static int Wrapped(int i) => i < 0 ? i + Count : i >= Count ? i - Count : i;

    /// <summary>The path over a nominal grind grown by its stock; not reaching all where the stock exceeds the nominal roller.</summary>
    public static RidePath Over(Rolling nominal, double stockIn, Follower follower)
    {
        var around = nominal.IsFlat ? Follower.Flat : Follower.Roller(Math.Max(nominal.Follower.RadiusIn - stockIn, 1e-3));
        var baseRadius = nominal.BaseRadiusIn + stockIn;
        var grown = stockIn + 1e-3 < nominal.Follower.RadiusIn || nominal.IsFlat;
        var surface = LobeContour.Of(nominal.Law, around, 2 * baseRadius, Count);
        return new(new RolledLaw(nominal.Law, around, 2 * baseRadius, follower), follower, surface, grown);
    }

    /// <summary>Distance from a point at a grid direction to the path, in; negative outside it.</summary>
    public double Distance(int i, double radiusIn)
    {
        var gap = Radius[i] - radiusIn;
        var near = Cosine[i] * gap - Bend[i] * gap * gap;
        if (Math.Abs(gap) < 0.002 || Follower.Kind == FollowerKind.Flat)
            return near;
        var slope = (Radius[Wrapped(i + 1)] - Radius[Wrapped(i - 1)]) / (2 * StepRad * Radius[i]);
        var foot = Math.Clamp((int)Math.Round(-near * slope * Cosine[i] / (Radius[i] * StepRad)), -Reach, Reach);
        return Math.CopySign(Math.Sqrt(FootSquared(i, foot, radiusIn)), gap);
    }

    private static double HalfwayError(LiftPoint before, LiftPoint here, LiftPoint after) => Math.Abs(
        (before.LiftIn + after.LiftIn) / 2 + StepRad / 4 * (before.VelocityInPerRad - after.VelocityInPerRad) - here.LiftIn);

    private double FootSquared(int i, int foot, double radiusIn)
    {
        double before = Squared(i, foot - 1, radiusIn), here = Squared(i, foot, radiusIn), after = Squared(i, foot + 1, radiusIn);
        while (before < here && foot > -Reach)
            (foot, after, here, before) = (foot - 1, here, before, Squared(i, foot - 2, radiusIn));
        while (after < here && foot < Reach)
            (foot, before, here, after) = (foot + 1, here, after, Squared(i, foot + 2, radiusIn));
        return Math.Max(0, here + Parabola.Top(before, here, after).Rise);
    }

    private double Squared(int i, int steps, double radiusIn)
    {
        double r = Radius[Wrapped(i + steps)], gap = r - radiusIn;
        return gap * gap + r * radiusIn * Chord[Math.Abs(steps)];
    }

    /// <summary>From the family of parallel curves: dr/dd = -1/cos a, d2r/dd2 = -(q^2/r)(1 - q' cos^2 a), q = r'/r.</summary>
    private void Set(int i, LiftPoint lift, double onBaseIn)
    {
        var r = onBaseIn + lift.LiftIn;
        Radius[i] = (float)r;
        (Cosine[i], Bend[i]) = (1, 0);
        if (Follower.Kind == FollowerKind.Flat)
            return;
        var q = lift.VelocityInPerRad / r;
        double cosine2 = 1 / (1 + q * q), cosine = Math.Sqrt(cosine2), turn = lift.AccelerationInPerRad2 / r - q * q;
        Cosine[i] = (float)cosine;
        Bend[i] = (float)(q * q / r * (1 - turn * cosine2) / 2 * cosine2 * cosine);
    }
}
