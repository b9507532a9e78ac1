using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;

namespace GrindShop.Web.Desk;

/// <summary>A price in the making on one person's screen. It outlives whatever happens to the order meanwhile.</summary>
public sealed class PriceDraft
{
    private readonly HashSet<(int Cam, string Code)> _chosen = [];
    private int _own;
    private DateOnly? _suggested;
    private IReadOnlyDictionary<int, BlankFit> _fits = new Dictionary<int, BlankFit>();

    public List<LineEdit> Lines { get; private set; } = [];

    public DateOnly ValidUntil { get; set; }

    public DateOnly? ShipOn { get; set; }

    public bool IsBegun { get; private set; }

    /// <summary>What was decided for the last quote stands ready again: its adders, its changed lines, its own lines.</summary>
    public void Begin(Order order, IEnumerable<PriceAdder> manual, DateOnly today)
    {
        var codes = manual.Select(adder => adder.Code).ToHashSet();
        var earlier = order.Quotes.LastOrDefault()?.Lines ?? [];
        _chosen.UnionWith(earlier.Where(line => line.Cam is not null && codes.Contains(line.Code)).Select(line => (line.Cam!.Value, line.Code)));
        Lines = [.. earlier.Where(line => line.NeedsReason).Select(line => new LineEdit(line))];
        _own = Lines.Count(line => line.IsOwn);
        (ValidUntil, IsBegun) = (today.AddDays(QuoteOffer.UsualDays), true);
    }

    public bool IsChosen(int cam, string code) => _chosen.Contains((cam, code));

    public void Choose(int cam, string code, bool chosen) => _ = chosen ? _chosen.Add((cam, code)) : _chosen.Remove((cam, code));

    public CamChoice Choice(OrderCam cam, string? partNumber) => new(partNumber, [.. _chosen.Where(one => one.Cam == cam.Ordinal).Select(one => one.Code)]);

    /// <summary>The rules' lines with what the desk made of them, then the desk's own. A day that the desk typed stays; one that it left alone follows.</summary>
    public void Follow(PriceByRules rules)
    {
        if (ShipOn == _suggested)
            ShipOn = rules.ShipOn;
        (_suggested, _fits) = (rules.ShipOn, rules.Fits);
        var known = Lines.Where(line => !line.IsOwn).ToDictionary(line => line.Key);
        Lines = [.. rules.Lines.Select(rule => known.TryGetValue((rule.Cam, rule.Code), out var edit) ? edit.Follow(rule) : new LineEdit(rule)), .. Lines.Where(line => line.IsOwn)];
    }

    public void AddLine() => Lines.Add(LineEdit.Own(++_own));

    public QuoteOffer Offer(IReadOnlyDictionary<int, string> parts) => new()
    {
        Parts = parts,
        Fits = _fits,
        Lines = [.. Lines.Select(line => line.Line)],
        ValidUntil = ValidUntil,
        ShipOn = ShipOn,
    };
}
