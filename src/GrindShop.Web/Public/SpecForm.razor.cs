using GrindShop.Shop;
using GrindShop.Shop.Drafts;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using Microsoft.JSInterop;

namespace GrindShop.Web.Public;

/// <summary>The customer's form, by either way in. This part: what it shows, and the answer while somebody types.</summary>
public sealed partial class SpecForm
{
    /// <summary>Path of the choice to have every field explained.</summary>
    public const string Explained = "form.explained";

    /// <summary>A pause in typing after which the shop answers.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private readonly LatestOnly _typing = new();
    private SpecDraft _draft = new();
    private SpecReading _reading = SpecReading.Nothing;
    private StartReading _start = StartReading.Nothing;
    private StartRules? _rules;
    private PriceRules? _prices;
    private IReadOnlyList<EngineFamily> _families = [];
    private IReadOnlyList<FieldProblem> _ignored = [];
    private JudgedSpec? _judged;
    private Task _begun = Task.CompletedTask;
    private bool _guided, _renewing;
    private int _changes, _answered;

    /// <summary>Survives the step from the first static picture to the live page, and a lost connection.</summary>
    [PersistentState]
    public SpecFormState? Kept { get; set; }

    /// <summary>Of a draft to go on with.</summary>
    [Parameter]
    public string? Code { get; set; }

    [Inject]
    private Catalog Catalog { get; set; } = default!;

    [Inject]
    private OrderDesk Prices { get; set; } = default!;

    [Inject]
    private StartRuleBook Rules { get; set; } = default!;

    [Inject]
    private GrindBook Grinds { get; set; } = default!;

    [Inject]
    private SpecIntake Intake { get; set; } = default!;

    [Inject]
    private DraftBook Drafts { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [Inject]
    private IJSRuntime Js { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private bool Explains => _draft[Explained] switch { "" => _guided || _draft[StartReading.Taken] != "", var said => said == "yes" };

    private IReadOnlyList<StartFigure> Started => _draft[StartReading.Taken] == "" ? [] : _start.Start?.Figures ?? [];

    private string Here => _guided ? "spec/guided" : "spec";

    private string Lead => _guided
        ? "Tell the shop what the engine is and what it is to do. The shop's rules of thumb turn that into figures to start from, and the metal of its blanks says at once whether they can be ground."
        : "Engine, lifter, intake lift and duration are enough to begin with; what you leave empty the shop fills with the usual value and says so. The answer beside it comes from the geometry of every blank in the catalog.";

    private string Title => _judged is { } judged
        ? FormattableString.Invariant($"{judged.Cam.Family.Name}, {judged.Answer.Grind.Intake.DurationAt050CrankDeg:0.#}/{judged.Answer.Grind.Exhaust.DurationAt050CrankDeg:0.#} at .050: {judged.Answer.Verdict.Words()}")
        : _guided ? "A cam for your engine" : "Describe your cam";

    private string Summary => _judged is not null ? _judged.Answer.Verdict.Words()
        : _reading.Completed.Problems.Count > 0 ? "Something in the specification does not go together yet"
        : _guided ? "The answer comes when the questions are answered"
        : "The answer comes when engine, lifter, intake lift and duration are given";

    /// <summary>The guided answers as the panel of what is still needed reads them.</summary>
    private SpecReading Guided => SpecReading.Nothing with { Completed = new CompletedSpec(null, [], _start.Problems, _start.Needed) };

    protected override Task OnInitializedAsync()
    {
        _keeper = new DraftKeeper(Drafts, Clock);
        Use(_draft);
        Navigation.LocationChanged += Turn;
        return _begun = BeginAsync();
    }

    private async Task BeginAsync()
    {
        var content = await Catalog.ContentAsync();
        (_families, _settings, _ignored) = (content.Families, content.Rules.Settings, SpecQuery.Read(new Uri(Navigation.Uri).Query, content).Ignored);
        (_rules, _prices) = ((await Rules.CurrentAsync())?.Rules, await Prices.PriceRulesAsync());
        Kept ??= await FirstAsync(content);
        Use(new SpecDraft(Kept.Texts));
    }

    private void Use(SpecDraft draft)
    {
        _draft = draft;
        _contactSource = new FieldSource(draft, [], [], EventCallback.Factory.Create(this, TypedAsync));
    }

    protected override Task OnParametersSetAsync() => AgainAsync();

    /// <summary>From one way in to the other it is the same form, and the draft stays.</summary>
    private void Turn(object? sender, LocationChangedEventArgs location)
    {
        if (new Uri(location.Location).AbsolutePath is "/spec" or "/spec/guided")
            Do(AgainAsync);
    }

    /// <summary>Reads and judges anew what stands there, by the way in of the moment.</summary>
    private async Task AgainAsync()
    {
        await ReadAsync();
        StateHasChanged();
        await JudgeAsync(_typing.Next());
        StateHasChanged();
    }

    private async Task TypedAsync()
    {
        MakeOwn();
        var cancel = _typing.Next();
        await Task.WhenAll(AnswerSoonAsync(cancel), KeepSoonAsync(_keeping.Next()));
    }

    private async Task AnswerSoonAsync(CancellationToken cancel)
    {
        await Task.Delay(Pause, Clock, cancel);
        await ReadAsync();
        StateHasChanged();
        await JudgeAsync(cancel);
        StateHasChanged();
    }

    /// <summary>
    /// Engines, blanks or rules have changed: the same question has a new answer, and what was typed stays. One change after another is answered one at a
    /// time, so that even while they keep coming an answer is given.
    /// </summary>
    private async Task JudgeAnewAsync()
    {
        _changes++;
        if (_renewing)
            return;
        _renewing = true;
        try
        {
            while (_answered != _changes && !HasLeft)
            {
                await RenewAsync(_typing.Next());
                StateHasChanged();
            }
        }
        finally
        {
            _renewing = false;
        }
    }

    private async Task RenewAsync(CancellationToken cancel)
    {
        var changes = _changes;
        try
        {
            (_families, _prices) = ((await Catalog.ContentAsync(cancel)).Families, await Prices.PriceRulesAsync(cancel));
            await ReadAsync();
            await JudgeAsync(cancel);
            _answered = Math.Max(_answered, changes);
        }
        catch (OperationCanceledException)
        {
            // Something newer was asked; unless that was answered by the newest state, this is done again.
        }
    }

    private async Task ReadAsync()
    {
        var content = await Catalog.ContentAsync();
        _guided = new Uri(Navigation.Uri).AbsolutePath.EndsWith("/guided", StringComparison.OrdinalIgnoreCase);
        _start = StartReading.Of(_draft, content, _rules);
        _reading = SpecReading.Of(!_guided ? _draft : _start.Start is { } start ? SpecDraft.Of(start.Spec) : new SpecDraft(), content);
        ShowProblems(_showProblems ? EnquiryCheck.Problems(Enquiry(), _reading.Completed) : []);
    }

    /// <summary>The answer to what stands there now; the old one stays in view until the new one is known.</summary>
    private async Task JudgeAsync(CancellationToken cancel)
    {
        if (_reading.Grind is not { } grind)
        {
            _judged = null;
            return;
        }
        var changes = _changes;
        if (_judged?.Answer.Grind != grind || _answered != changes)
        {
            var answer = await AnswerAsync(grind, cancel);
            cancel.ThrowIfCancellationRequested();
            (_judged, _answered) = (answer, changes);
            StateHasChanged();
        }
        if (_judged is { Nearest: null } judged)
        {
            var nearest = await judged.NearestAsync(Catalog, cancel);
            cancel.ThrowIfCancellationRequested();
            _judged = _judged with { Nearest = nearest };
        }
    }

    private async Task<JudgedSpec> AnswerAsync(GrindSpec grind, CancellationToken cancel)
    {
        var judged = await JudgedSpec.OfAsync(Catalog, grind, cancel);
        return judged with { Outlook = Outlook.Of(judged.Answer, judged.Content, _prices!, judged.Content.Rules.Settings.Today(Clock.GetUtcNow())) };
    }

    private async Task ShowAsync(BlankFit fit)
    {
        if (_judged is not { } judged)
            return;
        var shown = await Task.Run(() => judged.Showing(fit));
        if (_judged.Answer == judged.Answer)
            _judged = shown with { Nearest = _judged.Nearest };
    }

    /// <summary>The starting figures are put into the form, where they may be changed.</summary>
    private Task TakeStartAsync() => _start.Start is { } start ? FillAsync(start.Spec) : Task.CompletedTask;

    /// <summary>One of the offers is put into the form; everything else that was typed stays.</summary>
    private Task TakeOfferAsync(CamSpec spec) => FillAsync(spec);

    private async Task FillAsync(CamSpec spec)
    {
        foreach (var (path, text) in SpecDraft.Of(spec).Texts)
            if (text.Length > 0 || !_guided || path is not ("notes" or "side" or "distributorGear" or "firingOrder"))
                _draft[path] = text;
        MakeOwn();
        if (_device is not null)
            await _device.OverruleAsync();
        if (_guided)
        {
            _draft[StartReading.Taken] = "yes";
            Navigation.NavigateTo("/spec");
        }
        var cancel = _typing.Next();
        await ReadAsync();
        await Task.WhenAll(JudgeAsync(cancel), KeepAsync());
    }

    private async Task ExplainAsync(ChangeEventArgs change)
    {
        _draft[Explained] = change.Value is true ? "yes" : "no";
        await KeepAsync();
    }
}
