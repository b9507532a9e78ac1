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

    public Dictionary<ScenarioCam, FeasibilityAnswer?> All(CancellationToken cancel) =>
        scenario.Orders.SelectMany(order => order.Cams, (order, cam) => (order, cam)).AsParallel().WithCancellation(cancel)
            .Select(pair => (pair.cam, Answer: Answer(pair.order, pair.cam.Entry))).ToDictionary(pair => pair.cam, pair => pair.Answer);

    /// <summary>A customer's own cam that nobody has measured yet cannot be judged.</summary>
    private FeasibilityAnswer? Answer(ScenarioOrder order, CamEntry cam)
    {
        var family = scenario.Families.FirstOrDefault(family => family.Code == cam.Spec.EngineFamily);
        if (cam.Kind != WorkKind.NewGrind || SpecCompletion.Complete(cam.Spec, family).Grind is not { } grind)
            return null;
        var at = calendar.At(order.ReceivedDaysAgo, ScenarioCalendar.Received);
        return FeasibilityJudge.Judge(grind, family!, _blanks[grind.EngineFamily].Select(blank => new StockedBlank(blank, Available(blank.Part, at))), _rules);
    }

    private int Available(BlankPart part, DateTimeOffset at) => _stock[part].Where(change => change.At < at).Sum(change => change.Change);

    private static IEnumerable<(BlankPart Part, DateTimeOffset At, int Change)> Came(ShopScenario scenario, ScenarioCalendar calendar) =>
        scenario.Lots.Where(lot => lot.Quarantine is null).Select(lot => (lot.Part, calendar.At(lot.ReceivedDaysAgo, ScenarioCalendar.StockComes), lot.Quantity));

    private static IEnumerable<(BlankPart Part, DateTimeOffset At, int Change)> Taken(ShopScenario scenario, ScenarioCalendar calendar) => scenario.Orders
        .Where(order => order is { State: OrderState.InWork or OrderState.Shipped, First.Blank: not null })
        .Select(order => (order.First.Blank!, calendar.At(order.OpenedDaysAgo, ScenarioCalendar.Opened), -1));
}
