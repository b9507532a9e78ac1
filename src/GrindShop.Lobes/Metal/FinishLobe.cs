namespace GrindShop.Lobes;

/// <summary>The lobe a specification asks for, prepared once and judged against many blanks.</summary>
public sealed class FinishLobe
{
    /// <summary>Usual limit of the pressure angle of a translating roller, degrees (lecture notes by Soylemez, METU).</summary>
    public const double UsualPressureAngleDeg = 30;

    private const int Count = 1440;
    private readonly LiftPoint[] lift;
    private readonly (double Sin, double Cos)[] direction;
    private readonly Lazy<double> leastBaseRadius, steepBelowRadius;
    private readonly Lazy<RideLift> ride;

    public FinishLobe(LiftLaw law, Follower follower)
    {
        ArgumentNullException.ThrowIfNull(law);
        (Law, Follower) = (law, follower.Checked(nameof(follower)));
        lift = [.. Enumerable.Range(0, Count).Select(i => law.At(AngleRad(i)))];
        leastBaseRadius = new(FindLeastBaseRadius);
        steepBelowRadius = new(FindSteepBelow);
        ride = new(() => new RideLift(lift));
        direction = [.. Enumerable.Range(0, Count).Select(i => Math.SinCos(AngleRad(i)))];
    }

    /// <summary>Below this base circle the follower would undercut the lobe, in (never under .05).</summary>
    public double LeastBaseCircleDiameterIn => 2 * LeastBaseRadiusIn;

    /// <summary>
    /// Greatest pressure angle of the roller on a base circle, degrees, by <c>tan a = s' / R</c> at steps of a quarter cam degree: enough for advice;
    /// <see cref="LobeContour.MaxPressureAngleDeg"/> is the refined figure. Null for a flat face.
    /// </summary>
    public double? PressureAngleDeg(double baseCircleDiameterIn)
    {
        if (Follower.Kind == FollowerKind.Flat)
            return null;
        var primeRadius = Require.Length(baseCircleDiameterIn, nameof(baseCircleDiameterIn)) / 2 + Follower.RadiusIn;
        var steepest = 0.0;
        foreach (var point in lift)
            steepest = Math.Max(steepest, Math.Abs(point.VelocityInPerRad) / (primeRadius + point.LiftIn));
        return Math.Atan(steepest) / AngleMath.RadPerDeg;
    }

    /// <summary>Whether the pressure angle on a base circle exceeds the usual limit: the larger the base circle, the lesser the angle.</summary>
    public bool IsSteep(double baseCircleDiameterIn) => Require.Length(baseCircleDiameterIn, nameof(baseCircleDiameterIn)) / 2 < steepBelowRadius.Value;

    internal double LeastBaseRadiusIn => leastBaseRadius.Value;

    internal RideLift Ride => ride.Value;

    public LiftLaw Law { get; }

    public Follower Follower { get; }

    /// <summary>Surface points at a base radius: touching points, or the trimmed surface where the follower would undercut.</summary>
    internal (double X, double Y)[] Surface(double baseRadiusIn, out bool undercut)
    {
        var points = Touched(baseRadiusIn, out undercut);
        return undercut ? Trimmed(points, baseRadiusIn) : points;
    }

    private (double X, double Y)[] Touched(double baseRadiusIn, out bool undercut)
    {
        var points = new (double, double)[Count];
        undercut = false;
        for (var i = 0; i < Count; i++)
            points[i] = Follower.Kind == FollowerKind.Flat ? FlatPoint(i, baseRadiusIn, ref undercut) : RollerPoint(i, baseRadiusIn, ref undercut);
        return points;
    }

    private double FindLeastBaseRadius()
    {
        const double floor = 0.025, ceiling = 50;
        double low = floor, high = ceiling;
        Touched(floor, out var undercut);
        while (undercut && high - low > 1e-7)
        {
            Touched((low + high) / 2, out var still);
            (low, high) = still ? ((low + high) / 2, high) : (low, (low + high) / 2);
        }
        return undercut ? high : floor;
    }

    /// <summary>Solved from <c>tan a = s' / R</c> for the base radius; nothing is steep under a flat face.</summary>
    private double FindSteepBelow()
    {
        var usual = Math.Tan(UsualPressureAngleDeg * AngleMath.RadPerDeg);
        return Follower.Kind == FollowerKind.Flat ? 0 : lift.Max(point => Math.Abs(point.VelocityInPerRad) / usual - point.LiftIn) - Follower.RadiusIn;
    }

    private static double AngleRad(int i) => -Math.PI + i * Math.Tau / Count;

    private (double, double) RollerPoint(int i, double baseRadiusIn, ref bool undercut)
    {
        double rf = Follower.RadiusIn, r = baseRadiusIn + rf + lift[i].LiftIn, v = lift[i].VelocityInPerRad;
        double h2 = r * r + v * v, h = Math.Sqrt(h2);
        undercut |= rf * (h2 + v * v - r * lift[i].AccelerationInPerRad2) >= h2 * h;
        return Turned(i, r - rf * r / h, rf * v / h);
    }

    private (double, double) FlatPoint(int i, double baseRadiusIn, ref bool undercut)
    {
        var h = baseRadiusIn + lift[i].LiftIn;
        undercut |= h + lift[i].AccelerationInPerRad2 <= 0;
        return Turned(i, h, lift[i].VelocityInPerRad);
    }

    private (double, double) Turned(int i, double radial, double tangential)
    {
        var (sin, cos) = direction[i];
        return (radial * cos - tangential * sin, radial * sin + tangential * cos);
    }

    private static (double, double)[] Trimmed((double X, double Y)[] points, double baseRadiusIn)
    {
        var sweep = new PolarSweep(Count, outermost: false);
        for (var i = 0; i <= Count; i++)
        {
            var (x, y) = points[i % Count];
            sweep.Add(Math.Atan2(y, x), Math.Sqrt(x * x + y * y));
        }
        return [.. sweep.Finish(baseRadiusIn).Select((r, i) => (r * Math.Cos(i * Math.Tau / Count), r * Math.Sin(i * Math.Tau / Count)))];
    }
}
