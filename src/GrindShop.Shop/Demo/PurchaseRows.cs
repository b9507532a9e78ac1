using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Demo;

/// <summary>One part on a purchase order of the scenario. Days count back from the day of loading, or forward from the day it was sent.</summary>
/// <param name="Row">Where it stands, for messages.</param>
/// <param name="Order">Rows of one number make one purchase order.</param>
/// <param name="SentDaysAgo">Null for a draft.</param>
/// <param name="Lots">The lots that came in on it.</param>
public sealed record ScenarioPurchase(
    string Row, int Order, BlankPart Part, int Quantity, decimal UnitCost, int? SentDaysAgo, int ExpectedAfterDays, IReadOnlyList<ScenarioLot> Lots,
    int? NewDateAfterDays, string NewDateWhy, string? UnusualWhy, int? ClosedDaysAgo, string ClosedWhy);

/// <summary>How a part of the scenario is sold.</summary>
public sealed record ScenarioTerms(BlankPart Part, TermsWanted Terms);

/// <summary>Reads purchases.csv and terms.csv.</summary>
internal static class PurchaseRows
{
    public static IReadOnlyList<ScenarioPurchase> Read(SeedFolder folder, IReadOnlyDictionary<string, BlankPart> blanks, IReadOnlyDictionary<string, ScenarioLot> lots) =>
        [.. folder.Rows("purchases.csv").Select(row => Purchase(row, blanks, lots)).OfType<ScenarioPurchase>()];

    public static IReadOnlyList<ScenarioTerms> Terms(SeedFolder folder, IReadOnlyDictionary<string, BlankPart> blanks) =>
        [.. folder.Rows("terms.csv").Select(row => Terms(row, blanks)).OfType<ScenarioTerms>()];

    private static ScenarioPurchase? Purchase(CsvRow row, IReadOnlyDictionary<string, BlankPart> blanks, IReadOnlyDictionary<string, ScenarioLot> lots)
    {
        row.Text("partNumber");
        if (row.Known("partNumber", blanks) is not { } part)
            return null;
        var came = Lots(row, lots);
        if (came.Any(lot => lot.Part != part))
            row.Wrong("lots", $"The lots are not all of {part.PartNumber}.");
        return new ScenarioPurchase(row.Name, row.Whole("order"), part, row.Whole("quantity"), row.Money("unitCostUsd"), row.MaybeWhole("sentDaysAgo"), row.Whole("expectedAfterDays"), came,
            row.MaybeWhole("newDateAfterDays"), row.Maybe("newDateWhy") ?? "", row.Maybe("unusualWhy"), row.MaybeWhole("closedDaysAgo"), row.Maybe("closedWhy") ?? "");
    }

    private static List<ScenarioLot> Lots(CsvRow row, IReadOnlyDictionary<string, ScenarioLot> lots)
    {
        var found = new List<ScenarioLot>();
        foreach (var number in (row.Maybe("lots") ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries))
            if (lots.TryGetValue(number, out var lot))
                found.Add(lot);
            else
                row.Wrong("lots", $"\"{number}\" is not known.");
        return found;
    }

    private static ScenarioTerms? Terms(CsvRow row, IReadOnlyDictionary<string, BlankPart> blanks)
    {
        row.Text("partNumber");
        return row.Known("partNumber", blanks) is { } part
            ? new ScenarioTerms(part, new TermsWanted(row.Whole("multiple"), row.Money("setupChargeUsd"), Breaks(row), row.MaybeNumber("serviceLevel")))
            : null;
    }

    /// <summary>"10 120.00; 25 110.00": from ten blanks on $120 each, from 25 on $110.</summary>
    private static List<PriceBreak> Breaks(CsvRow row)
    {
        var breaks = new List<PriceBreak>();
        foreach (var step in (row.Maybe("priceBreaks") ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            if (step.Split(' ') is [var from, var price] && int.TryParse(from, out var quantity) && decimal.TryParse(price, System.Globalization.CultureInfo.InvariantCulture, out var each))
                breaks.Add(new PriceBreak(quantity, each));
            else
                row.Wrong("priceBreaks", $"\"{step}\" is not a quantity and a price.");
        return breaks;
    }
}
