namespace GrindShop.Lobes.Tests;

/// <summary>
/// Handbook rises y(u) run as symmetric lobes, y = 1 at the nose; only lift and derivatives are stated here, everything else is the
/// project's.
/// </summary>
internal sealed class RiseLaw(double lift, double riseRad, Func<double, (double Y, double V, double A)> rise) : LiftLaw
{
    public override double LobeLiftIn => lift;

    public override double SupportStartRad => -riseRad;

    public override double SupportEndRad => riseRad;

    public override LiftPoint At(double camRad)
    {
        var theta = Math.IEEERemainder(camRad, Math.Tau);
        var u = 1 - Math.Abs(theta) / riseRad;
        if (u <= 0)
            return LiftPoint.Dwell;
        var (y, v, a) = rise(u);
        return new(lift * y, -Math.Sign(theta) * lift / riseRad * v, lift / riseRad / riseRad * a);
    }

    public static (double, double, double) Harmonic(double u) =>
        ((1 - Math.Cos(Math.PI * u)) / 2, Math.PI / 2 * Math.Sin(Math.PI * u), Math.PI * Math.PI / 2 * Math.Cos(Math.PI * u));

    public static (double, double, double) Cycloidal(double u) =>
        (u - Math.Sin(Math.Tau * u) / Math.Tau, 1 - Math.Cos(Math.Tau * u), Math.Tau * Math.Sin(Math.Tau * u));

    public static (double, double, double) Polynomial345(double u) => (
        u * u * u * (10 + u * (-15 + 6 * u)),
        u * u * (30 + u * (-60 + 30 * u)),
        u * (60 + u * (-180 + 120 * u)));

    public static (double, double, double) Polynomial4567(double u) => (
        u * u * u * u * (35 + u * (-84 + u * (70 - 20 * u))),
        u * u * u * (140 + u * (-420 + u * (420 - 140 * u))),
        u * u * (420 + u * (-1680 + u * (2100 - 840 * u))));

    /// <summary>Quarter-period sine at both ends, three-quarter-period sine between.</summary>
    public static (double, double, double) ModifiedSine(double u)
    {
        double k = 4 + Math.PI, top = 4 * Math.PI * Math.PI / k;
        if (u > 0.5)
        {
            var (y, v, a) = ModifiedSine(1 - u);
            return (1 - y, v, -a);
        }
        return u < 0.125
            ? (Math.PI / k * u - Math.Sin(4 * Math.PI * u) / (4 * k), Math.PI / k * (1 - Math.Cos(4 * Math.PI * u)), top * Math.Sin(4 * Math.PI * u))
            : ((2 + Math.PI * u - 9.0 / 4 * Math.Sin(4 * Math.PI * u / 3 + Math.PI / 3)) / k,
                Math.PI / k * (1 - 3 * Math.Cos(4 * Math.PI * u / 3 + Math.PI / 3)),
                top * Math.Sin(4 * Math.PI * u / 3 + Math.PI / 3));
    }

    /// <summary>Quarter sine to u = 1/8, constant to 3/8, quarter sine to 1/2, then mirrored; integrated piece by piece.</summary>
    public static (double, double, double) ModifiedTrapezoid(double u)
    {
        if (u > 0.5)
        {
            var (y, v, a) = ModifiedTrapezoid(1 - u);
            return (1 - y, v, -a);
        }
        double top = 8 * Math.PI / (2 + Math.PI), w = 4 * Math.PI;
        if (u < 0.125)
            return (top * (u / w - Math.Sin(w * u) / (w * w)), top / w * (1 - Math.Cos(w * u)), top * Math.Sin(w * u));
        double y1 = top * (0.125 / w - 1 / (w * w)), v1 = top / w, t = u - 0.125;
        if (u < 0.375)
            return (y1 + v1 * t + top * t * t / 2, v1 + top * t, top);
        double y2 = y1 + v1 / 4 + top / 32, v2 = v1 + top / 4, q = u - 0.375;
        return (y2 + v2 * q + top / (w * w) * (1 - Math.Cos(w * q)), v2 + top / w * Math.Sin(w * q), top * Math.Cos(w * q));
    }
}
