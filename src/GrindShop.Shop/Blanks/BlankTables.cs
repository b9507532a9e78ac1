using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GrindShop.Shop.Blanks;

internal sealed class VendorTable : IEntityTypeConfiguration<Vendor>
{
    public void Configure(EntityTypeBuilder<Vendor> table)
    {
        table.ToTable("vendors");
        table.HasIndex(vendor => vendor.Code).IsUnique();
        table.Property(vendor => vendor.Email).HasMaxLength(Vendor.LongestEmail);
    }
}

internal sealed class BlankPartTable : IEntityTypeConfiguration<BlankPart>
{
    public void Configure(EntityTypeBuilder<BlankPart> table)
    {
        table.ToTable("blank_parts", t =>
        {
            t.HasCheckConstraint("ck_blank_parts_shape", "(form = 'FullRound') = (nominal IS NULL) AND (form = 'FullRound') = (round_diameter_in IS NOT NULL)");
            t.HasCheckConstraint("ck_blank_parts_case", "(hardening IN ('Induction', 'Carburized')) = (case_depth_in IS NOT NULL)");
            t.HasCheckConstraint("ck_blank_parts_cost", "cost >= 0 AND lead_time_days >= 0 AND least_quantity >= 1");
            t.HasCheckConstraint("ck_blank_parts_buying", "supersedes <> part_number");
        });
        table.HasAlternateKey(part => part.PartNumber);
        table.Property(part => part.PartNumber).HasMaxLength(40);
        table.Property(part => part.Nominal).HasJson();
        table.Property(part => part.SupplierPart).HasMaxLength(60);
        table.Property(part => part.DriveEnd).HasMaxLength(200);
        table.Property(part => part.Supersedes).HasMaxLength(40);
        table.Property(part => part.LeastQuantity).HasDefaultValue(1);
        table.Ignore(part => part.Usual);
        table.Property(part => part.Version).IsRowVersion();
        table.HasIndex(part => part.Supersedes).IsUnique();
        table.HasOne<BlankPart>().WithMany().HasForeignKey(part => part.Supersedes).HasPrincipalKey(part => part.PartNumber).OnDelete(DeleteBehavior.Restrict);
        table.HasOne(part => part.EngineFamily).WithMany().HasForeignKey(part => part.EngineFamilyId).OnDelete(DeleteBehavior.Restrict);
        table.HasOne(part => part.Supplier).WithMany().HasForeignKey(part => part.SupplierId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class BlankLotTable : IEntityTypeConfiguration<BlankLot>
{
    public void Configure(EntityTypeBuilder<BlankLot> table)
    {
        table.ToTable("blank_lots", t => t.HasCheckConstraint("ck_blank_lots_stock", "on_hand >= 0 AND allocated BETWEEN 0 AND on_hand"));
        table.HasIndex(lot => lot.LotNumber).IsUnique();
        table.Property(lot => lot.LotNumber).HasMaxLength(40);
        table.HasIndex(lot => lot.ReceiptKey).IsUnique();
        table.Property(lot => lot.HeatNumber).HasMaxLength(BlankLot.LongestHeatNumber);
        table.Property(lot => lot.Certificate).HasMaxLength(BlankLot.LongestCertificate);
        table.Property(lot => lot.PurchaseLine).HasMaxLength(100);
        table.Property(lot => lot.ReceiptKey).HasMaxLength(200);
        table.Property(lot => lot.QuarantineReason).HasMaxLength(500);
        table.HasOne(lot => lot.Supplier).WithMany().HasForeignKey(lot => lot.SupplierId).OnDelete(DeleteBehavior.Restrict);
        table.HasOne(lot => lot.BlankPart).WithMany().HasForeignKey(lot => lot.BlankPartId).OnDelete(DeleteBehavior.Restrict);
        table.Ignore(lot => lot.Metal);
        table.HasMany(lot => lot.Samples).WithOne().HasForeignKey(sample => sample.BlankLotId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(lot => lot.Movements).WithOne().HasForeignKey(movement => movement.BlankLotId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class LotSampleTable : IEntityTypeConfiguration<LotSample>
{
    public void Configure(EntityTypeBuilder<LotSample> table)
    {
        table.ToTable("lot_samples", t => t.HasCheckConstraint("ck_lot_samples_figures", "pieces > 0 AND (hardness_value IS NULL) = (hardness_scale IS NULL) AND case_depth_in >= 0 AND stock_in >= 0"));
        table.Property(sample => sample.By).HasMaxLength(100);
        table.Property(sample => sample.Note).HasMaxLength(500);
        table.Ignore(sample => sample.Hardness);
    }
}

internal sealed class StockMovementTable : IEntityTypeConfiguration<StockMovement>
{
    public void Configure(EntityTypeBuilder<StockMovement> table)
    {
        table.ToTable("stock_movements", t => t.HasCheckConstraint("ck_stock_movements_job", "(kind IN ('Allocate', 'Release', 'Consume')) = (job_code IS NOT NULL) AND (allocated_change = 0 OR job_code IS NOT NULL)"));
        table.Property(movement => movement.By).HasMaxLength(100);
        table.Property(movement => movement.JobCode).HasMaxLength(20);
        table.Property(movement => movement.CommandKey).HasMaxLength(100);
        table.HasIndex(movement => new { movement.BlankLotId, movement.CommandKey }).IsUnique();
        table.HasIndex(movement => movement.JobCode);
    }
}

public static class BlankSets
{
    extension(ShopDb db)
    {
        public DbSet<Vendor> Vendors => db.Set<Vendor>();

        public DbSet<BlankPart> BlankParts => db.Set<BlankPart>();

        public DbSet<BlankLot> BlankLots => db.Set<BlankLot>();

        public DbSet<StockMovement> StockMovements => db.Set<StockMovement>();
    }

    /// <summary>Before a blank said so itself, every blank of a family with a pump lobe was taken to have one.</summary>
    internal static void TakePumpLobesFromFamilies(MigrationBuilder migration) => migration.Sql("""
        UPDATE blank_parts SET fuel_pump_lobe = family.fuel_pump_lobe
        FROM engine_families family WHERE family.id = blank_parts.engine_family_id;
        """);
}
