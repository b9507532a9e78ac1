using GrindShop.Shop.Blanks;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Feasibility;

/// <summary>What rod may a mechanical fuel pump run on a pump lobe of that alloy?</summary>
public sealed class PumpRule : CompatibilityRule
{
    public required BlankAlloy Alloy { get; init; }

    public override string Key => KeyOf("pump", Alloy);

    public override string Subject => $"Mechanical fuel pump on a pump lobe of {Alloy.Words()}";
}

internal sealed class PumpRuleTable() : RuleTable<PumpRule>("pump_rules")
{
    public override void Configure(EntityTypeBuilder<PumpRule> table)
    {
        base.Configure(table);
        table.HasIndex(rule => rule.Alloy).IsUnique();
    }
}
