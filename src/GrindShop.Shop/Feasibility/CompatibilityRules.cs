using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Feasibility;

public enum RuleVerdict
{
    Ok,
    Caution,
    No,
}

/// <summary>May this cam gear run with that distributor gear? The owner's table, each cell with its reason in words.</summary>
public sealed class GearRule
{
    public int Id { get; private set; }

    public required CamGear CamGear { get; init; }

    public required DistributorGear DistributorGear { get; init; }

    public required RuleVerdict Verdict { get; set; }

    public required string Reason { get; set; }
}

/// <summary>May this kind of lifter run on a lobe of that alloy? The owner's table, each cell with its reason in words.</summary>
public sealed class LifterRule
{
    public int Id { get; private set; }

    public required BlankAlloy Alloy { get; init; }

    public required LifterType Lifter { get; init; }

    public required RuleVerdict Verdict { get; set; }

    public required string Reason { get; set; }
}

internal sealed class GearRuleTable : IEntityTypeConfiguration<GearRule>
{
    public void Configure(EntityTypeBuilder<GearRule> table)
    {
        table.ToTable("gear_rules");
        table.HasIndex(rule => new { rule.CamGear, rule.DistributorGear }).IsUnique();
    }
}

internal sealed class LifterRuleTable : IEntityTypeConfiguration<LifterRule>
{
    public void Configure(EntityTypeBuilder<LifterRule> table)
    {
        table.ToTable("lifter_rules");
        table.HasIndex(rule => new { rule.Alloy, rule.Lifter }).IsUnique();
    }
}

public static class RuleSets
{
    extension(ShopDb db)
    {
        public DbSet<GearRule> GearRules => db.Set<GearRule>();

        public DbSet<LifterRule> LifterRules => db.Set<LifterRule>();
    }
}
