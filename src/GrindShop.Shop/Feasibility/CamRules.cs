using System.Collections.Concurrent;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>What the shop's rules say to one cam, worked out once for each kind of blank: thousands of blanks are of a few kinds.</summary>
internal sealed class CamRules(GrindSpec grind, EngineFamily family, ShopRules shop)
{
    private readonly ConcurrentDictionary<(BlankAlloy, BlankForm, string, bool), IReadOnlyList<RuleAdvice>> _advice = [];
    private readonly ConcurrentDictionary<CamGear, GearAdvice> _gears = [];

    public ShopRules Shop => shop;

    /// <inheritdoc cref="ShopRules.Advice"/>
    public IReadOnlyList<RuleAdvice> Advice(BlankPart part) => _advice.GetOrAdd((part.Alloy, part.Form, part.FiringOrder, part.FuelPumpLobe), static (_, of) => [.. of.Shop.Advice(of.Grind, of.Family, of.Part)],
        (Shop: shop, Grind: grind, Family: family, Part: part));

    /// <inheritdoc cref="ShopRules.Gear"/>
    public GearAdvice Gear(CamGear gear) => _gears.GetOrAdd(gear, static (gear, of) => of.Shop.Gear(of.Family, gear, of.Distributor), (Shop: shop, Family: family, Distributor: grind.DistributorGear));
}
