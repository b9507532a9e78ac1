using GrindShop.Shop.Orders;

namespace GrindShop.Web.Desk;

/// <summary>What the desk does to one line of a price: another amount or none at all, and why. A line of the desk's own has no rule behind it.</summary>
public sealed class LineEdit(PriceLine rule)
{
    private decimal? _ruleAmount = rule.RuleAmount;

    /// <summary>The cam and the code by which the line is known again when it is priced anew.</summary>
    public (int? Cam, string Code) Key { get; } = (rule.Cam, rule.Code);

    public bool IsOwn => _ruleAmount is null;

    public string Text { get; set; } = rule.Text;

    public string Why { get; private set; } = rule.Why;

    public string Figures { get; private set; } = rule.Figures;

    public decimal Amount { get; set; } = rule.Amount;

    public string Reason { get; set; } = rule.Reason ?? "";

    public bool IsStruck { get; set; } = rule.IsStruck;

    public bool NeedsReason => Line.NeedsReason;

    public PriceLine Line => new(Key.Code, Text.Trim(), Amount)
    {
        Why = Why,
        Figures = Figures,
        Cam = Key.Cam,
        RuleAmount = _ruleAmount,
        Reason = string.IsNullOrWhiteSpace(Reason) ? null : Reason.Trim(),
        IsStruck = IsStruck,
    };

    /// <summary>The rules ask something else now. An amount that the desk typed stays; one that it left alone follows.</summary>
    public LineEdit Follow(PriceLine newer)
    {
        if (Amount == _ruleAmount)
            Amount = newer.Amount;
        (Text, Why, Figures, _ruleAmount) = (newer.Text, newer.Why, newer.Figures, newer.RuleAmount);
        return this;
    }

    public static LineEdit Own(int number) => new(new PriceLine($"own-{number}", "", 0) { Why = "Agreed for this order." });
}
