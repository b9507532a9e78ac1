namespace GrindShop.Lobes;

/// <summary>
/// Hertz contact of two cylinders along a line (K. L. Johnson, Contact Mechanics, ch. 4): <c>p0 = sqrt(F E* / (pi w R))</c>,
/// <c>b = 2F / (pi w p0)</c>, with <c>1/R = 1/R1 + 1/R2</c> and <c>1/E* = (1 - v1^2)/E1 + (1 - v2^2)/E2</c>.
/// Elastic, smooth, dry, evenly loaded along the line, no edge effect: an advisory figure, never a guarantee.
/// </summary>
/// <param name="PeakPressurePsi">Greatest pressure, in the middle of the strip.</param>
/// <param name="HalfWidthIn">Half the width of the strip.</param>
/// <param name="LoadStressPsi">Load per width over relative radius, <c>F / (w R)</c>: what load-stress factors limit.</param>
/// <param name="IsNarrow">The strip is narrow against both radii, as the theory supposes: half width at most a tenth.</param>
public sealed record LineContact(double PeakPressurePsi, double HalfWidthIn, double LoadStressPsi, bool IsNarrow)
{
    public const double MostRadiusIn = 1e5;

    private const double NarrowShare = 0.1;

    // On the axis tau / p0 = z - z^2 / sqrt(1 + z^2), z in half widths; its greatest value is where z^2 is the golden section.
    private static readonly double ShearDepth = Math.Sqrt((Math.Sqrt(5) - 1) / 2);
    private static readonly double ShearShare = ShearDepth - Math.Pow(ShearDepth, 3);

    /// <summary>Greatest shear stress, .3003 of the peak pressure; it lies below the surface.</summary>
    public double MaxShearPsi => ShearShare * PeakPressurePsi;

    /// <summary>Depth of the greatest shear, .786 of the half width.</summary>
    public double MaxShearDepthIn => ShearDepth * HalfWidthIn;

    /// <summary>The contact under a force. Radii: null is flat, negative is concave.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Force outside 0-1e6 lbf, width .001-100 in, radius .001-1e5 in (either sign), modulus 1e4-1e9 psi, Poisson's ratio 0-.5.
    /// </exception>
    public static Outcome<LineContact, ContactProblem> Of(
        double forceLbf,
        double widthIn,
        double? radius1In,
        double? radius2In,
        double modulus1Psi,
        double modulus2Psi,
        double poisson1,
        double poisson2)
    {
        Require.Within(forceLbf, 0, 1e6);
        Require.Within(widthIn, 0.001, 100);
        CheckRadius(radius1In, nameof(radius1In));
        CheckRadius(radius2In, nameof(radius2In));
        var modulus = Stiffness.Of(modulus1Psi, modulus2Psi, poisson1, poisson2);
        return ContactProblem.OfRadii(radius1In, radius2In) is { } problem
            ? problem
            : Under(forceLbf / widthIn, radius1In, radius2In, modulus);
    }

    private static LineContact Under(double lbfPerIn, double? radius1In, double? radius2In, double modulusPsi)
    {
        var loadStress = lbfPerIn * (Curvature(radius1In) + Curvature(radius2In));
        var pressure = Stiffness.Pressure(loadStress, modulusPsi);
        var halfWidth = pressure > 0 ? 2 * lbfPerIn / (Math.PI * pressure) : 0;
        var sharpest = Math.Max(Math.Abs(Curvature(radius1In)), Math.Abs(Curvature(radius2In)));
        return new(pressure, halfWidth, loadStress, halfWidth * sharpest <= NarrowShare);
    }

    private static double Curvature(double? radiusIn) => radiusIn is { } radius ? 1 / radius : 0;

    private static void CheckRadius(double? radiusIn, string name)
    {
        if (radiusIn is { } radius)
            Require.Within(Math.Abs(radius), 0.001, MostRadiusIn, name);
    }
}
