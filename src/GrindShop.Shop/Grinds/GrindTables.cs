using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Grinds;

internal sealed class CatalogGrindTable : IEntityTypeConfiguration<CatalogGrind>
{
    public void Configure(EntityTypeBuilder<CatalogGrind> table)
    {
        table.ToTable("catalog_grinds");
        table.HasIndex(grind => grind.Code).IsUnique();
        table.Property(grind => grind.Code).HasMaxLength(20);
        table.Property(grind => grind.Entry).HasJson();
        table.Property(grind => grind.Version).IsRowVersion();
        table.HasOne(grind => grind.EngineFamily).WithMany().HasForeignKey(grind => grind.EngineFamilyId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(grind => grind.History).WithOne().HasForeignKey(line => line.CatalogGrindId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class GrindEventTable : IEntityTypeConfiguration<GrindEvent>
{
    public void Configure(EntityTypeBuilder<GrindEvent> table)
    {
        table.ToTable("catalog_grind_events");
        table.Property(line => line.By).HasMaxLength(100);
        table.Property(line => line.Why).HasMaxLength(500);
        table.Property(line => line.Entry).HasJson();
    }
}

public static class GrindSets
{
    extension(ShopDb db)
    {
        public DbSet<CatalogGrind> CatalogGrinds => db.Set<CatalogGrind>();
    }
}
