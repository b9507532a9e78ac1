using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace GrindShop.Web.Desk;

/// <summary>Everything about one order on one page, the next act first.</summary>
public sealed partial class OrderPage : LivePage
{
    private OrderWork? _work;
    private IReadOnlyList<Job> _jobs = [];
    private string? _read;
    private CatalogContent? _content;
    private CompletedSpec? _completed;
    private IReadOnlyDictionary<int, IReadOnlyList<FieldProblem>> _unfinished = new Dictionary<int, IReadOnlyList<FieldProblem>>();
    private Dictionary<int, IReadOnlyDictionary<string, int>> _free = [];
    private IReadOnlyList<OutgoingMail> _mails = [];
    private IReadOnlyList<string> _people = [];
    private IReadOnlyList<IncomingMail> _cameIn = [];
    private IReadOnlyList<KnownCaller> _callers = [];
    private Letter? _toTell;
    private string _by = "";
    private readonly Dictionary<int, string> _parts = [];
    private int _ordinal = 1;
    private ElementReference _notice;
    private bool _acted;

    [Parameter]
    public string Number { get; set; } = "";

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    [Inject]
    private OrderDesk OrderDesk { get; set; } = default!;

    [Inject]
    private JobFloor JobFloor { get; set; } = default!;

    [Inject]
    private BlankReturn BlankReturn { get; set; } = default!;

    [Inject]
    private CareDesk Care { get; set; } = default!;

    [Inject]
    private CustomerMail Mail { get; set; } = default!;

    [Inject]
    private Outbox Outbox { get; set; } = default!;

    [Inject]
    private MailTray Tray { get; set; } = default!;

    [Inject]
    private CallerBook Callers { get; set; } = default!;

    private string Wanted => Number.Trim().ToUpperInvariant();

    private bool IsRead => _read == Wanted;

    /// <summary>The cam that the page speaks of.</summary>
    private OrderCam Cam => _work!.Order!.Cam(_ordinal) ?? _work.Order.First;

    private bool MayRevise => _work!.Order!.State is OrderState.Accepted or OrderState.InWork && (Cam.Quantity == 0 || Cam.Shipped < Cam.Quantity);

    /// <summary>The blank that drawing and allocation speak of.</summary>
    private string? Part => PartOf(Cam);

    /// <summary>The blanks that a price would stand on; null while a cam that needs one has none.</summary>
    private IReadOnlyDictionary<int, string>? Parts => _work!.Order!.Cams.Where(cam => cam.NeedsBlank).ToList() is var cams && cams.TrueForAll(cam => PartOf(cam) is not null)
        ? cams.ToDictionary(cam => cam.Ordinal, cam => PartOf(cam)!)
        : null;

    /// <summary>The blank chosen here, the quoted one, or the best.</summary>
    private string? PartOf(OrderCam cam)
    {
        var chosen = _parts.GetValueOrDefault(cam.Ordinal) ?? cam.QuotedPartNumber;
        return cam.Answer?.Blanks.Any(fit => fit.PartNumber == chosen) == true ? chosen : cam.Answer?.Best?.PartNumber;
    }

    protected override async Task OnParametersSetAsync()
    {
        if (_work is not null && _work.Number != Wanted)
            await ReadAsync();
    }

    protected override async Task ReadAsync()
    {
        if (_work?.Number != Wanted)
            await OpenAsync();
        _content = await Catalog.ContentAsync();
        await _work!.HearAsync();
        _free = await FreeAsync();
        _jobs = await JobFloor.JobsOfAsync(Wanted);
        _mails = await Outbox.OfOrderAsync(Wanted);
        _people = await Care.PeopleAsync();
        _cameIn = await Tray.OfOrderAsync(Wanted);
        _callers = _work.Order is { } order ? [.. (await Callers.FindAsync(order.Contact)).Where(caller => caller.Sure)] : [];
        _toTell = _work.Order is { } told ? await Mail.ToTellAsync(told) : null;
        _unfinished = await UnfinishedAsync();
        await CompleteAsync();
        _read = _work.Number;
    }

    private async Task OpenAsync()
    {
        (_work, _ordinal, _by) = (new OrderWork(OrderDesk, Wanted), 1, await SignsAsAsync());
        _parts.Clear();
    }

    private async Task<Dictionary<int, IReadOnlyList<FieldProblem>>> UnfinishedAsync()
    {
        var unfinished = new Dictionary<int, IReadOnlyList<FieldProblem>>();
        foreach (var cam in _work!.Order is { } order && order.State.IsBeforeAcceptance() ? order.Cams : [])
            if (await OrderDesk.UnfinishedAsync(cam) is { Count: > 0 } problems)
                unfinished[cam.Ordinal] = problems;
        return unfinished;
    }

    private async Task CompleteAsync() => _completed = _work!.Order is null ? null : await Catalog.CompleteAsync(Cam.Spec);

    /// <summary>After an act the focus goes to what became of it, which stands above the next act, unless the person types elsewhere already.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_acted)
            return;
        _acted = false;
        await Js.InvokeVoidAsync("shop.show", _notice);
    }

    private async Task ActedAsync()
    {
        await ReadAsync();
        _acted = true;
    }

    /// <summary>Blanks that each cam comes out of and that are not promised to a job, by the cam's place and part number.</summary>
    private async Task<Dictionary<int, IReadOnlyDictionary<string, int>>> FreeAsync()
    {
        var free = new Dictionary<int, IReadOnlyDictionary<string, int>>();
        foreach (var cam in _work!.Order?.Cams.Where(cam => cam.NeedsBlank) ?? [])
            if (cam.Answer is { Grind: var grind })
                free[cam.Ordinal] = (await Catalog.JudgeAsync(grind)).Blanks.ToDictionary(fit => fit.PartNumber, fit => fit.Available);
        return free;
    }

    private IReadOnlyDictionary<string, int> FreeFor(OrderCam cam) => _free.GetValueOrDefault(cam.Ordinal) ?? new Dictionary<string, int>();

    private int FreeOf(OrderCam cam) => PartOf(cam) is { } part ? FreeFor(cam).GetValueOrDefault(part) : 0;

    private Task GiveBackAsync(Job job, string why, string key) =>
        _work!.ActAsync(_ => BlankReturn.GiveBackAsync(job.Code, why, _by, key), $"{job.Code} has ended; its blank is back in lot {job.BlankLot!.LotNumber}, at {job.BlankLot.Location}. The cam waits for a blank again.");

    private void Choose(string part) => _parts[Cam.Ordinal] = part;

    private async Task ShowAsync(int ordinal)
    {
        _ordinal = ordinal;
        await CompleteAsync();
    }

    private async Task WorkedAsync(int ordinal)
    {
        _ordinal = ordinal;
        await ActedAsync();
    }

    private void Correct() => _work!.IsTyping = true;

    private void Leave() => _work!.StopTyping();
}
