using System.Globalization;

namespace GrindShop.Web.Office;

/// <summary>A place on the map where cams were asked for that the shelf of this moment does not serve.</summary>
/// <param name="Dots">The wishes, at least one.</param>
public sealed record MapHole(IReadOnlyList<MapDot> Dots)
{
    /// <summary>Wishes no further apart than these bands stand in one hole; the shop's choice.</summary>
    private const double BandCrankDeg = 6, BandCamDeg = 2;

    public int Count => Dots.Sum(dot => dot.Demand.Quantity);

    /// <summary>Where it lies, in the figures of its own wishes.</summary>
    public string Where => $"{Range(Dots.Select(dot => dot.DurationCrankDeg))} crank deg at .050, LSA {Range(Dots.Select(dot => dot.SeparationCamDeg))} cam deg";

    /// <summary>Blanks that are not in stock and would serve here, each with how many cams.</summary>
    public IReadOnlyList<(string PartNumber, int Count)> ToOrder =>
    [
        .. Dots.Where(dot => dot.Service == MapService.ToOrder).GroupBy(dot => dot.PartNumber!)
            .Select(part => (part.Key, part.Sum(dot => dot.Demand.Quantity))).OrderByDescending(part => part.Item2).ThenBy(part => part.Key, StringComparer.Ordinal),
    ];

    /// <summary>Cams that no blank of the catalog serves.</summary>
    public int Unserved => Dots.Where(dot => dot.Service == MapService.None).Sum(dot => dot.Demand.Quantity);

    /// <summary>The holes of a map, the largest first.</summary>
    public static IReadOnlyList<MapHole> Of(IEnumerable<MapDot> dots) =>
    [
        .. dots.Where(dot => dot.Service != MapService.FromStock)
            .GroupBy(dot => (Math.Floor(dot.DurationCrankDeg / BandCrankDeg), Math.Floor(dot.SeparationCamDeg / BandCamDeg)))
            .OrderBy(band => band.Key).Select(band => new MapHole([.. band])).OrderByDescending(hole => hole.Count),
    ];

    private static string Range(IEnumerable<double> values)
    {
        var (least, most) = (values.Min(), values.Max());
        return least == most ? Figure(least) : $"{Figure(least)} to {Figure(most)}";
    }

    internal static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
