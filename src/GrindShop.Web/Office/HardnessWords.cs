using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Office;

/// <summary>A measured hardness in the other scales (ASTM E140), and against what is wanted of the alloy.</summary>
public static class HardnessWords
{
    public static IEnumerable<string> InEveryScale(HardnessReading reading) =>
        from scale in Enum.GetValues<HardnessScale>()
        where scale != reading.Scale
        let converted = Hardness.Convert(reading.Value, reading.Scale, scale)
        where converted.Succeeded
        select converted.Value.BeyondBrinell && scale == HardnessScale.Hbw ? $"{converted.Value} (outside the Brinell scale's usual range)" : converted.Value.ToString();

    /// <summary>Against the alloy's window where one is known, else against what the catalog says.</summary>
    public static string Verdict(BlankPart part, HardnessReading reading)
    {
        if (Hardness.Convert(reading.Value, reading.Scale, HardnessScale.Hrc) is not { Succeeded: true, Value: var hrc })
            return "";
        if (!part.IsSoft && AlloyData.Of(part.Alloy.Kernel()).Lobe is { Scale: HardnessScale.Hrc } window)
            return window.Holds(hrc.Value) ? $"Within the alloy's {Window(window)}." : $"Outside the alloy's {Window(window)}: hold the lot back and ask the supplier.";
        return part.HardnessHrc is { } stated ? $"The catalog says {stated:0.#} HRC." : "The blank is delivered soft.";
    }

    private static string Window(HardnessWindow window) => window.Most is { } most ? $"{window.Least:0.#} to {most:0.#} HRC" : $"least of {window.Least:0.#} HRC";
}
