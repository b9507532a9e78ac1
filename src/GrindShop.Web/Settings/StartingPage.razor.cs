using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using GrindShop.Web.Public;
using GrindShop.Web.Security;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;

namespace GrindShop.Web.Settings;

/// <summary>The owner's editor of the starting rules. A refused saving keeps what was typed.</summary>
public sealed partial class StartingPage
{
    private const string Why = "why";

    private readonly SpecDraft _draft = new();
    private FieldSource? _source;
    private StartRules _rules = StartRules.Plain;
    private IReadOnlyList<StartRuleSet> _history = [];
    private ShopSettings _shop = default!;
    private int _number;
    private bool _busy;
    private string? _trouble, _saved;

    [Inject]
    private StartRuleBook Book { get; set; } = default!;

    [Inject]
    private Catalog Catalog { get; set; } = default!;

    [CascadingParameter]
    private Task<AuthenticationState> Authentication { get; set; } = default!;

    private IEnumerable<(string Title, string Note, IEnumerable<RuleCell> Cells)> Groups =>
    [
        ("By the highest speed", "Intake duration at .050 for an engine that pulls up to this speed. Between two rows it runs straight, beyond the last it stays.", Cells("top.")),
        ("By the lowest speed", "The longest intake duration with which it still pulls from this speed.", Cells("low.")),
        ("By the cylinder", "The speed table is written for a usual cylinder; a larger one takes a longer cam.", Cells("cylinder.")),
        ("By use", "Added to duration, lobe separation and advance; and how much longer the exhaust lobe is.", Cells("uses.")),
        ("By idle", "Added to duration and lobe separation.", Cells("idles.")),
        ("By lifter", "Added to duration; and the lobe lift that goes with a duration.", Cells("lifters.")),
        ("By engine family", "Share of the usual lobe lift that is ground for it.", Cells("families.")),
    ];

    private IEnumerable<(string Path, string Label)> Reasons =>
    [
        .. _rules.Uses.Select(row => ($"reason.{row.Use}", Say.Capital(row.Use.Words()))),
        .. _rules.Idles.Select(row => ($"reason.{row.Idle}", $"{Say.Capital(row.Idle.Words())} idle")),
        .. _rules.Lifters.Select(row => ($"reason.{row.Lifter}", Say.Capital(row.Lifter.Words()))),
    ];

    protected override async Task OnInitializedAsync()
    {
        var content = await Catalog.ContentAsync();
        (_shop, _history) = (content.Rules.Settings, await Book.HistoryAsync());
        var current = _history.FirstOrDefault();
        (_number, _rules) = (current?.Number ?? 0, (current?.Rules ?? StartRules.Plain).ForFamilies(content.Families.Select(family => family.Code)));
        foreach (var cell in RuleCell.Of(_rules))
            _draft[cell.Path] = NumberText.Write(cell.Get(_rules));
        foreach (var (path, why) in _rules.Uses.Select(row => ($"{row.Use}", row.Why)).Concat(_rules.Idles.Select(row => ($"{row.Idle}", row.Why))).Concat(_rules.Lifters.Select(row => ($"{row.Lifter}", row.Why))))
            _draft[$"reason.{path}"] = why;
        Check();
    }

    private IEnumerable<RuleCell> Cells(string start) => RuleCell.Of(_rules).Where(cell => cell.Path.StartsWith(start, StringComparison.Ordinal));

    private void Check() => _source = new FieldSource(_draft, Problems(), [], EventCallback.Factory.Create(this, Check));

    private List<FieldProblem> Problems()
    {
        var unreadable = RuleCell.Of(_rules).Where(cell => !NumberText.TryRead(_draft[cell.Path], out var value) || value is null)
            .Select(cell => new FieldProblem(cell.Path, $"A number is needed. {cell.Range.Sentence}")).ToList();
        return unreadable.Count > 0 ? unreadable : [.. StartRuleCheck.Problems(Typed())];
    }

    /// <summary>The rules as they stand in the fields; a field that cannot be read stays as it was.</summary>
    private StartRules Typed()
    {
        var rules = RuleCell.Of(_rules).Aggregate(_rules, (all, cell) => NumberText.TryRead(_draft[cell.Path], out var value) && value is { } number ? cell.Set(all, number) : all);
        return rules with
        {
            Uses = [.. rules.Uses.Select(row => row with { Why = Reason($"{row.Use}") })],
            Idles = [.. rules.Idles.Select(row => row with { Why = Reason($"{row.Idle}") })],
            Lifters = [.. rules.Lifters.Select(row => row with { Why = Reason($"{row.Lifter}") })],
        };
    }

    private string Reason(string of) => _draft.Text($"reason.{of}") ?? "";

    private async Task SaveAsync()
    {
        (_saved, _trouble) = (null, Problems() is [var problem, ..] ? problem.Message : null);
        if (_trouble is not null || _busy)
            return;
        _busy = true;
        var outcome = await Book.SaveAsync(_number, Typed(), _draft[Why], (await Authentication).User.SignsAs());
        _busy = false;
        _trouble = outcome.Refusal?.Reason;
        _history = await Book.HistoryAsync();
        if (outcome.Refusal?.IsStale == true)
            _number = _history[0].Number;
        if (outcome.Value is { } set)
            (_number, _rules, _saved, _draft[Why]) = (set.Number, set.Rules, "Saved: the form works by these rules from now on.", "");
    }
}
