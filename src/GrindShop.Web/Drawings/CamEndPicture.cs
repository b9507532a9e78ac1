using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;

namespace GrindShop.Web.Drawings;

/// <summary>Noses that point the same way, of one kind of valve.</summary>
/// <param name="Label">Cylinders with the valve's letter, such as "1I 6I".</param>
/// <param name="Valve">The kind of valve.</param>
/// <param name="Tip">End of the line from the shaft axis.</param>
/// <param name="LabelAt">Middle of the label.</param>
public sealed record CamSpoke(string Label, ValveKind Valve, PicturePoint Tip, PicturePoint LabelAt);

/// <summary>A whole cam seen down its axis from the front, datum at the top, laid out for drawing.</summary>
public sealed class CamEndPicture(CamLayout layout, CamRotation turns, CamDatum datum)
{
    public const double Size = 400, Middle = Size / 2;
    private const double IntakeReach = 140, ExhaustReach = 86, LabelRoom = 19;

    /// <summary>Angles are counted on the cam in its sense of rotation; seen from the front, clockwise is to the right of the top.</summary>
    public IReadOnlyList<CamSpoke> Spokes { get; } =
    [
        .. from row in layout.Rows
           group row by (row.Lobe.Valve, Angle: Math.Round(row.FromDatumCamDeg, 2)) into noses
           let reach = noses.Key.Valve == ValveKind.Intake ? IntakeReach : ExhaustReach
           let clockwiseDeg = turns == CamRotation.Clockwise ? noses.Key.Angle : -noses.Key.Angle
           select new CamSpoke(string.Join(' ', noses.Select(row => Name(row.Lobe)).Distinct()), noses.Key.Valve, Out(clockwiseDeg, reach), Out(clockwiseDeg, reach + LabelRoom)),
    ];

    public string DatumWords => datum == CamDatum.Dowel ? "dowel" : "keyway";

    public string TurnsWords => turns == CamRotation.Clockwise ? "turns clockwise" : "turns counter-clockwise";

    /// <summary>Path data of the arrow round the axis, with its head, in the sense of rotation.</summary>
    public string Arrow
    {
        get
        {
            var (sweep, sign) = turns == CamRotation.Clockwise ? (1, 1) : (0, -1);
            return string.Create(CultureInfo.InvariantCulture,
                $"M{Middle - sign * 30} {Middle + 16}A34 34 0 1 {sweep} {Middle + sign * 30} {Middle + 16}m{sign * 9} -7l{sign * -9} 8l{sign * -8} -10");
        }
    }

    /// <summary>The drawing in words.</summary>
    public string Description =>
        $"The cam seen from the front, {TurnsWords}, the {DatumWords} at the top. Noses in cam degrees from the {DatumWords} in the sense of rotation: " +
        $"{string.Join(", ", layout.Rows.Select(row => string.Create(CultureInfo.InvariantCulture, $"{Name(row.Lobe)} {row.FromDatumCamDeg:0.0#}")))}.";

    /// <summary>"1I": intake of cylinder 1.</summary>
    public static string Name(LobePlace lobe) => $"{lobe.Cylinder}{(lobe.Valve == ValveKind.Intake ? 'I' : 'E')}";

    private static PicturePoint Out(double clockwiseDeg, double reach)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(clockwiseDeg));
        return new PicturePoint(Middle + reach * sin, Middle - reach * cos);
    }
}
