namespace GrindShop.Lobes;

/// <summary>
/// Total case depth of gas carburizing by F. E. Harris (1943): <c>depth (in) = 31.6 sqrt(t) / 10^(6700 / (F + 460))</c>, t in hours,
/// F in degrees Fahrenheit. A planning figure: the heat-treater's furnace, carbon potential and steel decide.
/// </summary>
public static class Carburizing
{
    public const double LeastFahrenheit = 1_400;
    public const double MostFahrenheit = 2_000;

    /// <summary>Depth, in, after a time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Hours outside 0-200 or temperature outside 1400-2000.</exception>
    public static double DepthIn(double hours, double fahrenheit) =>
        Math.Sqrt(Require.Within(hours, 0, 200)) * DepthOfOneHour(fahrenheit);

    /// <summary>Hours for a depth.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Depth outside 0-.3 in or temperature outside 1400-2000.</exception>
    public static double Hours(double depthIn, double fahrenheit)
    {
        var root = Require.Within(depthIn, 0, 0.3) / DepthOfOneHour(fahrenheit);
        return root * root;
    }

    private static double DepthOfOneHour(double fahrenheit) =>
        31.6 / Math.Pow(10, 6700 / (Require.Within(fahrenheit, LeastFahrenheit, MostFahrenheit) + 460));
}
