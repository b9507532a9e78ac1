using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Demo;

/// <summary>Are the shop's tables whole: a rule for every pair, prices for known families, people with known roles?</summary>
internal static class TableCheck
{
    public static void Check(
        SeedFolder folder, IReadOnlyList<GearRule> gears, IReadOnlyList<LifterRule> lifters,
        ScenarioPrices? prices, IReadOnlyDictionary<string, EngineFamily> families, IReadOnlyList<ScenarioPerson> people)
    {
        var cams = Enum.GetValues<CamGear>().Where(gear => gear != CamGear.None);
        foreach (var end in new[] { GearPosition.Rear, GearPosition.Front })
            EachPair(folder, "gears.json", cams, Enum.GetValues<DistributorGear>(), gears.Where(rule => rule.Position == end).Select(rule => (rule.CamGear, rule.DistributorGear)), "distributorGear");
        foreach (var rule in gears.Where(rule => rule.Position == GearPosition.None))
            folder.Wrong("gears.json", $"{rule.CamGear} with {rule.DistributorGear}", "position", "The gear sits at the front or at the rear.");
        EachPair(folder, "lifters.json", Enum.GetValues<BlankAlloy>(), Enum.GetValues<LifterType>(), lifters.Select(rule => (rule.Alloy, rule.Lifter)), "lifter");
        foreach (var price in prices?.BasePrices ?? [])
            if (!families.ContainsKey(price.EngineFamily) || price.Amount <= 0)
                folder.Wrong("prices.json", price.EngineFamily, "engineFamily", "A known family and an amount above zero are needed.");
        foreach (var price in prices?.Repairs ?? [])
            if (!families.ContainsKey(price.EngineFamily) || price.Amount <= 0 || price.Kind == WorkKind.NewGrind)
                folder.Wrong("prices.json", price.EngineFamily, "repairs", "A known family, regrind or gearReplacement, and an amount above zero are needed.");
        foreach (var person in people)
            if (!Roles.All.Contains(person.Role))
                folder.Wrong("people.json", person.UserName, "role", $"\"{person.Role}\" is none of {string.Join(", ", Roles.All)}.");
    }

    private static void EachPair<TOne, TOther>(
        SeedFolder folder, string file, IEnumerable<TOne> ones, IEnumerable<TOther> others, IEnumerable<(TOne, TOther)> found, string field)
    {
        var counts = found.CountBy(pair => pair).ToDictionary();
        foreach (var pair in from one in ones from other in others select (one, other))
            if (counts.GetValueOrDefault(pair) != 1)
                folder.Wrong(file, $"{pair.one} with {pair.other}", field, "The pair needs one rule.");
    }
}
