using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

public sealed partial class Track
{
    private Order? _order;
    private Job? _job;
    private CatalogContent? _content;
    private bool _looked;

    /// <summary>The secret code that the customer was given.</summary>
    [Parameter]
    public string? Code { get; set; }

    [SupplyParameterFromQuery(Name = "new")]
    private string? New { get; set; }

    [Inject]
    private OrderDesk Desk { get; set; } = default!;

    [Inject]
    private JobFloor Floor { get; set; } = default!;

    [Inject]
    private Catalog Catalog { get; set; } = default!;

    [Inject]
    private ChangeListener Changes { get; set; } = default!;

    private bool IsNew => New == "1";

    public void Dispose() => Changes.Changed -= OnChanged;

    protected override void OnInitialized() => Changes.Changed += OnChanged;

    protected override Task OnParametersSetAsync() => LoadAsync();

    private void OnChanged(string orderNumber)
    {
        if (orderNumber == _order?.Number)
            _ = InvokeAsync(ReloadAsync);
    }

    private async Task ReloadAsync()
    {
        await LoadAsync();
        StateHasChanged();
    }

    private async Task LoadAsync()
    {
        var code = TrackingCodes.Read(Code);
        _content = await Catalog.ContentAsync();
        _order = code is null ? null : await Desk.TrackAsync(code);
        _job = _order is null ? null : (await Floor.JobsOfAsync(_order.Number)).LastOrDefault();
        _looked = true;
    }
}
