namespace GrindShop.Web.Drawings;

/// <summary>What is plotted of a lobe over the cam angle, with its unit and which of its extremes matter.</summary>
internal sealed record LawQuantity(string Title, string Unit, string Format, Func<LawLobe, double, double?> At)
{
    /// <summary>Flatter than this is drawn as a gap, in: a flank passes through straight on its way from hollow to convex.</summary>
    public const double FlattestIn = 4;

    private const double RadPerDeg = Math.PI / 180;

    public bool ShowsMost { get; init; } = true;

    public bool ShowsLeast { get; init; }

    /// <summary>Only positive values count for the least.</summary>
    public bool LeastIsConvex { get; init; }

    public static IReadOnlyList<LawQuantity> All { get; } =
    [
        new("Lifter lift", "in", "0.000", (lobe, rad) => lobe.Law.At(rad).LiftIn),
        new("Lifter velocity", "in per cam degree", "0.00000", (lobe, rad) => lobe.Law.At(rad).VelocityInPerRad * RadPerDeg),
        new("Lifter acceleration", "in per cam degree squared", "0.000000", (lobe, rad) => lobe.Law.At(rad).AccelerationInPerRad2 * RadPerDeg * RadPerDeg) { ShowsLeast = true },
        new("Radius of the ground contour", "in, hollow negative", "0.000", Radius) { ShowsMost = false, ShowsLeast = true, LeastIsConvex = true },
    ];

    private static double? Radius(LawLobe lobe, double camRad)
    {
        var point = lobe.Contour.TouchedAt(camRad);
        return Math.Abs(point.RadiusIn) <= FlattestIn ? point.IsConcave ? -point.RadiusIn : point.RadiusIn : null;
    }
}
