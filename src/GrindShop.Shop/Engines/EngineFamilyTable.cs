using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Engines;

internal sealed class EngineFamilyTable : IEntityTypeConfiguration<EngineFamily>
{
    public void Configure(EntityTypeBuilder<EngineFamily> table)
    {
        table.ToTable("engine_families", t => t.HasCheckConstraint("ck_engine_families_cylinders", "cylinders BETWEEN 1 AND 16"));
        table.HasIndex(family => family.Code).IsUnique();
        table.Property(family => family.Code).HasMaxLength(20);
        table.Property(family => family.Name).HasMaxLength(100);
        table.Property(family => family.FiringOrder).HasMaxLength(60);
    }
}

public static class EngineSets
{
    extension(ShopDb db)
    {
        public DbSet<EngineFamily> EngineFamilies => db.Set<EngineFamily>();
    }
}
