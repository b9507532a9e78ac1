namespace GrindShop.Lobes;

/// <summary>
/// How deep an induction field heats: the depth in which the current falls to 1/e, <c>sqrt(rho / (pi mu0 mu f))</c>,
/// that is 503.292 sqrt(rho / (mu f)) metres with rho in ohm metres and f in hertz (a worked example by Kapoor checks it).
/// </summary>
public static class Induction
{
    private static readonly double MetresFactor = 1 / Math.Sqrt(Math.PI * 4e-7 * Math.PI);

    /// <summary>Reference depth, in. Relative permeability is 1 above the Curie point.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Resistivity outside 1e-9 to 1e-3 ohm m, relative permeability 1-1e5, frequency 1-1e8 Hz.
    /// </exception>
    public static double ReferenceDepthIn(double resistivityOhmM, double frequencyHz, double relativePermeability = 1) =>
        InFromMetres(MetresFactor * Math.Sqrt(
            Require.Within(resistivityOhmM, 1e-9, 1e-3) / (Permeability(relativePermeability) * Require.Within(frequencyHz, 1, 1e8))));

    /// <summary>Frequency, Hz, whose reference depth is the one given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Depth outside 1e-4 to 10 in, the others as <see cref="ReferenceDepthIn"/>.</exception>
    public static double FrequencyHz(double resistivityOhmM, double depthIn, double relativePermeability = 1)
    {
        var share = MetresFactor / (Require.Within(depthIn, 1e-4, 10) * Si.MillimetresPerInch / 1000);
        return share * share * Require.Within(resistivityOhmM, 1e-9, 1e-3) / Permeability(relativePermeability);
    }

    private static double Permeability(double relativePermeability) => Require.Within(relativePermeability, 1, 1e5);

    private static double InFromMetres(double metres) => Si.InFromMillimetres(1000 * metres);
}
