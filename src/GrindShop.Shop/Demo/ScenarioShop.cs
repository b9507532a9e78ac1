using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Demo;

/// <summary>The shop while the scenario is played: its stock of the moment, its prices, its people and its heat-treater.</summary>
internal sealed class ScenarioShop(IReadOnlyList<BlankLot> lots, IReadOnlyDictionary<int, string> purchaseNumbers, PriceRules prices, IReadOnlyList<ScenarioPerson> people, Vendor? heatTreater, ShopSettings settings)
{
    private readonly ILookup<BlankPart, BlankLot> _lots = lots.OrderBy(lot => lot.ReceivedAt).ToLookup(lot => lot.BlankPart);

    public IReadOnlyList<BlankLot> Lots { get; } = lots;

    /// <summary>The number of each purchase order of the scenario.</summary>
    public IReadOnlyDictionary<int, string> PurchaseNumbers { get; } = purchaseNumbers;

    public PriceRules Prices { get; } = prices;

    public ShopSettings Settings { get; } = settings;

    public Vendor? HeatTreater { get; } = heatTreater;

    /// <summary>The oldest lot of the part that has a blank left.</summary>
    public BlankLot? Lot(BlankPart part, DateTimeOffset at) => _lots[part].FirstOrDefault(lot => lot.ReceivedAt <= at && lot.Available > 0);

    /// <summary>One of the people of a role; the same order always meets the same.</summary>
    public string Person(string role, int order)
    {
        var names = people.Where(person => person.Role == role).Select(person => person.Name).DefaultIfEmpty(role).ToList();
        return names[order % names.Count];
    }
}
