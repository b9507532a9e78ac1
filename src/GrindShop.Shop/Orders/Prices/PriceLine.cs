namespace GrindShop.Shop.Orders;

/// <summary>One line of a price as it was quoted.</summary>
public sealed record PriceLine(string Code, string Text, decimal Amount)
{
    /// <summary>Why the line is there, in words.</summary>
    public string Why { get; init; } = "";

    /// <summary>The figures it was computed from, for the shop's eyes: costs and mark-ups stand here.</summary>
    public string Figures { get; init; } = "";

    /// <summary>The cam it belongs to, by its place in the order; null for the whole order.</summary>
    public int? Cam { get; init; }

    /// <summary>What the shop's rules ask; null for a line that the desk added.</summary>
    public decimal? RuleAmount { get; init; }

    /// <summary>Why the desk changed, added or struck it.</summary>
    public string? Reason { get; init; }

    /// <summary>Taken out by the desk; it stays readable and is not charged.</summary>
    public bool IsStruck { get; init; }

    public decimal Charge => IsStruck ? 0 : Amount;

    /// <summary>It is not what the rules ask.</summary>
    public bool NeedsReason => IsStruck || Amount != RuleAmount;
}
