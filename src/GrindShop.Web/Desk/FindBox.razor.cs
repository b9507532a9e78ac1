using GrindShop.Shop.Orders.Finding;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;

namespace GrindShop.Web.Desk;

/// <summary>The desk's one search: answers while it is typed into, and Enter opens the best order found.</summary>
public sealed partial class FindBox : LivePage
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly LatestOnly _asking = new();
    private (string? Text, int Page) _given = (null, 1);
    private FoundPage? _found;
    private string _asked = "";
    private int _page = 1;

    [Inject]
    private OrderSearch Search { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    /// <summary>What is asked at the start, from the address.</summary>
    [Parameter]
    public string? Asked { get; set; }

    [Parameter]
    public int Page { get; set; } = 1;

    /// <summary>Shown while nothing is asked.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    private bool IsAsked => !string.IsNullOrWhiteSpace(_asked);

    private string Address(int page) => $"/desk/find?q={Uri.EscapeDataString(_asked.Trim())}&page={page}";

    protected override async Task OnParametersSetAsync()
    {
        if (_given == (Asked, Page))
            return;
        Take();
        await ReadAsync();
    }

    protected override async Task ReadAsync()
    {
        if (_given != (Asked, Page))
            Take();
        var (text, page) = (_asked, _page);
        var found = IsAsked ? await Search.FindAsync(text, page) : null;
        if ((text, page) == (_asked, _page)) // somebody may have typed on meanwhile
            _found = found;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
            await (await Js.InvokeAsync<IJSObjectReference>("import", "./Desk/FindBox.razor.js")).DisposeAsync();
    }

    private void Take() => (_given, _asked, _page) = ((Asked, Page), Asked ?? "", Page);

    private async Task AskAsync(string text)
    {
        (_asked, _page, _found) = (text, 1, OrderQuestion.Of(text).IsTooShort ? null : _found);
        var cancel = _asking.Next();
        await Task.Delay(Pause, Clock, cancel);
        var found = OrderQuestion.Of(text).IsTooShort ? null : await Search.FindAsync(text, 1, cancel);
        cancel.ThrowIfCancellationRequested();
        _found = found;
    }

    private async Task KeyAsync(KeyboardEventArgs key)
    {
        if (key.Key == "Enter" && (await Search.FindAsync(_asked)).Orders is [{ Number: var number }, ..])
            Navigation.NavigateTo($"/desk/orders/{number}");
    }
}
