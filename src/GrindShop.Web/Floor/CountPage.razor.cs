using GrindShop.Shop;
using GrindShop.Shop.Blanks;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Floor;

/// <summary>A blind count of one lot: what the book says is shown after the figure has been given. A lot that moved in between is counted again.</summary>
public sealed partial class CountPage : LivePage
{
    private const char Zero = '0';
    private const int MostFigures = 5;

    private IReadOnlyList<LotToCount> _lots = [];
    private BlankLot? _lot;

    /// <summary>The last line of the lot's book when the count began; 0 while none has begun.</summary>
    private long _seen;

    private string? _read;
    private string _given = "", _typed = "", _why = "";
    private int? _compared;
    private Refusal? _refusal;
    private string? _done;
    private bool _busy;
    private string _key = NewKey();

    [SupplyParameterFromQuery]
    public string? Lot { get; set; }

    [Inject]
    private StockRoom StockRoom { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    /// <summary>A count begins when the lot is opened, and again with the first figure after one was written down.</summary>
    private bool IsCounting => _seen != 0 && !(_done is not null && _typed == "" && _compared is null);

    protected override bool Concerns(string notice) => _lot is null;

    protected override async Task OnParametersSetAsync()
    {
        if (Shop is null || _read == (Lot ?? ""))
            return;
        Again();
        (_seen, _done, _refusal) = (0, null, null);
        await ReadAsync();
    }

    protected override async Task ReadAsync()
    {
        var wanted = Lot;
        _read = wanted ?? "";
        var lot = wanted is null ? null : await StockRoom.FindAsync(ScannedCode.Read(wanted));
        if (wanted != Lot)
            return;
        _lot = lot;
        if (Lot is not null && _lot is null)
            _refusal = new Refusal("unknown", $"There is no lot {ScannedCode.Read(Lot)}. Look at the label and try again.");
        SeeBook();
        _lots = _lot is null ? await StockRoom.ToCountAsync() : [];
    }

    /// <summary>The book may have moved while the blanks were counted: then the count means nothing, and another begins.</summary>
    private void SeeBook()
    {
        if (_busy)
            return;
        var last = _lot?.Movements[^1];
        if (IsCounting && last is not null && last.Id != _seen)
        {
            _refusal = new Refusal("stale", $"{last.By} wrote in the book while you counted ({last.Kind.Words()}, {last.Reason}). Count the lot again.");
            Again();
        }
        _seen = last?.Id ?? 0;
    }

    private void OpenAsync()
    {
        if (ScannedCode.Read(_given) is { Length: > 0 } lot)
            Navigation.NavigateTo($"/floor/count?lot={Uri.EscapeDataString(lot)}");
        _given = "";
    }

    private void Press(char key) => _typed = _typed.Length < MostFigures ? (_typed + key).TrimStart('0') is { Length: > 0 } some ? some : "0" : _typed;

    private void Rub() => _typed = _typed.Length > 0 ? _typed[..^1] : "";

    private async Task CompareAsync()
    {
        var (counted, seen) = (int.Parse(_typed, System.Globalization.CultureInfo.InvariantCulture), _seen);
        await ReadAsync();
        if (_seen == seen)
            (_compared, _refusal, _done) = (counted, null, null);
    }

    private async Task PostAsync()
    {
        _busy = true;
        var counted = _compared!.Value;
        var outcome = await StockRoom.CountAsync(new LotCommand(_lot!.LotNumber, _seen, await SignsAsAsync(), _key), counted, _why);
        (_busy, _seen, _refusal) = (false, 0, outcome.Refusal);
        _done = outcome.Succeeded ? $"Lot {_lot.LotNumber}: {counted} written down." : null;
        Again();
        await ReadAsync();
    }

    private void Again() => (_typed, _why, _compared, _key) = ("", "", null, NewKey());

    private static string NewKey() => Guid.NewGuid().ToString("N");
}
