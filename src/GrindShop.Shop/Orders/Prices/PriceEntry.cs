using System.Globalization;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Orders;

/// <summary>One figure of the price list, changed by the owner.</summary>
public abstract class PriceEntry
{
    public int Id { get; private set; }

    /// <summary>US dollars, or percent where <see cref="IsPercent"/>.</summary>
    public required decimal Amount { get; set; }

    /// <summary>Changes with every write; 0 where the figure is not set.</summary>
    public uint Version { get; private set; }

    /// <summary>Its name in histories and addresses, such as base/RV8-R/solidRoller.</summary>
    public abstract string Key { get; }

    /// <summary>What it is the price of, in words.</summary>
    public abstract string Subject { get; }

    public virtual bool IsPercent => false;

    /// <summary>The figure with its unit.</summary>
    public virtual string Words => IsPercent ? $"{Amount.ToString("0.##", CultureInfo.InvariantCulture)} %" : PriceRules.Dollars(Amount);

    protected static string Camel(Enum choice) => choice.ToString() is var name ? char.ToLowerInvariant(name[0]) + name[1..] : "";
}

/// <summary>What all tables of prices have in common.</summary>
internal abstract class PriceTable<TEntry>(string name, string check) : IEntityTypeConfiguration<TEntry>
    where TEntry : PriceEntry
{
    public virtual void Configure(EntityTypeBuilder<TEntry> table)
    {
        table.ToTable(name, t => t.HasCheckConstraint($"ck_{name}_amount", check));
        table.Property(entry => entry.Version).IsRowVersion();
    }
}

public static class PriceSets
{
    extension(ShopDb db)
    {
        public DbSet<BasePrice> BasePrices => db.Set<BasePrice>();

        public DbSet<RepairPrice> RepairPrices => db.Set<RepairPrice>();

        public DbSet<PriceAdder> PriceAdders => db.Set<PriceAdder>();

        public DbSet<QuantityBreak> QuantityBreaks => db.Set<QuantityBreak>();

        /// <summary>Every figure of the price list that is set.</summary>
        public async Task<IReadOnlyList<PriceEntry>> PriceListAsync(CancellationToken cancel) =>
        [
            .. await db.BasePrices.Include(price => price.EngineFamily).OrderBy(price => price.EngineFamilyId).ToListAsync(cancel),
            .. await db.RepairPrices.Include(price => price.EngineFamily).OrderBy(price => price.EngineFamilyId).ToListAsync(cancel),
            .. await db.PriceAdders.OrderBy(adder => adder.Id).ToListAsync(cancel),
            .. await db.QuantityBreaks.OrderBy(step => step.From).ToListAsync(cancel),
        ];
    }
}
