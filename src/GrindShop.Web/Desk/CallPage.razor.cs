using GrindShop.Shop;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Web.Public;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace GrindShop.Web.Desk;

/// <summary>A form for typing while listening: one line for the cam, read as it is typed, and who calls.</summary>
public sealed partial class CallPage : LivePage, IAsyncDisposable
{
    /// <summary>A pause in typing after which the shop answers and looks who calls.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private const string Example = "230/236 @.050 .355 112+4 hyd roller";

    private static readonly (WorkKind, string)[] Kinds =
        [(WorkKind.NewGrind, "New cam"), (WorkKind.Regrind, "Regrind of their cam"), (WorkKind.GearReplacement, "New gear on their three-piece cam")];

    private readonly LatestOnly _judging = new(), _looking = new();
    private IReadOnlyList<EngineFamily> _families = [];
    private IReadOnlyList<KnownCaller> _callers = [];
    private IReadOnlyList<string> _problems = [];
    private CallHeard _heard = CallHeard.Of(new CallDraft(), []);
    private ShopRules? _rules;
    private TabKeeper<CallDraft>? _keeper;
    private ElementReference _line;
    private Refusal? _refusal;
    private bool _taking;

    private CallDraft Draft { get; set; } = new();

    [Inject]
    private SpecIntake Intake { get; set; } = default!;

    [Inject]
    private CallerBook Callers { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    private string Verdict => _heard.Answer is not { } answer ? NoVerdict
        : _heard.Cam.Kind == WorkKind.Regrind ? string.Join(' ', answer.Reasons.Take(2))
        : answer.Best is { } best ? $"{answer.Verdict.Words()}: {best.PartNumber}{(best.InStock ? "" : $", about {best.LeadTimeDays} days")}"
        : $"{answer.Verdict.Words()}. {answer.Reasons.FirstOrDefault()}";

    private string NoVerdict => _heard.Cam.Kind switch
    {
        WorkKind.NewGrind => "No answer yet: engine, lifter, intake lift and duration make one",
        WorkKind.Regrind => "No answer yet: the cam to grind to makes one, with what was measured on the used cam. Unmeasured, it is judged at receipt",
        _ => "A new gear needs no lobes: engine, marks, gears and condition are enough",
    };

    public async ValueTask DisposeAsync()
    {
        _judging.Dispose();
        _looking.Dispose();
        Dispose();
        if (_keeper is not null)
            await _keeper.DisposeAsync();
    }

    protected override async Task ReadAsync()
    {
        var content = await Catalog.ContentAsync();
        (_families, _rules) = (content.Families, content.Rules);
        Hear();
    }

    /// <summary>What was typed before a reload comes back.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        (_keeper, var kept) = await TabKeeper<CallDraft>.StartAsync(Js, "call-draft");
        if (kept is not null)
        {
            Draft = kept;
            Hear();
            StateHasChanged();
            await Task.WhenAll(JudgeAsync(), LookAsync());
        }
        await _line.FocusAsync();
    }

    private Task LineAsync(string text)
    {
        Draft.Line = text;
        return HearAsync();
    }

    private Task KindAsync(WorkKind kind)
    {
        Draft.Kind = kind;
        return HearAsync();
    }

    private Task HereAsync(ChangeEventArgs change)
    {
        Draft.IsExpected = change.Value is not true;
        return HearAsync();
    }

    private async Task HearAsync()
    {
        Hear();
        await KeepAsync();
        await JudgeAsync();
    }

    private void Hear() => _heard = CallHeard.Of(Draft, _families) is var heard && heard.AsksLike(_heard) ? heard with { Answer = _heard.Answer } : heard;

    private async Task JudgeAsync()
    {
        var cancel = _judging.Next();
        if (!_heard.CanBeJudged || _heard.Answer is not null)
            return;
        await Task.Delay(Pause, Clock, cancel);
        var (grind, cam) = (_heard.Grind!, _heard.Cam);
        var answer = await Task.Run(async () => cam.Kind == WorkKind.NewGrind ? await Catalog.JudgeAsync(grind, cancel) : (await Catalog.LookAsync(cam, cancel)).Answer, cancel);
        cancel.ThrowIfCancellationRequested();
        _heard = _heard with { Answer = answer };
        StateHasChanged();
    }

    private async Task WhoAsync(Action type)
    {
        type();
        await KeepAsync();
        await LookAsync();
    }

    /// <summary>Another name is somebody else.</summary>
    private Task NameAsync(string name) => WhoAsync(() => (Draft.Name, Draft.Customer) = (name, null));

    /// <summary>The caller is a known customer: what is known of them is put into the form, and the order goes to them.</summary>
    private async Task ChooseAsync(Customer customer)
    {
        (Draft.Name, Draft.Phone, Draft.Email) = (customer.Name, customer.Phone ?? Draft.Phone, customer.Email ?? Draft.Email);
        Draft.Customer = customer.Id;
        await KeepAsync();
        await LookAsync();
    }

    private async Task LookAsync()
    {
        var cancel = _looking.Next();
        await Task.Delay(Pause, Clock, cancel);
        var callers = await Callers.FindAsync(Draft.Contact, cancel);
        cancel.ThrowIfCancellationRequested();
        _callers = callers;
        StateHasChanged();
    }

    private async Task KeepAsync()
    {
        if (_keeper is not null)
            await _keeper.KeepAsync(Draft);
    }

    private async Task TakeAsync()
    {
        if (_taking)
            return;
        (_taking, _refusal) = (true, null);
        await KeepAsync();
        var result = await Intake.TakeAsync(Draft.Enquiry(_heard.Reading) with { AsSaid = string.IsNullOrWhiteSpace(_heard.Line) ? null : _heard.Line.Trim() }, await SignsAsAsync());
        (_problems, _refusal, _taking) = ([.. result.Problems.Select(problem => problem.Message)], result.Refusal, false);
        if (result.Order is not { } order)
            return;
        await _keeper!.DropAsync();
        Navigation.NavigateTo($"/desk/orders/{order.Number}");
    }

    private Task TakeAsNewAsync()
    {
        Draft.Key = new CallDraft().Key;
        return TakeAsync();
    }
}
