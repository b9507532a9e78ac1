using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>The editor of an order's specification. What was typed outlives a change by somebody else.</summary>
public sealed partial class SpecCorrection
{
    private SpecDraft _draft = default!;
    private SpecReading _reading = SpecReading.Nothing;
    private CamSpec _basis = default!;
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
    public string By { get; set; } = "";

    [Parameter, EditorRequired]
    public EventCallback Acted { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Leave { get; set; }

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    private OrderCam Cam => Work.Order!.Cam(Ordinal) ?? Work.Order.First;

    protected override void OnInitialized()
    {
        _basis = Cam.Spec;
        _draft = SpecDraft.Of(_basis);
        Read();
    }

    /// <summary>A newer specification was taken over: what was typed stays, the fields that were not touched follow it.</summary>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(Cam.Spec, _basis))
            return;
        (_draft, _basis) = (SpecCarry.Carry(_basis, _draft, Cam.Spec), Cam.Spec);
        Read();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await _title.FocusAsync();
    }

    private void Read() => _reading = SpecReading.Of(_draft, Content);

    private async Task SaveAsync()
    {
        _problem = (Cam.Kind == WorkKind.GearReplacement ? _reading.Completed.Problems : _reading.Completed.InTheWay).FirstOrDefault()?.Message;
        if (_problem is not null)
            return;
        _busy = true;
        if (await Work.ActAsync(order => OrderDesk.CorrectAsync(order.Number, order.Version, _reading.Spec, _why, By, cam: Cam.Ordinal), "The specification is corrected and judged again."))
            Work.IsTyping = false;
        _busy = false;
        await Acted.InvokeAsync();
    }
}
