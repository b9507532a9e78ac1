using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>The ground surface of a lobe: the envelope of its follower, with the figures that decide whether it can be ground.</summary>
public sealed class LobeContour
{
    private readonly Rolling rolling;
    private readonly PolarBranches branches;

    private LobeContour(Rolling rolling, int points)
    {
        this.rolling = rolling;
        Points = [.. Enumerable.Range(0, points).Select(i => rolling.At(-Math.PI + Math.Tau * i / points))];
        branches = new(Points, rolling);
        var refine = new ContourExtremes(rolling, Points);
        MinConvexRadiusIn = refine.LeastConvexRadius();
        MinConcaveRadiusIn = refine.LeastConcaveRadius();
        if (rolling.IsFlat)
            MinFootRadiusIn = rolling.Law.MaxVelocityInPerRad;
        else
            MaxPressureAngleDeg = refine.GreatestPressureAngle() / AngleMath.RadPerDeg;
    }

    /// <summary>Points at equal steps of the cam angle from -pi on.</summary>
    public ImmutableArray<ContourPoint> Points { get; }

    public double BaseCircleDiameterIn => 2 * rolling.BaseRadiusIn;

    /// <summary>Sharpest convex radius, in; zero or less means undercut.</summary>
    public double MinConvexRadiusIn { get; }

    /// <summary>Sharpest hollow, in, which the grinding wheel's radius must stay below; null when the flanks are nowhere hollow.</summary>
    public double? MinConcaveRadiusIn { get; }

    /// <summary>Greatest pressure angle of a roller, degrees; null for a flat face.</summary>
    public double? MaxPressureAngleDeg { get; }

    /// <summary>Least foot radius of a flat face without its edge allowance, in; null for a roller.</summary>
    public double? MinFootRadiusIn { get; }

    /// <summary>The follower cannot run this law on this base circle: the contour crosses itself.</summary>
    public bool IsUndercut => MinConvexRadiusIn <= 0;

    /// <summary>Distance from the shaft axis to the surface in a direction, in, nose at 0.</summary>
    public double PolarRadiusIn(double polarRad) => branches.RadiusIn(Require.Angle(polarRad, nameof(polarRad)));

    /// <summary>The point the follower touches at a cam angle, rad.</summary>
    public ContourPoint TouchedAt(double camRad) => rolling.At(Require.Angle(camRad, nameof(camRad)));

    /// <summary>Whether a wheel reaches the whole surface: its radius stays below every hollow.</summary>
    public bool WheelReaches(double wheelRadiusIn) =>
        MinConcaveRadiusIn is not { } hollow || Require.Length(wheelRadiusIn, nameof(wheelRadiusIn)) < hollow;

    /// <param name="law">Lift of the follower.</param>
    /// <param name="follower">The follower that makes this lift.</param>
    /// <param name="baseCircleDiameterIn">Base circle, in.</param>
    /// <param name="points">Number of points, 72 to 100000.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a number or outside its range.</exception>
    public static LobeContour Of(LiftLaw law, Follower follower, double baseCircleDiameterIn, int points = 1440)
    {
        ArgumentNullException.ThrowIfNull(law);
        Require.Length(baseCircleDiameterIn, nameof(baseCircleDiameterIn));
        Require.Within(points, 72, 100_000, nameof(points));
        return new(new(law, follower.Checked(nameof(follower)), baseCircleDiameterIn / 2), points);
    }
}
