using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Records;

/// <summary>The shop while the scenario is played: its catalog, its stock of the moment, its prices and its people.</summary>
internal sealed class ScenarioShop(ShopScenario scenario, IReadOnlyList<BlankLot> lots, PriceRules prices, Vendor? heatTreater)
{
    private readonly ShopRules _rules = new(scenario.Settings, scenario.Gears, scenario.Lifters);
    private readonly List<PreparedBlank> _blanks = [.. scenario.Blanks.AsParallel().AsOrdered().Select(PreparedBlank.Of)];
    private readonly ILookup<BlankPart, BlankLot> _lots = lots.OrderBy(lot => lot.ReceivedAt).ToLookup(lot => lot.BlankPart);

    public PriceRules Prices { get; } = prices;

    public Vendor? HeatTreater { get; } = heatTreater;

    public CompletedSpec Complete(CamSpec spec) => SpecCompletion.Complete(spec, scenario.Families.FirstOrDefault(family => family.Code == spec.EngineFamily));

    /// <summary>The answer of that day, with the stock of that day.</summary>
    public FeasibilityAnswer Judge(GrindSpec grind, DateTimeOffset at)
    {
        var family = scenario.Families.First(family => family.Code == grind.EngineFamily);
        var blanks = _blanks.Where(blank => blank.Part.EngineFamily == family).Select(blank => new StockedBlank(blank, In(blank.Part, at).Sum(lot => lot.Available)));
        return FeasibilityJudge.Judge(grind, family, blanks, _rules);
    }

    /// <summary>The oldest lot of the part that has a blank left.</summary>
    public BlankLot? Lot(BlankPart part, DateTimeOffset at) => In(part, at).FirstOrDefault(lot => lot.Available > 0);

    /// <summary>One of the people of a role; the same order always meets the same.</summary>
    public string Person(string role, int order)
    {
        var names = scenario.People.Where(person => person.Role == role).Select(person => person.Name).DefaultIfEmpty(role).ToList();
        return names[order % names.Count];
    }

    private IEnumerable<BlankLot> In(BlankPart part, DateTimeOffset at) => _lots[part].Where(lot => lot.ReceivedAt <= at);
}
