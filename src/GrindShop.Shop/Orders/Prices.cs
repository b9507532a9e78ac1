using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>What grinding a cam of this family for this kind of lifter costs, before blank and adders.</summary>
public sealed class BasePrice
{
    public int Id { get; private set; }

    public int EngineFamilyId { get; init; }

    public required EngineFamily EngineFamily { get; init; }

    public required LifterType Lifter { get; init; }

    public required decimal Amount { get; set; }
}

public enum AdderTrigger
{
    /// <summary>Chosen by hand.</summary>
    Manual,

    /// <summary>The blank is soft and goes to the heat-treat vendor.</summary>
    HeatTreat,

    /// <summary>The blank is not in stock.</summary>
    SpecialOrder,
    SolidLifter,

    /// <summary>Intake and exhaust are ground on different base circles.</summary>
    SplitBaseCircles,
    OtherFiringOrder,
}

/// <summary>An amount on top of the base price, and when it applies.</summary>
public sealed class PriceAdder
{
    public int Id { get; private set; }

    public required string Code { get; init; }

    public required string Name { get; set; }

    public required decimal Amount { get; set; }

    public required AdderTrigger When { get; set; }
}

/// <summary>One line of a price as it was quoted.</summary>
public sealed record PriceLine(string Code, string Text, decimal Amount)
{
    /// <summary>Why the line is there, in words.</summary>
    public string Why { get; init; } = "";

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
