using GrindShop.Shop;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Grinds;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Settings;

/// <summary>One grind of the shop's list: its figures, whether a blank serves it, its history. What was typed outlives a change by somebody else.</summary>
public sealed partial class GrindPage : LivePage
{
    /// <summary>Stands in the address in place of a code.</summary>
    public const string New = "new";

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly LatestOnly _judging = new();
    private CatalogGrind? _now, _seen;
    private CatalogContent? _content;
    private FeasibilityAnswer? _answer;
    private GrindTyping _typing = new(null);
    private string? _read;
    private string _why = "";
    private bool _looked, _typed, _busy;
    private Refusal? _refusal;
    private string? _said;

    [Parameter]
    public string Code { get; set; } = "";

    [Inject]
    private GrindBook Book { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private bool IsNew => Code == New;

    private string Title => IsNew ? "A new grind" : _now is { } grind ? $"{grind.Code} {grind.Entry.Name}" : "Grind";

    /// <summary>A grind that was just added shows under its own address.</summary>
    protected override async Task OnParametersSetAsync()
    {
        if (_looked && _read != Code)
        {
            _typed = false;
            await ReadAsync();
        }
    }

    protected override async Task ReadAsync()
    {
        (_content, _now) = (await Catalog.ContentAsync(), IsNew ? null : await Book.FindAsync(Code));
        if (!_typed)
            (_seen, _typing) = (_now, new GrindTyping(_now?.Entry));
        _typing.Read(_content);
        (_looked, _read) = (true, Code);
        _answer = _typing.Reading.Grind is { } grind ? await Catalog.JudgeAsync(grind) : null;
    }

    private void Type(Action type)
    {
        _typed = true;
        type();
    }

    private async Task TypedAsync()
    {
        _typed = true;
        _typing.Read(_content!);
        var cancel = _judging.Next();
        if (_typing.Reading.Grind is not { } grind)
        {
            _answer = null;
            return;
        }
        if (grind == _answer?.Grind)
            return;
        await Task.Delay(Pause, Clock, cancel);
        var answer = await Task.Run(() => Catalog.JudgeAsync(grind, cancel), cancel);
        cancel.ThrowIfCancellationRequested();
        _answer = answer;
    }

    private Task SaveAsync()
    {
        if (_typing.Unreadable is { } unreadable)
        {
            (_refusal, _said) = (new Refusal("badText", unreadable.Message), null);
            return Task.CompletedTask;
        }
        return IsNew
            ? ActAsync(by => Book.AddAsync(_typing.Entry, _why, by), "Added: customers can start from it.")
            : ActAsync(by => Book.ChangeAsync(Code, _seen!.Version, _typing.Entry, _why, by), "Saved. It counts from now on.");
    }

    /// <summary>Only what stands saved is retired or offered again; what was typed beside it stays typed.</summary>
    private Task RetireAsync() => _now!.Retired
        ? ActAsync(by => Book.BringBackAsync(Code, _seen!.Version, _why, by), "It is offered again.", keepsTyped: true)
        : ActAsync(by => Book.RetireAsync(Code, _seen!.Version, _why, by), "It is not offered any more; what was ordered by it stays.", keepsTyped: true);

    private async Task ActAsync(Func<string, Task<Outcome<CatalogGrind>>> act, string done, bool keepsTyped = false)
    {
        if (_busy || (_seen is null && !IsNew))
            return;
        _busy = true;
        var outcome = await act(await SignsAsAsync());
        (_refusal, _said) = (outcome.Refusal, outcome.Succeeded ? done : null);
        if (outcome.Value is { } written)
        {
            (_typed, _why) = (_typed && keepsTyped, "");
            if (IsNew)
                Navigation.NavigateTo($"/settings/grinds/{written.Code}");
        }
        if (!IsNew)
            await ReadAsync();
        if (outcome.Succeeded || outcome.Refusal.IsStale)
            _seen = _now; // a change by somebody else has been told now; saving again is knowing it
        _busy = false;
    }
}
