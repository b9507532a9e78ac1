namespace GrindShop.Lobes;

/// <summary>An angle of the crankshaft, in degrees; two of them make one cam degree (four-stroke).</summary>
public readonly record struct CrankDegrees
{
    private CrankDegrees(double value) => Value = value;

    public double Value { get; }

    /// <exception cref="ArgumentOutOfRangeException"><paramref name="crankDeg"/> is not within 200000 either way.</exception>
    public static CrankDegrees FromDegrees(double crankDeg) => new(Require.Within(crankDeg, -200_000, 200_000));

    public CamDegrees ToCam() => CamDegrees.FromDegrees(Value / 2);

    public static CrankDegrees operator +(CrankDegrees a, CrankDegrees b) => new(a.Value + b.Value);

    public static CrankDegrees operator -(CrankDegrees a, CrankDegrees b) => new(a.Value - b.Value);

    public static CrankDegrees operator -(CrankDegrees a) => new(-a.Value);
}
