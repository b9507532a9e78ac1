using GrindShop.Shop.Blanks;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Feasibility;

/// <summary>May this kind of lifter run on a lobe of that alloy?</summary>
public sealed class LifterRule : CompatibilityRule
{
    public required BlankAlloy Alloy { get; init; }

    public required LifterType Lifter { get; init; }

    public override string Key => KeyOf("lifter", Alloy, Lifter);

    public override string Subject => $"{Capital(Lifter.Words())} on {Alloy.Words()}";
}

internal sealed class LifterRuleTable() : RuleTable<LifterRule>("lifter_rules")
{
    public override void Configure(EntityTypeBuilder<LifterRule> table)
    {
        base.Configure(table);
        table.HasIndex(rule => new { rule.Alloy, rule.Lifter }).IsUnique();
    }
}
