using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Orders;

public enum AdderTrigger
{
    /// <summary>Chosen by hand.</summary>
    Manual,

    /// <summary>The blank is soft and goes to the heat-treat vendor.</summary>
    HeatTreat,

    /// <summary>Fewer blanks are free, and not promised to other accepted orders, than pieces are wanted.</summary>
    SpecialOrder,
    SolidLifter,

    /// <summary>Intake and exhaust are ground on different base circles.</summary>
    SplitBaseCircles,
    OtherFiringOrder,
}

public enum AdderMeasure
{
    Dollars,

    /// <summary>Of base price, blank and the adders in dollars together.</summary>
    Percent,
}

/// <summary>An amount on top of the base price, and when it applies.</summary>
public sealed class PriceAdder : PriceEntry
{
    public required string Code { get; init; }

    public required string Name { get; set; }

    public required AdderTrigger When { get; init; }

    public AdderMeasure Measure { get; set; }

    public override string Key => $"adder/{Code}";

    public override string Subject => $"On top: {Name}";

    public override bool IsPercent => Measure == AdderMeasure.Percent;
}

/// <summary>Percent off each cam when so many equal ones are ordered.</summary>
public sealed class QuantityBreak : PriceEntry
{
    /// <summary>From this many equal cams on.</summary>
    public required int From { get; init; }

    public override string Key => $"break/{From}";

    public override string Subject => $"Off each cam from {From} equal cams on";

    public override bool IsPercent => true;
}

internal sealed class PriceAdderTable() : PriceTable<PriceAdder>("price_adders", "amount BETWEEN -20000 AND 20000")
{
    public override void Configure(EntityTypeBuilder<PriceAdder> table)
    {
        base.Configure(table);
        table.Property(adder => adder.Measure).HasDefaultValue(AdderMeasure.Dollars);
        table.HasIndex(adder => adder.Code).IsUnique();
    }
}

internal sealed class QuantityBreakTable() : PriceTable<QuantityBreak>("quantity_breaks", "amount > 0 AND amount <= 50 AND \"from\" BETWEEN 2 AND 100")
{
    public override void Configure(EntityTypeBuilder<QuantityBreak> table)
    {
        base.Configure(table);
        table.HasIndex(step => step.From).IsUnique();
    }
}

/// <summary>When an adder applies, and why, as the customer reads it.</summary>
public static class AdderWords
{
    public static string Words(this AdderTrigger when) => when switch
    {
        AdderTrigger.HeatTreat => "when the blank is soft",
        AdderTrigger.SpecialOrder => "when not enough blanks are free",
        AdderTrigger.SolidLifter => "with solid lifters",
        AdderTrigger.SplitBaseCircles => "when intake and exhaust end on different base circles",
        AdderTrigger.OtherFiringOrder => "with another firing order than the engine's usual one",
        _ => "when the desk chooses it",
    };

    internal static string Why(this AdderTrigger when) => when switch
    {
        AdderTrigger.HeatTreat => "Because the blank is soft: it goes to the heat treater between rough and finish grinding.",
        AdderTrigger.SpecialOrder => "Because fewer of these blanks are free than are needed: what is missing is bought for this order.",
        AdderTrigger.SolidLifter => "Because a solid lifter's lobes take more passes.",
        AdderTrigger.SplitBaseCircles => "Because intake and exhaust end on different base circles: two settings of the machine.",
        AdderTrigger.OtherFiringOrder => "Because the lobes are indexed for another firing order than the engine's usual one.",
        _ => "Because it was chosen for this cam.",
    };
}
