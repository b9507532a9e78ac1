using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Office;

/// <summary>A measured hardness in the other scales (ASTM E140), and against what is wanted of the alloy.</summary>
public static class HardnessWords
{
    /// <summary>The reading on the other scales, or that it cannot be converted: nothing is guessed beyond the table.</summary>
    public static string Converted(HardnessReading reading) => Hardness.Convert(reading.Value, reading.Scale, reading.Scale).Problem is { } outside
        ? $"{outside}"
        : $"= {string.Join(", ", Enum.GetValues<HardnessScale>().Where(scale => scale != reading.Scale).Select(scale => On(scale, reading)))}.";

    /// <summary>Against the alloy's window where one is known, else against what the catalog says.</summary>
    public static string Verdict(BlankPart part, HardnessReading reading)
    {
        if (!part.IsSoft && AlloyData.Of(part.Alloy.Kernel()).Lobe is { } window)
            return Holds(window, reading) ? $"Within the alloy's {Window(window)}." : $"Outside the alloy's {Window(window)}: hold the lot back and ask the supplier.";
        return part.HardnessHrc is { } stated ? FormattableString.Invariant($"The catalog says {stated:0.#} HRC.") : "The blank is delivered soft.";
    }

    private static string On(HardnessScale scale, HardnessReading reading)
    {
        var converted = Hardness.Convert(reading.Value, reading.Scale, scale).Required();
        return converted.BeyondBrinell && scale == HardnessScale.Hbw ? $"{converted} (outside the Brinell scale's usual range)" : $"{converted}";
    }

    /// <summary>The window's ends stand in the table, on any scale: so a reading beyond the table can be held against them too.</summary>
    private static bool Holds(HardnessWindow window, HardnessReading reading)
    {
        double End(double value) => Hardness.Convert(value, window.Scale, reading.Scale).Required().Value;
        return reading.Value >= End(window.Least) && !(window.Most is { } most && reading.Value > End(most));
    }

    private static string Window(HardnessWindow window) => window.Most is { } most
        ? FormattableString.Invariant($"{window.Least:0.#} to {most:0.#} {Scale(window)}")
        : FormattableString.Invariant($"least of {window.Least:0.#} {Scale(window)}");

    private static string Scale(HardnessWindow window) => window.Scale.ToString().ToUpperInvariant();
}
