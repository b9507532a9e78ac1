using GrindShop.Shop;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Settings;

/// <summary>One rule: what it says, its change and its history. What was typed outlives a change by somebody else.</summary>
public sealed partial class RulePage : LivePage
{
    private CompatibilityRule? _now, _seen;
    private IReadOnlyList<RuleChange> _history = [];
    private RuleVerdict _verdict;
    private string _reason = "", _why = "";
    private bool _looked, _typed, _busy;
    private Refusal? _refusal;
    private string? _said;

    [Parameter]
    public string Key { get; set; } = "";

    [Inject]
    private RuleBook Book { get; set; } = default!;

    protected override async Task ReadAsync()
    {
        var found = await Book.FindAsync(Key);
        (_now, _history, _looked) = (found?.Rule, found?.History ?? [], true);
        if (_now is not null && !_typed)
            (_seen, _verdict, _reason) = (_now, _now.Verdict, _now.Reason);
    }

    private void Choose(RuleVerdict verdict) => (_typed, _verdict) = (true, verdict);

    private void TypeReason(string? text) => (_typed, _reason) = (true, text ?? "");

    private async Task SaveAsync()
    {
        if (_busy || _seen is null)
            return;
        _busy = true;
        var outcome = await Book.ChangeAsync(new RuleEdit(Key, _seen.Version, _verdict, _reason, _why), await SignsAsAsync());
        (_refusal, _said) = (outcome.Refusal, outcome.Succeeded ? "Saved. It counts from now on." : null);
        if (outcome.Succeeded)
            (_typed, _why) = (false, "");
        await ReadAsync();
        if (outcome.Succeeded || outcome.Refusal.IsStale)
            _seen = _now; // a change by somebody else has been told now; saving again is knowing it
        _busy = false;
    }
}
