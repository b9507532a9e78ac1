namespace GrindShop.Lobes;

/// <summary>
/// The 2-p-q-r-s polynomial at unit lift and unit half angle, exponents 2, 2+d, ... 2+4d (Stoddart, "Polydyne Cam Design",
/// Machine Design, 1953; from memory). The boundary conditions make its derivative factor exactly,
/// <c>s' = -K x (1 - x^d)^4</c> with <c>K = prod n_i / (24 d^4)</c>, which stays accurate for every d.
/// </summary>
internal readonly struct PolynomialShape
{
    private readonly double d, k, c0, c1, c2, c3, c4;

    public PolynomialShape(double d)
    {
        this.d = d;
        double n1 = 2 + d, n2 = 2 + 2 * d, n3 = 2 + 3 * d, n4 = 2 + 4 * d, d4 = d * d * d * d;
        k = 2 * n1 * n2 * n3 * n4 / (24 * d4);
        (c0, c1, c2, c3, c4) = (-k / 2, 4 * k / n1, -6 * k / n2, 4 * k / n3, -k / n4);
    }

    public double Lift(double x)
    {
        var z = Math.Pow(x, d);
        return Math.Max(0, 1 + x * x * (c0 + z * (c1 + z * (c2 + z * (c3 + z * c4)))));
    }

    /// <summary>Lift and derivatives by x, for 0 to 1.</summary>
    public LiftPoint At(double x)
    {
        double z = Math.Pow(x, d), w = 1 - z, w3 = w * w * w;
        var lift = 1 + x * x * (c0 + z * (c1 + z * (c2 + z * (c3 + z * c4))));
        return new(Math.Max(0, lift), -k * x * w3 * w, -k * w3 * (w - 4 * d * z));
    }

    /// <summary>The x at which the lift has fallen to a share of the whole.</summary>
    public double XAtLift(double share)
    {
        var shape = this;
        return Root.InBracket(x => shape.Lift(x) - share, 0, 1, 1e-15);
    }
}
