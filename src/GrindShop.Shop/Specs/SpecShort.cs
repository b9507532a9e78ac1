using System.Globalization;

namespace GrindShop.Shop.Specs;

public static class SpecShort
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>The whole cam in one line: durations at .050, lobe lifts, lobe separation; only what the customer gave.</summary>
    public static string Short(this CamSpec spec) => string.Join(", ", new[]
    {
        Pair(spec, lobe => lobe.DurationAt050CrankDeg, "0.#") is { } durations ? $"{durations} @.050" : null,
        Pair(spec, lobe => lobe.LobeLiftIn, ".000") ?? (Pair(spec, lobe => lobe.ValveLiftIn, ".000") is { } valve ? $"{valve} at the valve" : null),
        spec.LobeSeparationCamDeg is { } lsa ? "LSA " + lsa.ToString("0.#", Plain) : null,
    }.OfType<string>());

    /// <summary>The same for customers, in the words and units of the form.</summary>
    public static string ShortInWords(this CamSpec spec) => string.Join(", ", new[]
    {
        Pair(spec, lobe => lobe.DurationAt050CrankDeg, "0.#") is { } durations ? $"duration {durations} crank degrees at .050 lift" : null,
        Pair(spec, lobe => lobe.LobeLiftIn, ".000") is { } lobe ? $"lobe lift {lobe} in" : Pair(spec, lobe => lobe.ValveLiftIn, ".000") is { } valve ? $"valve lift {valve} in" : null,
        spec.LobeSeparationCamDeg is { } separation ? $"lobe separation {separation.ToString("0.#", Plain)} cam degrees" : null,
    }.OfType<string>());

    private static string? Pair(CamSpec spec, Func<LobeWish, double?> read, string format) => (read(spec.Intake), read(spec.Exhaust)) switch
    {
        (null, null) => null,
        ({ } one, null) => one.ToString(format, Plain),
        (null, { } other) => "?/" + other.ToString(format, Plain),
        ({ } one, { } other) => one.ToString(format, Plain) + "/" + other.ToString(format, Plain),
    };
}
