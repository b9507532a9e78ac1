namespace GrindShop.Lobes;

/// <summary>
/// Solver for a symmetric positive definite cyclic pentadiagonal system: the last two unknowns are the border of a plain band,
/// which is factored once (Cholesky, L D L').
/// </summary>
internal sealed class CyclicBand
{
    private readonly int count;
    private readonly double[] d, l1, l2;
    private readonly double[] borderA, borderB;
    private readonly double[] solvedA, solvedB;
    private readonly double s00, s01, s11;

    /// <param name="diagonal">Entries (i, i).</param>
    /// <param name="first">Entries (i, i+1), the index taken round.</param>
    /// <param name="second">Entries (i, i+2), the index taken round.</param>
    public CyclicBand(double[] diagonal, double[] first, double[] second)
    {
        var n = diagonal.Length;
        count = n - 2;
        (d, l1, l2) = (new double[count], new double[count], new double[count]);
        Factor(diagonal, first, second);
        (borderA, borderB) = (new double[count], new double[count]);
        (borderA[0], borderA[count - 2], borderA[count - 1]) = (second[n - 2], second[n - 4], first[n - 3]);
        (borderB[0], borderB[1], borderB[count - 1]) = (first[n - 1], second[n - 1], second[n - 3]);
        (solvedA, solvedB) = (Band(borderA), Band(borderB));
        s00 = diagonal[n - 2] - Dot(borderA, solvedA);
        s01 = first[n - 2] - Dot(borderA, solvedB);
        s11 = diagonal[n - 1] - Dot(borderB, solvedB);
    }

    public double[] Solve(double[] right)
    {
        var x = Band(right[..count]);
        double ra = right[count] - Dot(borderA, x), rb = right[count + 1] - Dot(borderB, x), determinant = s00 * s11 - s01 * s01;
        double a = (ra * s11 - rb * s01) / determinant, b = (rb * s00 - ra * s01) / determinant;
        for (var i = 0; i < count; i++)
            x[i] -= a * solvedA[i] + b * solvedB[i];
        return [.. x, a, b];
    }

    private void Factor(double[] diagonal, double[] first, double[] second)
    {
        for (var i = 0; i < count; i++)
        {
            double e = i > 1 ? l2[i - 2] : 0, c = i > 0 ? l1[i - 1] : 0;
            d[i] = diagonal[i] - (i > 0 ? c * c * d[i - 1] : 0) - (i > 1 ? e * e * d[i - 2] : 0);
            l1[i] = i + 1 < count ? (first[i] - (i > 0 ? c * l2[i - 1] * d[i - 1] : 0)) / d[i] : 0;
            l2[i] = i + 2 < count ? second[i] / d[i] : 0;
        }
    }

    private double[] Band(double[] right)
    {
        var x = (double[])right.Clone();
        for (var i = 0; i < count; i++)
            x[i] -= (i > 0 ? l1[i - 1] * x[i - 1] : 0) + (i > 1 ? l2[i - 2] * x[i - 2] : 0);
        for (var i = count - 1; i >= 0; i--)
            x[i] = x[i] / d[i] - (i + 1 < count ? l1[i] * x[i + 1] : 0) - (i + 2 < count ? l2[i] * x[i + 2] : 0);
        return x;
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (var i = 0; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }
}
