using System.Globalization;

namespace GrindShop.Web.Public;

/// <summary>A valve event as it is said: degrees and the side of the dead centre it lies on.</summary>
internal static class EventWords
{
    /// <summary>"3.0° before TDC"; a negative value lies on the other side.</summary>
    public static string Before(double crankDeg, string deadCentre) => Say(crankDeg, "before", "after", deadCentre);

    public static string After(double crankDeg, string deadCentre) => Say(crankDeg, "after", "before", deadCentre);

    private static string Say(double crankDeg, string side, string otherSide, string deadCentre) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(crankDeg):0.0}° {(crankDeg < -.05 ? otherSide : side)} {deadCentre}");
}
