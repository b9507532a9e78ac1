using System.Globalization;
using System.Text;

namespace GrindShop.Lobes;

/// <summary>Tables for the grinder and the inspector as CSV, units in the header, nose at 0, opening side negative.</summary>
public static class GrindTable
{
    /// <summary>
    /// Wheel-centre motion at equal cam angles: lift of the wheel over its distance from the shaft axis on the base circle, which a
    /// comment line above the header states.
    /// </summary>
    /// <param name="law">Lift of the follower.</param>
    /// <param name="follower">The engine's follower.</param>
    /// <param name="baseCircleDiameterIn">Base circle, in.</param>
    /// <param name="wheelRadiusIn">Wheel radius, in.</param>
    /// <param name="stepCamDeg">Step, .01 to 10 cam degrees.</param>
    /// <param name="unit">Unit of the lengths.</param>
    public static string WheelCentre(
        LiftLaw law, Follower follower, double baseCircleDiameterIn, double wheelRadiusIn, double stepCamDeg, LengthUnit unit = LengthUnit.Inch)
    {
        var wheel = new RolledLaw(law, follower, baseCircleDiameterIn, Follower.Roller(wheelRadiusIn));
        var onBase = baseCircleDiameterIn / 2 + wheelRadiusIn;
        var heading = string.Create(
            CultureInfo.InvariantCulture, $"# wheel centre on the base circle {onBase * unit.PerInch():0.000000} {unit.Name()} from the shaft axis\n");
        return heading + Csv(
            $"cam angle (deg),wheel lift ({unit.Name()})", stepCamDeg, unit, deg => [wheel.At(deg * AngleMath.RadPerDeg).LiftIn]);
    }

    /// <summary>Lift under the follower and surface radius at equal angles.</summary>
    public static string Contour(
        LiftLaw law, Follower follower, double baseCircleDiameterIn, double stepCamDeg, LengthUnit unit = LengthUnit.Inch)
    {
        var contour = LobeContour.Of(law, follower, baseCircleDiameterIn);
        return Csv($"angle (deg),follower lift ({unit.Name()}),surface radius ({unit.Name()})", stepCamDeg, unit, deg =>
            [law.At(deg * AngleMath.RadPerDeg).LiftIn, contour.PolarRadiusIn(deg * AngleMath.RadPerDeg)]);
    }

    private static string Csv(string header, double stepCamDeg, LengthUnit unit, Func<double, double[]> lengthsAt)
    {
        Require.Within(stepCamDeg, 0.01, 10, nameof(stepCamDeg));
        var text = new StringBuilder(header).Append('\n');
        var rows = (int)Math.Ceiling(360 / stepCamDeg - 1e-9);
        for (var i = 0; i < rows; i++)
        {
            var deg = -180 + i * stepCamDeg;
            text.Append(deg.ToString("0.####", CultureInfo.InvariantCulture));
            foreach (var length in lengthsAt(deg))
                text.Append(',').Append((length * unit.PerInch()).ToString("0.000000", CultureInfo.InvariantCulture));
            text.Append('\n');
        }
        return text.ToString();
    }
}
