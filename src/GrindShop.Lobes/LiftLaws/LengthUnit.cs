namespace GrindShop.Lobes;

/// <summary>Unit of lengths in a file.</summary>
public enum LengthUnit
{
    Inch,
    Millimetre,
}

internal static class LengthUnits
{
    public const double MillimetresPerInch = 25.4;

    public static double PerInch(this LengthUnit unit) => unit == LengthUnit.Millimetre ? MillimetresPerInch : 1;

    public static string Name(this LengthUnit unit) => unit == LengthUnit.Millimetre ? "mm" : "in";
}
