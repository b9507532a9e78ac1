namespace GrindShop.Lobes;

/// <summary>
/// Periodic cubic smoothing spline over one turn (C. H. Reinsch, "Smoothing by spline functions", Numerische Mathematik 10, 1967; from
/// memory): of all curves whose root-mean-square distance from the readings is the tolerance, the one that bends least.
/// Tolerance 0 goes through every reading.
/// </summary>
internal sealed class PeriodicSpline
{
    private const double LeastLogWeight = -60, MostLogWeight = 10;
    private readonly double[] x, y, h;
    private double[] value, bend;

    /// <param name="x">At least 8 rising angles within one turn, rad.</param>
    /// <param name="y">Readings.</param>
    /// <param name="tolerance">Root-mean-square distance from the readings, in their unit.</param>
    public PeriodicSpline(double[] x, double[] y, double tolerance)
    {
        (this.x, this.y, h) = (x, y, new double[x.Length]);
        for (var i = 0; i < x.Length; i++)
            h[i] = (i + 1 < x.Length ? x[i + 1] : x[0] + Math.Tau) - x[i];
        (value, bend) = Fit(0);
        if (tolerance > 0)
            Smooth(tolerance);
    }

    public double RmsDeviation => Rms(value);

    public LiftPoint At(double rad)
    {
        var turned = rad - Math.Tau * Math.Floor((rad - x[0]) / Math.Tau);
        var i = Array.BinarySearch(x, turned);
        i = Math.Clamp(i >= 0 ? i : ~i - 1, 0, x.Length - 1);
        var next = (i + 1) % x.Length;
        double w = h[i], b = (turned - x[i]) / w, a = 1 - b, slope = (value[next] - value[i]) / w;
        return new(
            a * value[i] + b * value[next] + ((a * a * a - a) * bend[i] + (b * b * b - b) * bend[next]) * w * w / 6,
            slope + ((1 - 3 * a * a) * bend[i] + (3 * b * b - 1) * bend[next]) * w / 6,
            a * bend[i] + b * bend[next]);
    }

    private void Smooth(double tolerance)
    {
        if (Rms(Fit(Math.Exp(MostLogWeight)).Value) <= tolerance)
            (value, bend) = Fit(Math.Exp(MostLogWeight));
        else if (Rms(Fit(Math.Exp(LeastLogWeight)).Value) < tolerance)
            (value, bend) = Fit(Math.Exp(Root.InBracket(
                log => Rms(Fit(Math.Exp(log)).Value) - tolerance, LeastLogWeight, MostLogWeight, 1e-6)));
    }

    private double Rms(double[] fitted) => Math.Sqrt(fitted.Zip(y, (f, r) => (f - r) * (f - r)).Average());

    private (double[] Value, double[] Bend) Fit(double weight)
    {
        var n = x.Length;
        double[] diagonal = new double[n], first = new double[n], second = new double[n];
        for (var i = 0; i < n; i++)
        {
            double a = 1 / h[(i + n - 1) % n], b = 1 / h[i], c = 1 / h[(i + 1) % n];
            diagonal[i] = (h[(i + n - 1) % n] + h[i]) / 3 + weight * (a * a + (a + b) * (a + b) + b * b);
            first[i] = h[i] / 6 - weight * b * (a + 2 * b + c);
            second[i] = weight * b * c;
        }
        var gamma = new CyclicBand(diagonal, first, second).Solve(SecondDifferences(y));
        var pull = SecondDifferences(gamma);
        return ([.. y.Select((reading, i) => reading - weight * pull[i])], gamma);
    }

    private double[] SecondDifferences(double[] v)
    {
        var n = v.Length;
        return [.. v.Select((here, i) => (v[(i + 1) % n] - here) / h[i] - (here - v[(i + n - 1) % n]) / h[(i + n - 1) % n])];
    }
}
