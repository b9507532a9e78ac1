namespace GrindShop.Lobes;

/// <summary>
/// A finished lobe's lift on the half-degree grid of <see cref="RidePath"/>, twice round so that any turn reads it in one run.
/// </summary>
internal sealed class RideLift
{
    private const double AllowedErrorIn = 1e-6;
    private readonly double[] lift = new double[RidePath.Count], velocity = new double[RidePath.Count];

    /// <param name="fine">The law on a grid twice as fine, from -pi on.</param>
    public RideLift(LiftPoint[] fine)
    {
        for (var i = 0; i < RidePath.Count; i++)
            (lift[i], velocity[i]) = (fine[2 * i].LiftIn, fine[2 * i].VelocityInPerRad);
        Twice = new float[2 * RidePath.Count + 2];
        for (var i = 0; i < Twice.Length; i++)
            Twice[i] = (float)lift[i % RidePath.Count];
        for (var i = 0; i < RidePath.Count; i++)
            IsSmooth &= Math.Abs(Between(i, 0.5) - fine[2 * i + 1].LiftIn) < AllowedErrorIn;
    }

    public float[] Twice { get; }

    /// <summary>The grid resolves this law; a law that changes faster than that must be judged point by point.</summary>
    public bool IsSmooth { get; } = true;

    /// <summary>Lift between grid point i and the next (cubic Hermite), in.</summary>
    public double Between(int i, double share)
    {
        int a = RidePath.Wrapped(i), b = RidePath.Wrapped(i + 1);
        double left = 1 - share, step = RidePath.StepRad;
        return left * left * ((1 + 2 * share) * lift[a] + share * step * velocity[a])
            + share * share * ((1 + 2 * left) * lift[b] - left * step * velocity[b]);
    }
}
