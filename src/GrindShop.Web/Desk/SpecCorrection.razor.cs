using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>The editor of an order's specification. What was typed outlives a change by somebody else.</summary>
public sealed partial class SpecCorrection
{
    private SpecTyping _typing = default!;
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

    protected override void OnInitialized() => _typing = new SpecTyping(Cam.Spec, Content);

    protected override void OnParametersSet() => _typing.Follow(Cam.Spec);

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await _title.FocusAsync();
    }

    private async Task SaveAsync()
    {
        _problem = (Cam.Kind == WorkKind.GearReplacement ? _typing.Reading.Completed.Problems : _typing.Reading.Completed.InTheWay).FirstOrDefault()?.Message;
        if (_problem is not null)
            return;
        _busy = true;
        if (await Work.ActAsync(order => OrderDesk.CorrectAsync(order.Number, order.Version, _typing.Reading.Spec, _why, By, cam: Cam.Ordinal), "The specification is corrected and judged again."))
            Work.IsTyping = false;
        _busy = false;
        await Acted.InvokeAsync();
    }
}
