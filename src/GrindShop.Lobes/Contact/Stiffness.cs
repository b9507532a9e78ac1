namespace GrindShop.Lobes;

/// <summary>The contact modulus of two bodies and the pressure that a load-stress makes with it.</summary>
public static class Stiffness
{
    /// <summary><c>E*</c>, psi: <c>1/E* = (1 - v1^2)/E1 + (1 - v2^2)/E2</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A modulus outside 1e4-1e9 psi or a Poisson's ratio outside 0-.5.</exception>
    public static double Of(double modulus1Psi, double modulus2Psi, double poisson1, double poisson2)
    {
        Require.Within(modulus1Psi, 1e4, 1e9);
        Require.Within(modulus2Psi, 1e4, 1e9);
        Require.Within(poisson1, 0, 0.5);
        Require.Within(poisson2, 0, 0.5);
        return 1 / ((1 - poisson1 * poisson1) / modulus1Psi + (1 - poisson2 * poisson2) / modulus2Psi);
    }

    /// <summary><c>p0 = sqrt(K E* / pi)</c> for a load-stress <c>K = F / (w R)</c>, all psi.</summary>
    internal static double Pressure(double loadStressPsi, double modulusPsi) => Math.Sqrt(loadStressPsi * modulusPsi / Math.PI);
}
