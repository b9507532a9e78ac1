namespace GrindShop.Lobes;

/// <summary>An angle of the camshaft, in degrees. The cam turns once while the crank turns twice (four-stroke).</summary>
public readonly record struct CamDegrees
{
    // Far below anything a dividing head can show; folds 359.9999999999 to 0.
    private const double RoundOff = 1e-9;

    private CamDegrees(double value) => Value = value;

    public double Value { get; }

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="camDeg"/> is not within 100000 either way.</exception>
    public static CamDegrees FromDegrees(double camDeg) => new(Require.Within(camDeg, -100_000, 100_000));

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="camRadians"/> is not within 1000 either way.</exception>
    public static CamDegrees FromRadians(double camRadians) => new(double.RadiansToDegrees(Require.Within(camRadians, -1_000, 1_000)));

    public CrankDegrees ToCrank() => CrankDegrees.FromDegrees(2 * Value);

    /// <summary>The same direction as an angle from 0 up to, not including, 360.</summary>
    public CamDegrees Wrapped()
    {
        var turned = Value - 360 * Math.Floor(Value / 360);
        return new(turned >= 360 - RoundOff ? 0 : turned);
    }

    /// <summary>The same direction by the shorter way, above -180 and up to 180.</summary>
    public CamDegrees ShorterWay()
    {
        var wrapped = Wrapped().Value;
        return new(wrapped > 180 + RoundOff ? wrapped - 360 : wrapped);
    }

    public static CamDegrees operator +(CamDegrees a, CamDegrees b) => new(a.Value + b.Value);

    public static CamDegrees operator -(CamDegrees a, CamDegrees b) => new(a.Value - b.Value);

    public static CamDegrees operator -(CamDegrees a) => new(-a.Value);
}
