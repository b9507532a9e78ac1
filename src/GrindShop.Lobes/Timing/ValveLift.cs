namespace GrindShop.Lobes;

/// <summary>
/// Lobe (lifter) lift and valve lift: the rocker multiplies, the lash, measured at the valve, is lost first.
/// Ranges: lifts 0-3 in, rocker ratio 0.5-3, lash 0-0.1 in.
/// </summary>
public static class ValveLift
{
    public const double MostLiftIn = 3;

    /// <summary>Valve lift, in, for a lobe lift; 0 while the lash is being taken up.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double AtValve(double lobeLiftIn, double rockerRatio, double lashIn = 0)
    {
        Require.Within(lobeLiftIn, 0, MostLiftIn);
        CheckTrain(rockerRatio, lashIn);
        return Math.Max(0, lobeLiftIn * rockerRatio - lashIn);
    }

    /// <summary>
    /// Lobe lift, in, that gives a valve lift. At 0 it is the lobe lift that just closes the lash; it also turns
    /// a check lift at the valve into the check lift at the lifter.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double AtLobe(double valveLiftIn, double rockerRatio, double lashIn = 0)
    {
        Require.Within(valveLiftIn, 0, MostLiftIn);
        CheckTrain(rockerRatio, lashIn);
        return (valveLiftIn + lashIn) / rockerRatio;
    }

    private static void CheckTrain(double rockerRatio, double lashIn)
    {
        Require.Within(rockerRatio, 0.5, 3);
        Require.Within(lashIn, 0, 0.1);
    }
}
