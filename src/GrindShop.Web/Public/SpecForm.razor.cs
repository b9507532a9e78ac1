using GrindShop.Shop;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Public;

public sealed partial class SpecForm
{
    /// <summary>A pause in typing after which the shop answers.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private readonly LatestOnly _typing = new();
    private SpecDraft _draft = new();
    private SpecReading _reading = SpecReading.Nothing;
    private IReadOnlyList<EngineFamily> _families = [];
    private IReadOnlyList<FieldProblem> _problemsToFix = [];
    private FieldSource _contactSource = default!;
    private JudgedSpec? _judged;
    private ProblemSummary? _summary;
    private Refusal? _refusal;
    private bool _sending, _showProblems;

    /// <summary>Survives the step from the first static picture to the live page, and a lost connection.</summary>
    [PersistentState]
    public SpecFormState? Kept { get; set; }

    [Inject]
    private Catalog Catalog { get; set; } = default!;

    [Inject]
    private SpecIntake Intake { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private string Summary => _judged is not null ? _judged.Answer.Verdict.Words()
        : _reading.Completed.Problems.Count > 0 ? "Something in the specification does not go together yet"
        : "The answer comes when engine, lifter, intake lift and duration are given";

    public void Dispose() => _typing.Dispose();

    protected override async Task OnInitializedAsync()
    {
        Kept ??= new SpecFormState();
        _draft = new SpecDraft(Kept.Texts);
        _contactSource = new FieldSource(_draft, [], [], EventCallback.Factory.Create(this, TypedAsync));
        _families = (await Catalog.ContentAsync()).Families;
        await ReadAsync();
        await JudgeAsync(_typing.Current);
    }

    private async Task TypedAsync()
    {
        var cancel = _typing.Next();
        await Task.Delay(Pause, Clock, cancel);
        await ReadAsync();
        StateHasChanged();
        await JudgeAsync(cancel);
    }

    /// <summary>Engines, blanks or rules have changed: the same question has a new answer, and what was typed stays.</summary>
    private async Task JudgeAnewAsync()
    {
        var cancel = _typing.Next();
        _families = (await Catalog.ContentAsync(cancel)).Families;
        await ReadAsync();
        await JudgeAsync(cancel, anew: true);
    }

    private async Task ReadAsync()
    {
        _reading = SpecReading.Of(_draft, await Catalog.ContentAsync());
        ShowProblems(_showProblems ? EnquiryCheck.Problems(Enquiry(), _reading.Completed) : []);
    }

    /// <summary>The answer to what stands there now; the old one stays in view until the new one is known.</summary>
    private async Task JudgeAsync(CancellationToken cancel, bool anew = false)
    {
        if (_reading.Grind is not { } grind)
            _judged = null;
        else if (anew || _judged?.Answer.Grind != grind)
        {
            await TakeAsync(JudgedSpec.OfAsync(Catalog, grind, cancel), cancel);
            StateHasChanged();
            var nearest = await _judged!.NearestAsync(Catalog, cancel);
            cancel.ThrowIfCancellationRequested();
            _judged = _judged with { Nearest = nearest };
        }
    }

    /// <summary>One of the offers is put into the form; everything else that was typed stays.</summary>
    private async Task TakeOfferAsync(CamSpec spec)
    {
        foreach (var (path, text) in SpecDraft.Of(spec).Texts)
            _draft[path] = text;
        var cancel = _typing.Next();
        await ReadAsync();
        await JudgeAsync(cancel);
    }

    private async Task ShowAsync(BlankFit fit)
    {
        if (_judged is { } judged)
            await TakeAsync(Task.Run(() => judged.Showing(fit)), _typing.Current);
    }

    private async Task TakeAsync(Task<JudgedSpec> answer, CancellationToken cancel)
    {
        var judged = await answer;
        cancel.ThrowIfCancellationRequested();
        _judged = judged;
    }

    private async Task SendAsync()
    {
        if (_sending)
            return;
        (_sending, _showProblems, _refusal) = (true, true, null);
        _typing.Next();
        await ReadAsync();
        if (_problemsToFix.Count == 0)
            Take(await Intake.SubmitAsync(Enquiry(), "customer"));
        _sending = false;
        await PointToProblemsAsync();
    }

    private void Take(SubmitResult result)
    {
        ShowProblems(result.Problems);
        _refusal = result.Refusal;
        if (result.Order is { } order)
            Navigation.NavigateTo($"/track/{order.TrackingCode}?new=1");
    }

    private async Task PointToProblemsAsync()
    {
        StateHasChanged();
        // The summary is there only once this event's own rendering is over.
        await Task.Yield();
        if (_problemsToFix.Count > 0 && _summary is not null)
            await _summary.FocusAsync();
    }

    private Task SendAsNewAsync()
    {
        Kept!.SubmitKey = new SpecFormState().SubmitKey;
        return SendAsync();
    }

    private void ShowProblems(IReadOnlyList<FieldProblem> problems)
    {
        _problemsToFix = problems;
        _contactSource = _contactSource with { Problems = problems };
    }

    private Enquiry Enquiry() => new()
    {
        SubmitKey = Kept!.SubmitKey,
        Channel = OrderChannel.Web,
        Spec = _reading.Spec,
        Contact = new Contact { Name = _draft.Text("contact.name"), Email = _draft.Text("contact.email"), Phone = _draft.Text("contact.phone") },
        CustomerReference = _draft.Text("customerReference"),
    };
}
