using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>The surface of one lobe of an unground cam; immutable, to be built once and kept.</summary>
public abstract class BlankOutline
{
    private readonly Lazy<PolarBody> body;
    private readonly Lazy<ImmutableArray<OutlinePoint>> points;

    private protected BlankOutline(Func<PolarBody> body)
    {
        this.body = new(body);
        points = new(() => [.. Enumerable.Range(0, 720).Select(PointAt)]);
    }

    internal PolarBody Body => body.Value;

    /// <summary>720 points of the surface at equal polar angles, nose of the nominal grind at angle 0.</summary>
    public ImmutableArray<OutlinePoint> Points => points.Value;

    /// <summary>A lobe milled for a nominal grind with the grinding stock around it.</summary>
    /// <param name="nominal">Lift of the nominal grind.</param>
    /// <param name="follower">Follower of the nominal grind.</param>
    /// <param name="baseCircleDiameterIn">Base circle of the nominal grind, in.</param>
    /// <param name="stockIn">Stock outside the nominal grind along its normal, in per side.</param>
    public static BlankOutline Milled(LiftLaw nominal, Follower follower, double baseCircleDiameterIn, double stockIn)
    {
        ArgumentNullException.ThrowIfNull(nominal);
        Require.Length(baseCircleDiameterIn, nameof(baseCircleDiameterIn));
        Require.LengthOrZero(stockIn, nameof(stockIn));
        return new MilledOutline(new(nominal, follower.Checked(nameof(follower)), baseCircleDiameterIn / 2), stockIn);
    }

    /// <summary>A plain round.</summary>
    /// <param name="diameterIn">Diameter, in.</param>
    public static BlankOutline Round(double diameterIn) => new RoundOutline(Require.Length(diameterIn, nameof(diameterIn)));

    private OutlinePoint PointAt(int i)
    {
        var angle = Math.Tau * i / 720;
        var at = angle / Math.Tau * PolarBody.Count;
        double low = Body.Radii[(int)at], high = Body.Radii[((int)at + 1) % PolarBody.Count];
        var r = low + (at - Math.Floor(at)) * (high - low);
        return new(r * Math.Cos(angle), r * Math.Sin(angle));
    }
}

/// <summary>A surface point, in: x through the nose, y on the closing side.</summary>
public readonly record struct OutlinePoint(double XIn, double YIn);
