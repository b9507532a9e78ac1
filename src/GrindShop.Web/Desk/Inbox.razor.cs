using GrindShop.Shop.Orders;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>Every order that waits for somebody, or the closed ones; follows changes as they happen.</summary>
public sealed partial class Inbox : LivePage
{
    /// <summary>Rows drawn at once; more than anybody reads.</summary>
    private const int Most = 200;

    private const string Closed = "Closed";

    private static readonly OrderState[] OpenStates = [OrderState.New, OrderState.WaitingForCustomer, OrderState.Quoted, OrderState.Accepted, OrderState.InWork];

    private IReadOnlyList<InboxRow> _open = [];
    private IReadOnlyList<InboxRow> _closed = [];
    private bool _read;

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string? Show { get; set; }

    private bool ShowsClosed => Show == Closed;

    protected override async Task ReadAsync()
    {
        _open = await OrderDesk.InboxAsync(closed: false);
        _closed = ShowsClosed ? await OrderDesk.InboxAsync(closed: true) : [];
        _read = true;
    }

    protected override Task OnParametersSetAsync() => _read && ShowsClosed ? ReadAsync() : Task.CompletedTask;

    private IEnumerable<InboxRow> Found() => (ShowsClosed ? _closed : _open)
        .Where(row => Show is null || ShowsClosed || row.State.ToString() == Show);

    private static string? Current(bool isCurrent) => isCurrent ? "true" : null;
}
