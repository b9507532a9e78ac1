using GrindShop.Shop;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Desk;

/// <summary>The desk's lists: what waits for somebody, whom to call, what rests, what is closed. Follows changes and the clock.</summary>
public sealed partial class Inbox : LivePage
{
    /// <summary>Rows drawn at once; more than anybody reads.</summary>
    private const int Most = 200;

    private const string MineView = "mine", NobodyView = "nobody", SnoozedView = "snoozed", CallsView = "calls", ClosedView = "closed";

    private static readonly OrderState[] OpenStates = [OrderState.New, OrderState.WaitingForCustomer, OrderState.Quoted, OrderState.Accepted, OrderState.InWork];

    private IReadOnlyList<InboxRow> _open = [];
    private IReadOnlyList<CallRow> _calls = [];
    private ClosedPage _closed = new(0, 1, []);
    private int _closedCount;
    private (string?, int?) _shown;
    private Refusal? _refusal;
    private string? _said;
    private string _me = "";
    private int _mailWaits;
    private int _blanksWait;
    private bool _read;
    private bool _busy;

    [Inject]
    private BatchAllocation Batch { get; set; } = default!;

    [Inject]
    private InboxBook Book { get; set; } = default!;

    [Inject]
    private CareDesk Care { get; set; } = default!;

    [Inject]
    private MailTray Tray { get; set; } = default!;

    [Inject]
    private Outbox Outbox { get; set; } = default!;

    [SupplyParameterFromQuery]
    private string? View { get; set; }

    [SupplyParameterFromQuery]
    private string? Show { get; set; }

    [SupplyParameterFromQuery]
    private int? Page { get; set; }

    /// <summary>Snoozed orders come back and calls fall due while nobody does anything.</summary>
    protected override TimeSpan? ReadsEvery => TimeSpan.FromMinutes(1);

    private IEnumerable<(string? Key, string Name, int Count)> Lists =>
    [
        (MineView, "Mine", Of(MineView).Count()), (NobodyView, "Nobody's", Of(NobodyView).Count()), (null, "All open", Of(null).Count()),
        (SnoozedView, "Snoozed", Of(SnoozedView).Count()), (CallsView, "Call back", _calls.Count), (ClosedView, "Closed", _closedCount),
    ];

    private bool IsByState => View is null or MineView or NobodyView;

    private IEnumerable<InboxRow> InView => Of(View);

    /// <summary>A closed one has its place only while a customer of it waits to be heard.</summary>
    private IEnumerable<OrderState> States => OpenStates.Concat(InView.Select(row => row.State).Where(state => !state.IsOpen()).Distinct().Order());

    /// <summary>How many mails wait for a person, in words too.</summary>
    private string MailName => _mailWaits switch { 0 => "Mail", 1 => "Mail, 1 needs you", var waits => $"Mail, {waits} need you" };

    /// <summary>How many cams wait for a blank, in words too.</summary>
    private string BlanksName => _blanksWait == 0 ? "Waiting for blanks" : $"Waiting for blanks, {Say.Count(_blanksWait, "cam")}";

    private IReadOnlyList<InboxRow> Rows => View == ClosedView ? _closed.Rows : [.. InView.Where(row => !IsByState || Show is null || row.State.ToString() == Show)];

    private string Count => View == ClosedView
        ? Say.Count(_closed.Total, "closed order") + (_closed.Pages > 1 ? $", page {_closed.Page} of {_closed.Pages}" : "")
        : Say.Count(Rows.Count, "order") + (Rows.Any(row => row.AssignedTo is null) ? " · on an order's number: t take it" : "") + (Rows.Count > Most ? $", the first {Most} shown: find the others by name or number" : "");

    private string Caption => View switch
    {
        ClosedView => "Closed orders, the last closed first",
        SnoozedView => "Snoozed orders, the next to come back first",
        _ => "Open orders: those whose customers wrote stand first, then the longest waiting",
    };

    protected override async Task ReadAsync()
    {
        _shown = (View, Page);
        _me = await SignsAsAsync();
        _open = await Book.OpenAsync();
        _calls = await Book.CallsAsync();
        _closed = View == ClosedView ? await Book.ClosedAsync(Page ?? 1) : _closed;
        _closedCount = View == ClosedView ? _closed.Total : await Book.ClosedCountAsync();
        _mailWaits = await Tray.WaitingCountAsync() + await Outbox.StuckCountAsync();
        _blanksWait = await Batch.CountAsync();
        _read = true;
    }

    protected override async Task OnParametersSetAsync()
    {
        if (!_read || _shown == (View, Page))
            return;
        (_refusal, _said) = (null, null);
        await ReadAsync();
    }

    private IEnumerable<InboxRow> Of(string? view) => view switch
    {
        MineView => _open.Where(row => !row.IsSnoozed(Now) && row.AssignedTo == _me),
        NobodyView => _open.Where(row => !row.IsSnoozed(Now) && row.AssignedTo is null),
        SnoozedView => _open.Where(row => row.IsSnoozed(Now)).OrderBy(row => row.SnoozedUntil),
        _ => _open.Where(row => !row.IsSnoozed(Now)),
    };

    private Task TakeAsync(InboxRow row) => ActAsync(Care.AssignAsync(row.Number, row.Version, _me, _me), $"{row.Number} is yours.");

    private Task CalledAsync(CallRow call) => ActAsync(Care.CallDoneAsync(call.Order, call.Id, _me), $"{call.Customer} was called back.");

    private Task TriedAsync(CallRow call) => ActAsync(Care.CallTriedAsync(call.Order, call.Id, call.Tries, _me), $"{call.Customer} did not answer; the call comes up again in an hour.");

    private async Task ActAsync(Task<Outcome<Order>> act, string said)
    {
        _busy = true;
        _refusal = (await act).Refusal;
        _busy = false;
        _said = _refusal is null ? said : null;
        await ReadAsync();
    }

    private static string Address(string? view, OrderState? state) => (view, state) switch
    {
        (null, null) => "/desk",
        (null, _) => $"/desk?show={state}",
        (_, null) => $"/desk?view={view}",
        _ => $"/desk?view={view}&show={state}",
    };

    private static string? Current(bool isCurrent) => isCurrent ? "true" : null;
}
