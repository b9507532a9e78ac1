using GrindShop.Shop;
using GrindShop.Shop.Orders;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>The price of the order on the chosen blank, line by line, with the adders that the desk chooses.</summary>
public sealed partial class PriceForm
{
    private readonly SortedSet<string> _chosen = [];
    private IReadOnlyList<PriceAdder>? _manual;
    private Outcome<IReadOnlyList<PriceLine>>? _lines;
    private (string Part, uint Version)? _pricedFor;
    private bool _busy;

    [Parameter, EditorRequired]
    public OrderWork Work { get; set; } = default!;

    [Parameter, EditorRequired]
    public string Part { get; set; } = "";

    [Parameter, EditorRequired]
    public string By { get; set; } = "";

    [Parameter, EditorRequired]
    public EventCallback Acted { get; set; }

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    /// <summary>The adders first: a price without those that were chosen before must not be shown, however often the page is drawn meanwhile.</summary>
    protected override async Task OnParametersSetAsync()
    {
        if (_pricedFor == (Part, Work.Order!.Version))
            return;
        _pricedFor = (Part, Work.Order.Version);
        if (_manual is null)
            await ReadAddersAsync();
        await PriceAsync();
    }

    private async Task ReadAddersAsync()
    {
        IReadOnlyList<PriceAdder> manual = [.. (await OrderDesk.PriceRulesAsync()).ManualAdders];
        _chosen.UnionWith(manual.Select(adder => adder.Code).Intersect(Work.Order!.PriceLines.Select(line => line.Code)));
        _manual = manual;
    }

    private Task ChooseAsync(string code, bool chosen)
    {
        _ = chosen ? _chosen.Add(code) : _chosen.Remove(code);
        return PriceAsync();
    }

    private async Task PriceAsync()
    {
        _lines = await OrderDesk.PriceAsync(Work.Order!, Part, _chosen);
    }

    private async Task QuoteAsync()
    {
        _busy = true;
        var lines = _lines!.Value!;
        await Work.ActAsync(order => OrderDesk.QuoteAsync(order.Number, order.Version, Part, lines, By), $"Quoted at {PriceRules.Dollars(lines.Sum(line => line.Amount))}.");
        _busy = false;
        await Acted.InvokeAsync();
    }
}
