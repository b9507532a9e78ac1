namespace GrindShop.Lobes;

/// <summary>
/// Lift of a lobe under another follower than the one it was designed for: the offset curve of its contour (roller, wheel) or its
/// support function (flat), less the base circle. Exact, no interpolation; a hollow too sharp for the follower is bridged.
/// </summary>
public sealed class RolledLaw : LiftLaw
{
    private const int Count = 1440;
    private readonly Rolling source;
    private readonly Follower follower;
    private readonly double[] angles = new double[Count + 1];
    private readonly bool monotone;

    /// <param name="law">Lift under the source follower.</param>
    /// <param name="sourceFollower">The follower that law belongs to.</param>
    /// <param name="baseCircleDiameterIn">Base circle, in, the same under both.</param>
    /// <param name="follower">The follower whose lift is wanted.</param>
    public RolledLaw(LiftLaw law, Follower sourceFollower, double baseCircleDiameterIn, Follower follower)
    {
        ArgumentNullException.ThrowIfNull(law);
        Require.Length(baseCircleDiameterIn, nameof(baseCircleDiameterIn));
        source = new(law, sourceFollower.Checked(nameof(sourceFollower)), baseCircleDiameterIn / 2);
        this.follower = follower.Checked(nameof(follower));
        monotone = Unwrap();
        (SupportStartRad, SupportEndRad) = Support();
        LobeLiftIn = At(0).LiftIn;
    }

    /// <summary>The follower touches the whole surface; false where it bridges a hollow.</summary>
    public bool ReachesAll => monotone;

    public override double LobeLiftIn { get; }

    public override double SupportStartRad { get; }

    public override double SupportEndRad { get; }

    public override LiftPoint At(double camRad)
    {
        var theta = AngleMath.Wrap(camRad);
        if (theta < SupportStartRad || theta > SupportEndRad)
            return LiftPoint.Dwell;
        if (theta < angles[0])
            theta += Math.Tau;
        return monotone ? Touching(Math.Clamp(Below(theta), 0, Count - 1), theta) : Outermost(theta);
    }

    /// <summary>Makes the angles run on past pi; tells whether they only ever rise.</summary>
    private bool Unwrap()
    {
        var rising = true;
        angles[0] = Direction(source.At(CamRad(0)));
        for (var i = 1; i <= Count; i++)
        {
            var turn = AngleMath.Wrap(Direction(source.At(CamRad(i))) - angles[i - 1]);
            angles[i] = angles[i - 1] + turn;
            rising &= turn > 0;
        }
        return rising;
    }

    /// <summary>A follower that bridges a hollow leaves the base circle before the source's lift begins.</summary>
    private (double Start, double End) Support()
    {
        double start = source.Law.SupportStartRad, end = source.Law.SupportEndRad;
        for (var i = 0; i <= Count; i++)
            if (CamRad(i) > source.Law.SupportStartRad && CamRad(i) < source.Law.SupportEndRad)
                (start, end) = (Math.Min(start, angles[i]), Math.Max(end, angles[i]));
        return (Math.Max(start, -Math.PI), Math.Min(end, Math.PI));
    }

    private int Below(double theta)
    {
        var i = Array.BinarySearch(angles, theta);
        return i >= 0 ? i : ~i - 1;
    }

    /// <summary>Several branches lie in this direction where the follower bridges a hollow: it rides on the outermost.</summary>
    private LiftPoint Outermost(double theta)
    {
        var best = LiftPoint.Dwell;
        for (var i = 0; i < Count; i++)
            if ((angles[i] - theta) * (angles[i + 1] - theta) <= 0 && Touching(i, theta) is var p && p.LiftIn > best.LiftIn)
                best = p;
        return best;
    }

    private static double CamRad(int i) => -Math.PI + i * Math.Tau / Count;

    private LiftPoint Touching(int i, double theta)
    {
        var cam = Root.InBracket(x => AngleMath.Wrap(Direction(source.At(x)) - theta), CamRad(i), CamRad(i + 1), 1e-15);
        return Lift(source.At(cam));
    }

    /// <summary>Cam angle at which the follower touches a contour point, rad.</summary>
    private double Direction(ContourPoint p) =>
        follower.Kind == FollowerKind.Flat
            ? p.NormalRad
            : Math.Atan2(p.YIn + follower.RadiusIn * Math.Sin(p.NormalRad), p.XIn + follower.RadiusIn * Math.Cos(p.NormalRad));

    private LiftPoint Lift(ContourPoint p) => follower.Kind == FollowerKind.Flat ? FlatLift(p) : RollerLift(p);

    private LiftPoint FlatLift(ContourPoint p)
    {
        var (sin, cos) = Math.SinCos(p.NormalRad);
        var h = p.XIn * cos + p.YIn * sin;
        return new(h - source.BaseRadiusIn, p.YIn * cos - p.XIn * sin, SignedRadius(p) - h);
    }

    /// <summary>From the pitch curve's own geometry: <c>R' = R tan a</c>, and R'' from its curvature.</summary>
    private LiftPoint RollerLift(ContourPoint p)
    {
        var (sin, cos) = Math.SinCos(p.NormalRad);
        double x = p.XIn + follower.RadiusIn * cos, y = p.YIn + follower.RadiusIn * sin, r = Math.Sqrt(x * x + y * y);
        var v = r * (y * cos - x * sin) / (x * cos + y * sin);
        var h2 = r * r + v * v;
        var a = (h2 + v * v - h2 * Math.Sqrt(h2) / (SignedRadius(p) + follower.RadiusIn)) / r;
        return new(r - source.BaseRadiusIn - follower.RadiusIn, v, a);
    }

    private static double SignedRadius(ContourPoint p) => p.IsConcave ? -p.RadiusIn : p.RadiusIn;
}
