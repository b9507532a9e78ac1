using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Starting;

/// <summary>The rules as somebody set them. Sets are only ever added; the one with the highest number is in force.</summary>
public sealed class StartRuleSet(int number, StartRules rules, string by, DateTimeOffset at, string why)
{
    public int Id { get; private set; }

    /// <summary>Counts from 1 without gaps; two people who change the same set at once want the same number, and the second is refused.</summary>
    public int Number { get; private set; } = number;

    public StartRules Rules { get; private set; } = rules;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string Why { get; private set; } = why;
}

internal sealed class StartRuleSetTable : IEntityTypeConfiguration<StartRuleSet>
{
    public void Configure(EntityTypeBuilder<StartRuleSet> table)
    {
        table.ToTable("start_rule_sets", t => t.HasCheckConstraint("ck_start_rule_sets_number", "number >= 1"));
        table.HasIndex(set => set.Number).IsUnique();
        table.Property(set => set.Rules).HasJson();
        table.Property(set => set.By).HasMaxLength(100);
        table.Property(set => set.Why).HasMaxLength(500);
    }
}

public static class StartSets
{
    extension(ShopDb db)
    {
        public DbSet<StartRuleSet> StartRuleSets => db.Set<StartRuleSet>();
    }
}
