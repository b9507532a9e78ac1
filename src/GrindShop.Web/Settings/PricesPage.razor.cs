using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Settings;

/// <summary>The whole price list, each figure with the way to change it.</summary>
public sealed partial class PricesPage : LivePage
{
    private static readonly string[] Heads = [.. Enum.GetValues<LifterType>().Select(lifter => Say.Capital(lifter.Words())), "Regrind", "New gear"];

    private IReadOnlyList<PriceEntry>? _list;
    private IReadOnlyList<EngineFamily> _families = [];
    private string _code = "";
    private int _from = 2;

    [Inject]
    private PriceBook Book { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private IEnumerable<(string, IEnumerable<PriceEntry>)> Families => _families.Select(family => (family.Name, Places(family)));

    private IEnumerable<(string, IEnumerable<PriceEntry>)> Adders => _list!.OfType<PriceAdder>().Select(adder => ($"{adder.Name}, {adder.When.Words()}", Alone(adder)));

    private IEnumerable<(string, IEnumerable<PriceEntry>)> Breaks => _list!.OfType<QuantityBreak>().Select(step => ($"{step.From} equal cams", Alone(step)));

    protected override async Task ReadAsync()
    {
        _families = (await Catalog.ContentAsync()).Families;
        _list = await Book.AllAsync();
    }

    private static IEnumerable<PriceEntry> Alone(PriceEntry entry) => [entry];

    /// <summary>One row: every lifter, then the repairs; places that are not set stand with amount 0.</summary>
    private IEnumerable<PriceEntry> Places(EngineFamily family) =>
    [
        .. Enum.GetValues<LifterType>().Select(lifter => Set(new BasePrice { EngineFamily = family, Lifter = lifter, Amount = 0 })),
        .. new[] { WorkKind.Regrind, WorkKind.GearReplacement }.Select(kind => Set(new RepairPrice { EngineFamily = family, Kind = kind, Amount = 0 })),
    ];

    private PriceEntry Set(PriceEntry place) => _list!.FirstOrDefault(entry => entry.Key == place.Key) ?? place;

    private void GoTo(string kind, string name) => Navigation.NavigateTo($"/settings/prices/{kind}/{Uri.EscapeDataString(name)}");
}
