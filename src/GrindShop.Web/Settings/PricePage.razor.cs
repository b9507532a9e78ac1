using System.Globalization;
using GrindShop.Shop;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Settings;

/// <summary>One figure of the price list: its change and its history. What was typed outlives a change by somebody else.</summary>
public sealed partial class PricePage : LivePage
{
    private PriceEntry? _now, _seen;
    private IReadOnlyList<RuleChange> _history = [];
    private string _amount = "", _name = "", _why = "";
    private AdderMeasure _measure;
    private bool _looked, _typed, _busy;
    private Refusal? _refusal;
    private string? _said;

    [Parameter]
    public string Key { get; set; } = "";

    [Inject]
    private PriceBook Book { get; set; } = default!;

    private string Title => _now is PriceAdder { Version: 0, Code: var code } ? $"Another option, {code}" : _now?.Subject ?? "Price";

    private bool IsPercent => _now is PriceAdder ? _measure == AdderMeasure.Percent : _now?.IsPercent == true;

    protected override async Task ReadAsync()
    {
        var found = await Book.FindAsync(Key);
        (_now, _history, _looked) = (found?.Entry, found?.History ?? [], true);
        if (!_typed)
            Show();
    }

    private void Show()
    {
        _seen = _now;
        _amount = _now is { Version: > 0 } ? _now.Amount.ToString("0.##", CultureInfo.InvariantCulture) : "";
        if (_now is PriceAdder adder)
            (_name, _measure) = (adder.Name, adder.Measure);
    }

    private void TypeAmount(string? text) => (_typed, _amount) = (true, text ?? "");

    private void TypeName(string? text) => (_typed, _name) = (true, text ?? "");

    private void Measure(AdderMeasure measure) => (_typed, _measure) = (true, measure);

    private Task SaveAsync()
    {
        if (decimal.TryParse(_amount.Trim().TrimStart('$').TrimEnd('%', ' '), NumberStyles.Number, CultureInfo.InvariantCulture, out var amount))
            return ActAsync(amount, "Saved. It counts for the next price.");
        (_refusal, _said) = (new Refusal("badAmount", $"\"{_amount.Trim()}\" is not a figure; write it like 145 or 145.50."), null);
        return Task.CompletedTask;
    }

    private Task RemoveAsync() => ActAsync(null, "It is off the price list.");

    private async Task ActAsync(decimal? amount, string done)
    {
        if (_busy || _seen is null)
            return;
        _busy = true;
        var outcome = await Book.ChangeAsync(new PriceEdit(Key, _seen.Version, amount, _why) { Name = _name, Measure = _measure }, await SignsAsAsync());
        (_refusal, _said) = (outcome.Refusal, outcome.Succeeded ? done : null);
        if (outcome.Succeeded)
            (_typed, _why) = (false, "");
        await ReadAsync();
        if (outcome.Succeeded || outcome.Refusal.IsStale)
            _seen = _now; // a change by somebody else has been told now; saving again is knowing it
        _busy = false;
    }
}
