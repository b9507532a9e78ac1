using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Orders;

/// <summary>What grinding a cam of this family for this kind of lifter costs, before blank and adders.</summary>
public sealed class BasePrice : PriceEntry
{
    public int EngineFamilyId { get; init; }

    public required EngineFamily EngineFamily { get; init; }

    public required LifterType Lifter { get; init; }

    public override string Key => $"base/{EngineFamily.Code}/{Camel(Lifter)}";

    public override string Subject => $"Grinding, {EngineFamily.Name}, {Lifter.Words()}";
}

/// <summary>What work on the customer's own cam costs for this family.</summary>
public sealed class RepairPrice : PriceEntry
{
    public int EngineFamilyId { get; init; }

    public required EngineFamily EngineFamily { get; init; }

    /// <summary>A regrind or a gear replacement.</summary>
    public required WorkKind Kind { get; init; }

    public override string Key => $"repair/{EngineFamily.Code}/{Camel(Kind)}";

    public override string Subject => $"{Said(Kind)}, {EngineFamily.Name}";

    /// <summary>The work as a price names it.</summary>
    public static string Said(WorkKind kind) => kind == WorkKind.Regrind ? "Regrind of your cam" : "New gear pressed on your cam";
}

internal sealed class BasePriceTable() : PriceTable<BasePrice>("base_prices", "amount > 0")
{
    public override void Configure(EntityTypeBuilder<BasePrice> table)
    {
        base.Configure(table);
        table.HasIndex(price => new { price.EngineFamilyId, price.Lifter }).IsUnique();
        table.HasOne(price => price.EngineFamily).WithMany().HasForeignKey(price => price.EngineFamilyId);
    }
}

internal sealed class RepairPriceTable() : PriceTable<RepairPrice>("repair_prices", "amount > 0 AND kind IN ('Regrind', 'GearReplacement')")
{
    public override void Configure(EntityTypeBuilder<RepairPrice> table)
    {
        base.Configure(table);
        table.HasIndex(price => new { price.EngineFamilyId, price.Kind }).IsUnique();
        table.HasOne(price => price.EngineFamily).WithMany().HasForeignKey(price => price.EngineFamilyId).OnDelete(DeleteBehavior.Restrict);
    }
}
