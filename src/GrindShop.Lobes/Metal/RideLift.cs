namespace GrindShop.Lobes;

/// <summary>
/// A finished lobe's lift on the grid of <see cref="RidePath"/>, twice round so that any turn reads it in one run.
/// </summary>
internal sealed class RideLift
{
    public const double AllowedErrorIn = 2e-6;
    private readonly double[] lift = new double[RidePath.Count], velocity = new double[RidePath.Count];

    /// <param name="fine">The law on a grid several times as fine, from -pi on.</param>
    public RideLift(LiftPoint[] fine)
    {
        var times = fine.Length / RidePath.Count;
        for (var i = 0; i < RidePath.Count; i++)
            (lift[i], velocity[i]) = (fine[times * i].LiftIn, fine[times * i].VelocityInPerRad);
        Twice = new float[2 * RidePath.Count + 2];
        for (var i = 0; i < Twice.Length; i++)
            Twice[i] = (float)lift[i % RidePath.Count];
        for (var i = 0; i < fine.Length; i++)
            IsSmooth &= Math.Abs(Between(i / times, i % times / (double)times) - fine[i].LiftIn) < AllowedErrorIn;
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
