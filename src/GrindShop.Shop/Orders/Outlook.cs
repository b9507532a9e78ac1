using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Orders;

/// <summary>What a cam is likely to cost and when it could leave the shop, before anybody has looked at it.</summary>
/// <param name="Least">Lowest price over the blanks that can become it; null where the shop has no price for such a cam.</param>
/// <param name="ShipsOn">The day it would leave from the best blank, ordered today; null where no blank can become it.</param>
/// <param name="From">The best blank.</param>
public sealed record Outlook(decimal? Least, decimal? Most, DateOnly? ShipsOn, BlankFit? From)
{
    public static Outlook Of(FeasibilityAnswer answer, CatalogContent content, PriceRules prices, DateOnly today)
    {
        var sums = answer.Blanks.Where(fit => fit.Usable).Select(fit => Price(answer, fit, content, prices)).OfType<decimal>().ToList();
        return new Outlook(
            sums.Count == 0 ? null : sums.Min(),
            sums.Count == 0 ? null : sums.Max(),
            answer.Best is { } best ? PromiseRule.Suggest(today, best, content.Rules.Settings) : null,
            answer.Best);
    }

    private static decimal? Price(FeasibilityAnswer answer, BlankFit fit, CatalogContent content, PriceRules prices) =>
        content.Blank(fit.PartNumber) is { } blank ? prices.Lines(answer.Grind, blank.Part.EngineFamily, blank.Part, fit, []).Value?.Sum(line => line.Amount) : null;
}
