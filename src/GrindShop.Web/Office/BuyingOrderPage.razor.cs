using GrindShop.Shop.Buying;
using GrindShop.Shop.Mail;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace GrindShop.Web.Office;

/// <summary>Everything about one purchase order on one page, the next act first.</summary>
public sealed partial class BuyingOrderPage : LivePage
{
    private BuyingWork? _work;
    private IReadOnlyList<PartNeed> _needs = [];
    private IReadOnlyList<OutgoingMail> _mails = [];
    private string _by = "";
    private ElementReference _notice;
    private bool _acted;

    [Parameter]
    public string Number { get; set; } = "";

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    [Inject]
    private Purchasing Purchasing { get; set; } = default!;

    [Inject]
    private Outbox Outbox { get; set; } = default!;

    [Inject]
    private BuyingBook Book { get; set; } = default!;

    protected override async Task ReadAsync()
    {
        var work = _work?.Number == Number ? _work : new BuyingWork(Purchasing, Number);
        _by = await SignsAsAsync();
        await work.HearAsync();
        if (work.Order is { State: PurchaseState.Draft } draft)
            _needs = await Book.NeedsFromAsync(draft.VendorId);
        _mails = await Outbox.OfPurchaseAsync(Number);
        _work = work;
    }

    protected override Task OnParametersSetAsync() => _work is not null && _work.Number != Number ? ReadAsync() : Task.CompletedTask;

    protected override bool Concerns(string changed) => changed == Number || _work?.Order?.State == PurchaseState.Draft;

    /// <summary>After an act the focus goes to what became of it, unless the person types elsewhere already.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_acted)
            return;
        _acted = false;
        await Js.InvokeVoidAsync("shop.show", _notice);
    }

    private async Task ActedAsync()
    {
        _mails = await Outbox.OfPurchaseAsync(Number);
        _acted = true;
    }
}
