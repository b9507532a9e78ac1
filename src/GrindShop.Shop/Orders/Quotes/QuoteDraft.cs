using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>What the desk chose for one cam: its blank, and the adders that are chosen by hand.</summary>
public sealed record CamChoice(string? PartNumber, IReadOnlyCollection<string> AdderCodes);

/// <summary>What the rules ask for an order, and the day they let it leave the shop if it is begun today.</summary>
/// <param name="Fits">The blanks it stands on, as they are today, by the cam's place in the order.</param>
/// <param name="Shortages">What has to be bought for it, a sentence for each part.</param>
public sealed record PriceByRules(IReadOnlyList<PriceLine> Lines, DateOnly ShipOn, IReadOnlyDictionary<int, BlankFit> Fits, IReadOnlyList<string> Shortages);

/// <summary>The lines of a quote by the shop's price rules, cam after cam. Pure.</summary>
public static class QuoteDraft
{
    /// <summary>Every cam's lines; a refusal names the cam that cannot be priced yet.</summary>
    /// <param name="fits">What the chosen blank of each cam is today, by its place in the order.</param>
    public static Outcome<IReadOnlyList<PriceLine>> Lines(
        Order order, IReadOnlyDictionary<int, CamChoice> choices, IReadOnlyDictionary<int, BlankFit> fits, PriceRules rules, CatalogContent content)
    {
        var lines = new List<PriceLine>();
        foreach (var cam in order.Cams)
        {
            var priced = Lines(cam, choices.GetValueOrDefault(cam.Ordinal) ?? new CamChoice(null, []), fits.GetValueOrDefault(cam.Ordinal), rules, content);
            if (!priced.Succeeded)
                return order.Cams.Count == 1 ? priced.Refusal : new Refusal(priced.Refusal.Code, $"Cam {cam.Ordinal}: {priced.Refusal.Reason}");
            lines.AddRange(ForPieces(cam, priced.Value));
        }
        return lines;
    }

    /// <summary>The lines of one piece as lines of the cam: for all its pieces, and with what the rules ask.</summary>
    public static IEnumerable<PriceLine> ForPieces(OrderCam cam, IEnumerable<PriceLine> onePiece) => onePiece.Select(line => line with
    {
        Cam = cam.Ordinal,
        Text = cam.Quantity == 1 ? line.Text : $"{cam.Quantity} × {line.Text}",
        Amount = cam.Quantity * line.Amount,
        RuleAmount = cam.Quantity * line.Amount,
    });

    /// <summary>What the rules ask for the pieces, without the adders that are chosen by hand; null where they cannot say.</summary>
    public static decimal? Sum(OrderCam cam, FeasibilityAnswer? answer, string? partNumber, int quantity, PriceRules rules, CatalogContent content) => quantity == 0 ? 0
        : cam.NeedsBlank ? OnePiece(answer?.Grind, answer?.Blanks.FirstOrDefault(fit => fit.PartNumber == partNumber), [], quantity, rules, content).Value?.Sum(line => quantity * line.Amount)
        : rules.RepairLines(cam.Kind, cam.Spec.EngineFamily, [], quantity) is { Count: > 0 } lines ? lines.Sum(line => quantity * line.Amount)
        : null;

    private static Outcome<IReadOnlyList<PriceLine>> Lines(OrderCam cam, CamChoice choice, BlankFit? fit, PriceRules rules, CatalogContent content) =>
        cam.NeedsBlank
            ? OnePiece(cam.Answer?.Grind, fit, choice.AdderCodes, cam.Quantity, rules, content)
            : new List<PriceLine>(rules.RepairLines(cam.Kind, cam.Spec.EngineFamily, choice.AdderCodes, cam.Quantity));

    private static Outcome<IReadOnlyList<PriceLine>> OnePiece(
        GrindSpec? grind, BlankFit? fit, IReadOnlyCollection<string> adderCodes, int quantity, PriceRules rules, CatalogContent content)
    {
        if (grind is null || fit is null)
            return new Refusal("notJudged", "Complete the specification first: the price stands on a blank that was judged for it.");
        return content.Blank(fit.PartNumber) is { } blank
            ? rules.Lines(grind, blank.Part.EngineFamily, blank.Part, fit, adderCodes, quantity)
            : new Refusal("unknownBlank", $"Blank {fit.PartNumber} is not in the catalog any more.");
    }
}
