using System.Globalization;
using GrindShop.Shop.Buying;

namespace GrindShop.Web.Office;

/// <summary>Price breaks as lines of text: a quantity, then the price of one.</summary>
public static class PriceBreakText
{
    public static string Write(IEnumerable<PriceBreak> breaks) =>
        string.Join('\n', breaks.Select(step => string.Create(CultureInfo.InvariantCulture, $"{step.FromQuantity} {step.UnitPrice:0.00}")));

    public static IReadOnlyList<PriceBreak> Read(string? text, FigureReader read) =>
        [.. (text ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(line => Line(line, read))];

    private static PriceBreak Line(string line, FigureReader read)
    {
        var words = line.Split([' ', '\t', ';', ':'], 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return new PriceBreak(read.Count(words[0], $"quantity in \"{line}\""), read.Amount(words.ElementAtOrDefault(1), $"price in \"{line}\""));
    }
}
