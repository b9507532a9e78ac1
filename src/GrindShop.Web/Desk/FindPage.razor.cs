using GrindShop.Shop.Orders.Finding;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>Finds any order, open or closed, by anything that is known of it.</summary>
public sealed partial class FindPage : LivePage
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly LatestOnly _asking = new();
    private IReadOnlyList<FoundOrder> _found = [];
    private string _asked = "";
    private string? _shown;

    [Inject]
    private OrderSearch Search { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string? Q { get; set; }

    private string Count => _asked.Trim().Length < 2 ? "Type at least two letters or digits."
        : _found.Count == 0 ? "Nothing found. Try fewer words, or another spelling."
        : _found.Count == OrderSearch.MostFound ? $"The best {OrderSearch.MostFound} orders; type more to narrow it down."
        : Say.Count(_found.Count, "order");

    protected override async Task OnParametersSetAsync()
    {
        if (_shown == Q)
            return;
        (_shown, _asked) = (Q, Q ?? "");
        await ReadAsync();
    }

    protected override async Task ReadAsync()
    {
        if (_shown is null && Q is not null)
            (_shown, _asked) = (Q, Q);
        _found = await Search.FindAsync(_asked);
    }

    private async Task AskAsync(string text)
    {
        _asked = text;
        var cancel = _asking.Next();
        await Task.Delay(Pause, Clock, cancel);
        var found = await Search.FindAsync(text, cancel);
        cancel.ThrowIfCancellationRequested();
        _found = found;
    }
}
