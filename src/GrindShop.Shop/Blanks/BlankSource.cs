using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Blanks;

/// <summary>One supplier of a blank: what it calls the blank and what it asks for it.</summary>
public sealed class BlankSource
{
    public int Id { get; private set; }

    public int BlankPartId { get; private set; }

    public int SupplierId { get; init; }

    public required Vendor Supplier { get; init; }

    /// <summary>What the supplier calls it; empty where nobody has asked.</summary>
    public string SupplierPart { get; init; } = "";

    /// <summary>Price of one blank.</summary>
    public required decimal Cost { get; init; }

    public required int LeadTimeDays { get; init; }

    /// <summary>The supplier sells no fewer.</summary>
    public required int LeastQuantity { get; init; }
}

internal sealed class BlankSourceTable : IEntityTypeConfiguration<BlankSource>
{
    public void Configure(EntityTypeBuilder<BlankSource> table)
    {
        table.ToTable("blank_sources", t => t.HasCheckConstraint("ck_blank_sources_terms", "cost >= 0 AND lead_time_days >= 0 AND least_quantity >= 1"));
        table.Property(source => source.SupplierPart).HasMaxLength(60);
        table.HasIndex(source => new { source.BlankPartId, source.SupplierId }).IsUnique();
        table.HasOne<BlankPart>().WithMany(part => part.OtherSources).HasForeignKey(source => source.BlankPartId).OnDelete(DeleteBehavior.Cascade);
        table.HasOne(source => source.Supplier).WithMany().HasForeignKey(source => source.SupplierId).OnDelete(DeleteBehavior.Restrict);
    }
}

public static class BlankSourceSets
{
    extension(ShopDb db)
    {
        /// <summary>Parts with family, usual supplier and the other ones.</summary>
        public IQueryable<BlankPart> WholeParts() => db.Set<BlankPart>().Include(part => part.EngineFamily).Include(part => part.Supplier)
            .Include(part => part.OtherSources.OrderBy(source => source.Supplier.Code)).ThenInclude(source => source.Supplier);
    }

    /// <summary>Before a blank knew its least quantity itself, buying's terms did; they were those of its usual supplier.</summary>
    internal static void TakeFromTerms(MigrationBuilder migration) => migration.Sql("""
        UPDATE blank_parts SET least_quantity = terms.least_quantity FROM supply_terms terms WHERE terms.blank_part_id = blank_parts.id;
        UPDATE supply_terms SET supplier_id = part.supplier_id FROM blank_parts part WHERE part.id = supply_terms.blank_part_id;
        """);

    internal static void GiveBackToTerms(MigrationBuilder migration) => migration.Sql("UPDATE supply_terms SET least_quantity = part.least_quantity FROM blank_parts part WHERE part.id = supply_terms.blank_part_id;");
}
