namespace GrindShop.Lobes;

/// <summary>Degrees, radians and the wrap to one turn.</summary>
internal static class AngleMath
{
    public const double RadPerDeg = Math.PI / 180;

    /// <summary>Cam radians to crank degrees: the crank turns twice for each turn of the cam.</summary>
    public const double CrankDegPerCamRad = 2 / RadPerDeg;

    /// <summary>The same direction in -pi (excluded) to pi.</summary>
    public static double Wrap(double rad)
    {
        if (rad is > -Math.PI and <= Math.PI)
            return rad;
        var wrapped = Math.IEEERemainder(rad, Math.Tau);
        return wrapped <= -Math.PI ? wrapped + Math.Tau : wrapped;
    }
}
