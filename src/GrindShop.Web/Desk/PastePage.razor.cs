using GrindShop.Shop;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace GrindShop.Web.Desk;

/// <summary>A mail that did not come by the mailbox is pasted in; before it is taken in, the page says what it would become.</summary>
public sealed partial class PastePage : LivePage, IAsyncDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly LatestOnly _looking = new();
    private IReadOnlyList<EngineFamily> _families = [];
    private IReadOnlyList<KnownCaller> _callers = [];
    private CallHeard _heard = CallHeard.Of(new CallDraft(), []);
    private OrderOfMail? _order;
    private TabKeeper<PasteDraft>? _keeper;
    private ElementReference _text;
    private Refusal? _refusal;
    private bool _taking;

    private PasteDraft Draft { get; set; } = new();

    [Inject]
    private MailIntake Intake { get; set; } = default!;

    [Inject]
    private CallerBook Callers { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    private string GoesTo => _order switch
    {
        { IsCustomers: true } order => $"It goes to order {order.Number}, as the customer's words.",
        { } order => $"It goes to order {order.Number}, marked as from another address: it is not the one that the order's customer gave.",
        _ => "It becomes a new order: what is understood goes into its fields, everything else into its notes.",
    };

    public async ValueTask DisposeAsync()
    {
        _looking.Dispose();
        Dispose();
        if (_keeper is not null)
            await _keeper.DisposeAsync();
    }

    protected override async Task ReadAsync()
    {
        _families = (await Catalog.ContentAsync()).Families;
        Hear();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        (_keeper, var kept) = await TabKeeper<PasteDraft>.StartAsync(Js, "paste-draft");
        await _text.FocusAsync();
        if (kept is null)
            return;
        Draft = kept;
        Hear();
        StateHasChanged();
        await LookAsync();
    }

    private async Task ChangeAsync(Action type)
    {
        type();
        Hear();
        if (_keeper is not null)
            await _keeper.KeepAsync(Draft);
        await LookAsync();
    }

    private void Hear() => _heard = CallHeard.Of(new CallDraft { Line = MailEnquiry.Said(Draft.Mail) }, _families);

    /// <summary>Whose mail is it, and about which order?</summary>
    private async Task LookAsync()
    {
        var cancel = _looking.Next();
        await Task.Delay(Pause, Clock, cancel);
        var (callers, order) = (await Callers.FindAsync(Draft.Contact, cancel), await Intake.LookAsync(Draft.Mail, cancel));
        cancel.ThrowIfCancellationRequested();
        (_callers, _order) = (callers, order);
        StateHasChanged();
    }

    private Task ChooseAsync(Customer customer) => ChangeAsync(() => (Draft.Name, Draft.Email) = (customer.Name, customer.Email ?? Draft.Email));

    private async Task TakeAsync()
    {
        if (_taking)
            return;
        (_taking, _refusal) = (true, null);
        var taken = await Intake.PasteAsync(Draft.Key, Draft.Mail, await SignsAsAsync());
        (_taking, _refusal) = (false, taken.Refusal);
        if (taken.Value is not { } mail)
            return;
        await _keeper!.DropAsync();
        Navigation.NavigateTo(mail.OrderNumber is { } number ? $"/desk/orders/{number}" : "/desk/mail");
    }
}
