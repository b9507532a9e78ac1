using GrindShop.Shop;
using GrindShop.Shop.Records;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Settings;

/// <summary>The settings of the whole shop. A field that was typed in keeps its text when somebody else saves; the others follow.</summary>
public sealed partial class ShopPage : LivePage
{
    private readonly HashSet<string> _typed = [];
    private readonly Dictionary<string, string> _texts = [];
    private IReadOnlyDictionary<string, string> _wrong = new Dictionary<string, string>();
    private IReadOnlyList<RuleChange> _history = [];
    private ShopSettings? _now, _seen;
    private Refusal? _refusal;
    private string? _said;
    private string _why = "";
    private bool _busy;

    [Inject]
    private ShopSettingsBook Book { get; set; } = default!;

    protected override async Task ReadAsync()
    {
        (_now, _history) = await Book.ReadAsync();
        foreach (var field in ShopFields.All.Where(field => !_typed.Contains(field.Key)))
            _texts[field.Key] = field.Get(_now);
        if (_typed.Count == 0)
            _seen = _now;
    }

    private void Type(string key, string? text)
    {
        _typed.Add(key);
        _texts[key] = text ?? "";
    }

    private async Task SaveAsync()
    {
        if (_busy || _seen is null)
            return;
        _busy = true;
        var mine = _texts.Where(text => _typed.Contains(text.Key)).ToDictionary();
        var result = await Book.ChangeAsync(new ShopEdit(_seen.Version, mine, _why), await SignsAsAsync());
        _wrong = result.Wrong;
        _refusal = result.Refusal ?? (result.Succeeded ? null : new Refusal("wrong", "Look at the fields marked with ✕."));
        _said = result.Succeeded ? "Saved. It counts from now on." : null;
        if (result.Succeeded)
            (_why, _) = ("", _typed.RemoveWhere(_ => true));
        await ReadAsync();
        if (result.Succeeded || result.Refusal?.IsStale == true)
            _seen = _now; // a change by somebody else has been told now; saving again is knowing it
        _busy = false;
    }
}
