using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>Everything about one order on one page, the next act first.</summary>
public sealed partial class OrderPage : LivePage
{
    private OrderWork? _work;
    private Job? _job;
    private string? _read;
    private CatalogContent? _content;
    private CompletedSpec? _completed;
    private IReadOnlyDictionary<int, int> _free = new Dictionary<int, int>();
    private string _by = "";
    private string? _part;
    private ElementReference _notice;
    private bool _acted;

    [Parameter]
    public string Number { get; set; } = "";

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    [Inject]
    private JobFloor JobFloor { get; set; } = default!;

    private string Wanted => Number.Trim().ToUpperInvariant();

    private bool IsRead => _read == Wanted;

    /// <summary>The blank that price, drawing and allocation speak of: the one chosen here, the quoted one, or the best.</summary>
    private string? Part
    {
        get
        {
            var order = _work?.Order;
            var chosen = _part ?? order?.First.QuotedPartNumber;
            return order?.First.Answer?.Blanks.Any(fit => fit.PartNumber == chosen) == true ? chosen : order?.First.Answer?.Best?.PartNumber;
        }
    }

    protected override async Task OnParametersSetAsync()
    {
        if (_work is not null && _work.Number != Wanted)
            await ReadAsync();
    }

    protected override async Task ReadAsync()
    {
        if (_work?.Number != Wanted)
            (_work, _part, _by) = (new OrderWork(OrderDesk, Wanted), null, await SignsAsAsync());
        _content = await Catalog.ContentAsync();
        _free = await Catalog.AvailableAsync();
        await _work.HearAsync();
        _job = (await JobFloor.JobsOfAsync(Wanted)).LastOrDefault();
        _completed = _work.Order is { } order ? await Catalog.CompleteAsync(order.First.Spec) : null;
        _read = _work.Number;
    }

    /// <summary>After an act the focus goes to what became of it, which stands above the next act.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_acted)
            return;
        _acted = false;
        await _notice.FocusAsync();
    }

    private async Task ActedAsync()
    {
        await ReadAsync();
        _acted = true;
    }

    private int FreeOf(string? part) => part is not null && _content?.Blank(part) is { } blank ? _free.GetValueOrDefault(blank.Part.Id) : 0;

    private void Choose(string part) => _part = part;

    private void Correct() => _work!.IsTyping = true;

    private void Leave() => _work!.StopTyping();
}
