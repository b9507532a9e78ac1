namespace GrindShop.Lobes;

/// <summary>Roots and extremes of one-variable functions; every search is bracketed and bounded in steps.</summary>
internal static class Root
{
    private const int MostSteps = 120;

    /// <summary>
    /// Root of <paramref name="f"/> in a bracket whose ends have different signs (regula falsi, Illinois variant, with a
    /// bisection whenever three steps do not halve the bracket). Where rounding has put the root just outside, the nearer end.
    /// </summary>
    public static double InBracket(Func<double, double> f, double a, double b, double tolerance)
    {
        double fa = f(a), fb = f(b);
        if (fa == 0 || fa * fb > 0)
            return Math.Abs(fa) < Math.Abs(fb) ? a : b;
        var width = Math.Abs(b - a);
        for (var step = 0; step < MostSteps && fb != 0 && Math.Abs(b - a) > tolerance; step++)
        {
            var slow = step % 3 == 2 && Math.Abs(b - a) > width / 2;
            if (step % 3 == 2)
                width = Math.Abs(b - a);
            var c = slow || fa == fb ? (a + b) / 2 : b - fb * (b - a) / (fb - fa);
            var fc = f(c);
            if (fc * fb < 0)
                (a, fa) = (b, fb);
            else
                fa = slow ? fa : fa / 2;
            (b, fb) = (c, fc);
        }
        return b;
    }

    /// <summary>Smallest value of <paramref name="f"/> in a bracket that holds one minimum (golden section).</summary>
    public static (double At, double Value) Minimum(Func<double, double> f, double a, double b, double tolerance = 1e-9)
    {
        const double golden = 0.6180339887498949;
        double c = b - golden * (b - a), d = a + golden * (b - a);
        double fc = f(c), fd = f(d);
        for (var step = 0; step < MostSteps && b - a > tolerance; step++)
        {
            if (fc < fd)
                (b, d, fd, c, fc) = (d, c, fc, d - golden * (d - a), double.NaN);
            else
                (a, c, fc, d, fd) = (c, d, fd, c + golden * (b - c), double.NaN);
            if (double.IsNaN(fc))
                fc = f(c);
            else
                fd = f(d);
        }
        return fc < fd ? (c, fc) : (d, fd);
    }
}
