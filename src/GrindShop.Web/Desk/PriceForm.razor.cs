using GrindShop.Shop;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>The price of the order on the chosen blanks: the lines of the rules, and what the desk makes of them. What was typed outlives a change by somebody else.</summary>
public sealed partial class PriceForm
{
    private readonly HashSet<(int Cam, string Code)> _chosen = [];
    private IReadOnlyList<PriceAdder>? _manual;
    private List<LineEdit>? _lines;
    private Refusal? _refusal;
    private string? _pricedFor;
    private DateOnly _validUntil;
    private DateOnly? _shipOn;
    private int _own;
    private bool _busy;

    [Parameter, EditorRequired]
    public OrderWork Work { get; set; } = default!;

    /// <summary>The chosen blank of each cam that needs one.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<int, string> Parts { get; set; } = default!;

    [Parameter, EditorRequired]
    public ShopSettings Shop { get; set; } = default!;

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    [Parameter, EditorRequired]
    public string By { get; set; } = "";

    [Parameter, EditorRequired]
    public EventCallback Acted { get; set; }

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    private Order Order => Work.Order!;

    private QuoteOffer Offer => new()
    {
        Parts = Parts,
        Lines = [.. _lines!.Select(line => line.Line)],
        ValidUntil = _validUntil,
        ShipOn = _shipOn,
    };

    /// <summary>The adders first: a price without those that were chosen before must not be shown, however often the page is drawn meanwhile.</summary>
    protected override async Task OnParametersSetAsync()
    {
        var wanted = $"{Order.Version} {string.Join(' ', Parts)}";
        if (_pricedFor == wanted)
            return;
        _pricedFor = wanted;
        if (_manual is null)
            await TakeEarlierAsync();
        await PriceAsync();
    }

    /// <summary>What was decided for the last quote stands ready again: its adders, its changed lines, its own lines.</summary>
    private async Task TakeEarlierAsync()
    {
        var manual = (await OrderDesk.PriceRulesAsync()).ManualAdders.ToList();
        var earlier = Order.Quotes.LastOrDefault()?.Lines ?? [];
        _chosen.UnionWith(earlier.Where(line => line.Cam is not null && manual.Exists(adder => adder.Code == line.Code)).Select(line => (line.Cam!.Value, line.Code)));
        _lines = [.. earlier.Where(line => line.NeedsReason).Select(line => new LineEdit(line))];
        _own = _lines.Count(line => line.IsOwn);
        _validUntil = Today.AddDays(QuoteOffer.UsualDays);
        _manual = manual;
    }

    private Task ChooseAsync(int cam, string code, bool chosen)
    {
        _ = chosen ? _chosen.Add((cam, code)) : _chosen.Remove((cam, code));
        return PriceAsync();
    }

    private async Task PriceAsync()
    {
        var choices = Order.Cams.ToDictionary(cam => cam.Ordinal, cam => new CamChoice(
            Parts.GetValueOrDefault(cam.Ordinal), [.. _chosen.Where(one => one.Cam == cam.Ordinal).Select(one => one.Code)]));
        var drafted = await OrderDesk.DraftAsync(Order, choices);
        _refusal = drafted.Refusal;
        if (drafted.Succeeded)
            _lines = Merge(drafted.Value);
        _shipOn = Order.Cams.Select(cam => PromiseRule.Suggest(Today, cam, Parts.GetValueOrDefault(cam.Ordinal), Shop)).Max();
    }

    /// <summary>The rules' lines with what the desk made of them, then the desk's own.</summary>
    private List<LineEdit> Merge(IReadOnlyList<PriceLine> rules)
    {
        var known = (_lines ?? []).Where(line => !line.IsOwn).ToDictionary(line => line.Key);
        return [.. rules.Select(rule => known.TryGetValue((rule.Cam, rule.Code), out var edit) ? edit.Follow(rule) : new LineEdit(rule)), .. (_lines ?? []).Where(line => line.IsOwn)];
    }

    private void AddLine() => _lines!.Add(LineEdit.Own(++_own));

    private async Task QuoteAsync()
    {
        _busy = true;
        var offer = Offer;
        await Work.ActAsync(order => OrderDesk.QuoteAsync(order.Number, order.Version, offer, By), $"Quoted at {PriceRules.Dollars(offer.Total)}, valid until {Shell.Say.Day(offer.ValidUntil)}.");
        _busy = false;
        await Acted.InvokeAsync();
    }
}
