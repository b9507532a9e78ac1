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
public sealed record PriceLine(string Code, string Text, decimal Amount);
