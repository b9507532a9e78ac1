using GrindShop.Shop;
using GrindShop.Shop.Orders;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>The price of the order on the chosen blanks: the lines of the rules, and what the desk makes of them. What was typed outlives a change by somebody else.</summary>
public sealed partial class PriceForm
{
    private IReadOnlyList<PriceAdder>? _manual;
    private bool _priced;
    private Refusal? _refusal;
    private IReadOnlyList<string> _shortages = [];
    private string? _pricedFor;
    private bool _busy;

    [Parameter, EditorRequired]
    public OrderWork Work { get; set; } = default!;

    /// <summary>The chosen blank of each cam that needs one.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<int, string> Parts { get; set; } = default!;

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    [Parameter, EditorRequired]
    public string By { get; set; } = "";

    [Parameter, EditorRequired]
    public EventCallback Acted { get; set; }

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    private Order Order => Work.Order!;

    private PriceDraft Draft => Work.Prices;

    private QuoteOffer Offer => Draft.Offer(Parts);

    /// <summary>The adders first: a price without those that were chosen before must not be shown, however often the page is drawn meanwhile.</summary>
    protected override async Task OnParametersSetAsync()
    {
        var wanted = $"{Order.Version} {string.Join(' ', Parts)}";
        if (_pricedFor == wanted)
            return;
        _pricedFor = wanted;
        _manual ??= [.. (await OrderDesk.PriceRulesAsync()).ManualAdders];
        if (!Draft.IsBegun)
            Draft.Begin(Order, _manual, Today);
        await PriceAsync();
    }

    private Task ChooseAsync(int cam, string code, bool chosen)
    {
        Draft.Choose(cam, code, chosen);
        return PriceAsync();
    }

    private async Task PriceAsync()
    {
        var drafted = await OrderDesk.DraftAsync(Order, Order.Cams.ToDictionary(cam => cam.Ordinal, cam => Draft.Choice(cam, Parts.GetValueOrDefault(cam.Ordinal))));
        _refusal = drafted.Refusal;
        if (drafted.Succeeded)
        {
            Draft.Follow(drafted.Value);
            _shortages = drafted.Value.Shortages;
        }
        _priced = true;
    }

    private async Task QuoteAsync()
    {
        _busy = true;
        var offer = Offer;
        await Work.ActAsync(order => OrderDesk.QuoteAsync(order.Number, order.Version, offer, By), $"Quoted at {PriceRules.Dollars(offer.Total)}, valid until {Shell.Say.Day(offer.ValidUntil)}.");
        if (Work.Refusal is { Code: "otherStock" })
            await PriceAsync();
        _busy = false;
        await Acted.InvokeAsync();
    }
}
