using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Feasibility;

/// <summary>May this cam gear run with that distributor gear, where the engine carries the gear at this end of the cam?</summary>
public sealed class GearRule : CompatibilityRule
{
    /// <summary>Front or rear.</summary>
    public required GearPosition Position { get; init; }

    public required CamGear CamGear { get; init; }

    public required DistributorGear DistributorGear { get; init; }

    public override string Key => KeyOf("gear", Position, CamGear, DistributorGear);

    public override string Subject => $"{Capital(CamGear.Words())} on the cam with a distributor gear of {DistributorGear.Words()}, gear at the {Position.ToString().ToLowerInvariant()}";

    /// <summary>Rules that were written before the position counted hold for both ends, but for the pressed-on gear.</summary>
    internal static void SpreadToBothEnds(MigrationBuilder migration) => migration.Sql("""
        INSERT INTO gear_rules (position, cam_gear, distributor_gear, verdict, reason)
        SELECT 'Front', cam_gear, distributor_gear,
               CASE cam_gear WHEN 'PressedIron' THEN 'No' ELSE verdict END,
               CASE cam_gear WHEN 'PressedIron' THEN 'An iron gear is pressed on only where it sits at the rear of the cam.' ELSE reason END
        FROM gear_rules ORDER BY id;
        """);

    internal static void KeepRearOnly(MigrationBuilder migration) => migration.Sql("DELETE FROM gear_rules WHERE position <> 'Rear';");
}

internal sealed class GearRuleTable() : RuleTable<GearRule>("gear_rules")
{
    public override void Configure(EntityTypeBuilder<GearRule> table)
    {
        base.Configure(table);
        table.ToTable(t => t.HasCheckConstraint("ck_gear_rules_position", "position IN ('Front', 'Rear')"));
        table.HasIndex(rule => new { rule.Position, rule.CamGear, rule.DistributorGear }).IsUnique();
    }
}
