using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Demo;

/// <summary>The shop's answers to the scenario's orders, each with the stock of the day it came in. Judged side by side: it is most of the work of a load.</summary>
internal sealed class ScenarioAnswers(ShopScenario scenario, ScenarioCalendar calendar)
{
    private readonly ShopRules _rules = new(scenario.Settings, scenario.Rules);
    private readonly ILookup<string, PreparedBlank> _blanks = scenario.Blanks.AsParallel().AsOrdered().Select(PreparedBlank.Of).ToLookup(blank => blank.Part.EngineFamily.Code);
    private readonly ILookup<BlankPart, (DateTimeOffset At, int Change)> _stock = Came(scenario, calendar).Concat(Taken(scenario, calendar)).ToLookup(change => change.Part, change => (change.At, change.Change));

    public Dictionary<ScenarioOrder, FeasibilityAnswer?> All(CancellationToken cancel) =>
        scenario.Orders.AsParallel().WithCancellation(cancel).Select(order => (order, Answer: Answer(order))).ToDictionary(pair => pair.order, pair => pair.Answer);

    private FeasibilityAnswer? Answer(ScenarioOrder order)
    {
        var family = scenario.Families.FirstOrDefault(family => family.Code == order.Spec.EngineFamily);
        if (SpecCompletion.Complete(order.Spec, family).Grind is not { } grind)
            return null;
        var at = calendar.At(order.ReceivedDaysAgo, ScenarioCalendar.Received);
        return FeasibilityJudge.Judge(grind, family!, _blanks[grind.EngineFamily].Select(blank => new StockedBlank(blank, Available(blank.Part, at))), _rules);
    }

    private int Available(BlankPart part, DateTimeOffset at) => _stock[part].Where(change => change.At < at).Sum(change => change.Change);

    private static IEnumerable<(BlankPart Part, DateTimeOffset At, int Change)> Came(ShopScenario scenario, ScenarioCalendar calendar) =>
        scenario.Lots.Where(lot => lot.Quarantine is null).Select(lot => (lot.Part, calendar.At(lot.ReceivedDaysAgo, ScenarioCalendar.StockComes), lot.Quantity));

    private static IEnumerable<(BlankPart Part, DateTimeOffset At, int Change)> Taken(ShopScenario scenario, ScenarioCalendar calendar) => scenario.Orders
        .Where(order => order.State is OrderState.InWork or OrderState.Shipped)
        .Select(order => (order.Blank!, calendar.At(order.OpenedDaysAgo, ScenarioCalendar.Opened), -1));
}
