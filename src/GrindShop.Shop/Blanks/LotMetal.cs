using System.Globalization;

namespace GrindShop.Shop.Blanks;

/// <summary>The metal that a lot may be counted on for: the least of what was measured and what the catalog says.</summary>
/// <param name="StockIn">Grinding stock per side, in; null for a full-round blank.</param>
/// <param name="CaseDepthIn">Case from the surface that the catalog's stock gives, in; null where there is none or no end to it.</param>
public sealed record LotMetal(double? StockIn, double? CaseDepthIn)
{
    /// <summary>What the catalog says.</summary>
    public static LotMetal Nominal(BlankPart part) => new(part.Nominal?.StockIn, part.CaseDepthIn);

    /// <summary>
    /// Stock and case are each the least of measured and nominal. Metal outside the nominal stock has to come off as well and the case starts
    /// further out by as much, so it is taken from the case.
    /// </summary>
    public static LotMetal Of(BlankPart part, double? measuredStockIn, double? measuredCaseIn)
    {
        var nominal = part.Nominal?.StockIn;
        var outside = nominal is { } stock && measuredStockIn is { } measured ? Math.Max(0, measured - stock) : 0;
        var caseIn = part.CaseDepthIn is { } depth ? Math.Max(0, Math.Min(depth, measuredCaseIn ?? depth) - outside) : (double?)null;
        return new LotMetal(nominal is { } known ? Math.Min(known, measuredStockIn ?? known) : null, caseIn);
    }

    /// <summary>What is less than the catalog says, in words; empty where nothing is.</summary>
    public string Words(BlankPart part) => string.Join("; ", new[]
    {
        StockIn < part.Nominal?.StockIn ? $"measured stock {In(StockIn)} in, nominal {In(part.Nominal?.StockIn)}" : null,
        CaseDepthIn < part.CaseDepthIn ? $"case to count on {In(CaseDepthIn)} in, nominal {In(part.CaseDepthIn)}" : null,
    }.OfType<string>());

    private static string In(double? lengthIn) => lengthIn?.ToString("0.000", CultureInfo.InvariantCulture) ?? "";
}
