using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>A change after acceptance in the making: first what it means, then the agreement. What was typed outlives a change by somebody else.</summary>
public sealed partial class RevisionForm
{
    private SpecTyping _typing = default!;
    private RevisionPreview? _preview;
    private decimal? _byRules;
    private string? _part;
    private (int Quantity, DateOnly Promise) _seen;
    private int _quantity;
    private DateOnly _promise;
    private decimal _priceChange;
    private string _priceReason = "";
    private string _agreedBy = "";
    private OrderChannel _how = OrderChannel.Phone;
    private string _why = "";
    private string? _problem;
    private bool _busy;
    private ElementReference _title;

    [Parameter, EditorRequired]
    public OrderWork Work { get; set; } = default!;

    /// <summary>The cam's place in the order.</summary>
    [Parameter, EditorRequired]
    public int Ordinal { get; set; }

    [Parameter, EditorRequired]
    public CatalogContent Content { get; set; } = default!;

    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    [Parameter, EditorRequired]
    public string By { get; set; } = "";

    [Parameter, EditorRequired]
    public EventCallback Acted { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Leave { get; set; }

    [Inject]
    private OrderChanging Changing { get; set; } = default!;

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    private Order Order => Work.Order!;

    private OrderCam Cam => Order.Cam(Ordinal) ?? Order.First;

    /// <summary>Pieces before anything is typed: those that are agreed, or one of a cam that is only drawn up.</summary>
    private int Agreed => Order.IsDrawnUp(Cam) ? 1 : Cam.Quantity;

    private IEnumerable<BlankFit> Usable => (_preview?.Answer ?? Cam.Answer)?.Blanks.Where(fit => fit.Usable) ?? [];

    /// <summary>The blank chosen here, the agreed one while it still fits, or the best.</summary>
    private string? Part => Usable.FirstOrDefault(fit => fit.PartNumber == (_part ?? Cam.QuotedPartNumber))?.PartNumber ?? Usable.FirstOrDefault()?.PartNumber;

    private IReadOnlyList<SpecChange> Changes =>
    [
        .. SpecChange.Between(Order.ToldSpec(Cam), _typing.Reading.Spec),
        .. _quantity == Cam.Quantity ? [] : new[] { new SpecChange("Pieces", OrderWords.Pieces(Cam.Quantity), OrderWords.Pieces(_quantity)) },
        .. Part == Cam.QuotedPartNumber ? [] : new[] { new SpecChange("Blank", Cam.QuotedPartNumber, Part) },
        .. _promise == Order.PromisedOn ? [] : new[] { new SpecChange("Promised", Order.PromisedOn is { } day ? Shell.Say.Day(day) : null, Shell.Say.Day(_promise)) },
    ];

    private RevisionTerms Terms => new()
    {
        Cam = Cam.Ordinal,
        Spec = _typing.Reading.Spec,
        PartNumber = Cam.NeedsBlank ? Part : null,
        Quantity = _quantity,
        PriceChange = _priceChange,
        PriceReason = _priceReason,
        PromisedOn = _promise,
        AgreedBy = _agreedBy,
        AgreedHow = _how,
        Why = _why,
    };

    protected override void OnInitialized()
    {
        _typing = new SpecTyping(Cam.Spec, Content);
        _seen = (_quantity, _promise) = (Agreed, Order.PromisedOn ?? Today);
        _agreedBy = Order.AcceptedBy ?? Order.Customer.Name;
    }

    /// <summary>What somebody else has agreed meanwhile is taken over where it was not typed over here.</summary>
    protected override void OnParametersSet()
    {
        var now = (Quantity: Agreed, Promise: Order.PromisedOn ?? Today);
        var isOther = _typing.Follow(Cam.Spec) || now != _seen;
        (_quantity, _promise, _seen) = (Shell.Carry.Of(_seen.Quantity, _quantity, now.Quantity), Shell.Carry.Of(_seen.Promise, _promise, now.Promise), now);
        if (isOther)
            Look();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await _title.FocusAsync();
    }

    private void Read()
    {
        _typing.Read();
        Look();
    }

    /// <summary>What was looked at is not what stands here any more.</summary>
    private void Look() => (_preview, _problem) = (null, null);

    private Task ChooseAsync(string? part)
    {
        _part = part;
        return LookAsync();
    }

    private async Task LookAsync()
    {
        _busy = true;
        var asked = Terms with { Spec = SameAs(_typing.Reading.Spec) };
        var looked = await Changing.PreviewAsync(Order, asked);
        (_preview, _problem) = (looked.Value, looked.Refusal?.Reason);
        if (_preview is { } preview)
        {
            // The new answer may put another blank first than the one that was asked about.
            if (Cam.NeedsBlank && Part is { } part && part != asked.PartNumber)
                _preview = (await Changing.PreviewAsync(Order, asked with { PartNumber = part })).Value;
            _byRules = await OrderDesk.PriceDifferenceAsync(Cam, preview.Answer, Part, _quantity);
        }
        _busy = false;
    }

    private async Task AgreeAsync()
    {
        _busy = true;
        var terms = Terms with { Spec = SameAs(_typing.Reading.Spec) };
        if (await Work.ActAsync(order => Changing.ReviseAsync(order.Number, order.Version, terms, By), "The revision is written down; print the traveler anew."))
            Work.IsTyping = false;
        _busy = false;
        await Acted.InvokeAsync();
    }

    /// <summary>A form that says the same is the same specification, however its numbers were written.</summary>
    private CamSpec SameAs(CamSpec read) => SpecChange.Between(Cam.Spec, read).Count == 0 ? Cam.Spec : read;
}
