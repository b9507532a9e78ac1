using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Feasibility;

public enum TradeRuleKind
{
    /// <summary>The lobes of the blank stand for another firing order than the one wanted.</summary>
    OtherFiringOrder,

    /// <summary>A mechanical fuel pump is run, and the blank has no lobe for it.</summary>
    NoPumpLobe,
}

/// <summary>A rule that stands alone, in no table of pairs.</summary>
public sealed class TradeRule : CompatibilityRule
{
    public required TradeRuleKind Kind { get; init; }

    public override string Key => KeyOf("trade", Kind);

    public override string Subject => Kind switch
    {
        TradeRuleKind.OtherFiringOrder => "Another firing order than the blank's lobes stand for",
        _ => "Mechanical fuel pump on a blank without a pump lobe",
    };
}

internal sealed class TradeRuleTable() : RuleTable<TradeRule>("trade_rules")
{
    public override void Configure(EntityTypeBuilder<TradeRule> table)
    {
        base.Configure(table);
        table.HasIndex(rule => rule.Kind).IsUnique();
    }
}
