using GrindShop.Shop.Buying;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Demo;

/// <summary>Adds how the parts are sold and the purchase orders of the year, in the order in which they were sent.</summary>
internal static class ScenarioBuying
{
    public static async Task<IReadOnlyList<RowProblem>> AddAsync(ShopDb db, ShopScenario scenario, ScenarioShop shop, ScenarioCalendar calendar, CancellationToken cancel)
    {
        var problems = scenario.Terms.Select(row => Sell(db, row)).OfType<RowProblem>().ToList();
        var lots = shop.Lots.ToDictionary(lot => lot.LotNumber);
        foreach (var rows in Orders(scenario))
        {
            var story = new PurchaseStory(shop.PurchaseNumbers[rows.Key], [.. rows], lots, shop.Person(Roles.Owner, 0), calendar);
            problems.AddRange(story.Play());
            db.Add(story.Order);
        }
        return problems;
    }

    /// <summary>The number of each purchase order, in the order in which they were sent; the lots that came on them name it.</summary>
    public static async Task<IReadOnlyDictionary<int, string>> NumbersAsync(ShopDb db, ShopScenario scenario, CancellationToken cancel)
    {
        var numbers = new Dictionary<int, string>();
        foreach (var rows in Orders(scenario))
            numbers.Add(rows.Key, await db.NextPurchaseNumberAsync(cancel));
        return numbers;
    }

    private static IEnumerable<IGrouping<int, ScenarioPurchase>> Orders(ShopScenario scenario) =>
        scenario.Purchases.GroupBy(row => row.Order).OrderByDescending(rows => rows.First().SentDaysAgo ?? -1).ThenBy(rows => rows.Key);

    private static RowProblem? Sell(ShopDb db, ScenarioTerms row)
    {
        var terms = db.Add(new SupplyTerms(row.Part)).Entity;
        var wanted = row.Terms;
        var refusal = terms.SoldAs(wanted.Multiple, wanted.SetupCharge, wanted.PriceBreaks).Refusal ?? terms.Serve(wanted.ServiceLevel).Refusal;
        return refusal is null ? null : new RowProblem("terms.csv", row.Part.PartNumber, "priceBreaks", refusal.Reason);
    }
}
