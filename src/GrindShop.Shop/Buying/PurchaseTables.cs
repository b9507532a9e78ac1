using GrindShop.Shop.Mail;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Buying;

internal sealed class PurchaseOrderTable : IEntityTypeConfiguration<PurchaseOrder>
{
    public void Configure(EntityTypeBuilder<PurchaseOrder> table)
    {
        table.ToTable("purchase_orders", t => t.HasCheckConstraint("ck_purchase_orders_sent", "CASE state WHEN 'Draft' THEN sent_at IS NULL WHEN 'Cancelled' THEN true ELSE sent_at IS NOT NULL END"));
        table.HasIndex(order => order.CommandKey).IsUnique();
        table.HasIndex(order => order.State);
        table.Property(order => order.Number).HasMaxLength(20);
        table.Property(order => order.CommandKey).HasMaxLength(200);
        table.Property(order => order.Version).IsRowVersion();
        table.HasOne(order => order.Vendor).WithMany().HasForeignKey(order => order.VendorId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(order => order.Lines).WithOne().HasForeignKey(line => line.PurchaseOrderId).OnDelete(DeleteBehavior.Cascade);
        table.HasMany<OutgoingMail>().WithOne().HasForeignKey(mail => mail.PurchaseNumber).HasPrincipalKey(order => order.Number).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(order => order.History).WithOne().HasForeignKey(line => line.PurchaseOrderId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class PurchaseLineTable : IEntityTypeConfiguration<PurchaseLine>
{
    public void Configure(EntityTypeBuilder<PurchaseLine> table)
    {
        table.ToTable("purchase_lines", t =>
        {
            t.HasCheckConstraint("ck_purchase_lines_quantity", "quantity >= 1 AND received >= 0 AND (received <= quantity OR more_why IS NOT NULL)");
            t.HasCheckConstraint("ck_purchase_lines_cost", "unit_cost >= 0 AND setup_charge >= 0");
        });
        table.HasIndex(line => new { line.PurchaseOrderId, line.BlankPartId }).IsUnique();
        table.HasIndex(line => new { line.PurchaseOrderId, line.Ordinal }).IsUnique();
        table.Property(line => line.UnusualWhy).HasMaxLength(500);
        table.Property(line => line.MoreWhy).HasMaxLength(500);
        table.HasOne(line => line.BlankPart).WithMany().HasForeignKey(line => line.BlankPartId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(line => line.Receipts).WithOne().HasForeignKey(receipt => receipt.PurchaseLineId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class PurchaseReceiptTable : IEntityTypeConfiguration<PurchaseReceipt>
{
    public void Configure(EntityTypeBuilder<PurchaseReceipt> table)
    {
        table.ToTable("purchase_receipts", t => t.HasCheckConstraint("ck_purchase_receipts_quantity", "quantity >= 1"));
        table.HasIndex(receipt => receipt.Key).IsUnique();
        table.HasIndex(receipt => receipt.BlankLotId).IsUnique();
        table.Property(receipt => receipt.Key).HasMaxLength(200);
        table.Property(receipt => receipt.By).HasMaxLength(100);
        table.HasOne(receipt => receipt.BlankLot).WithMany().HasForeignKey(receipt => receipt.BlankLotId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class PurchaseEventTable : IEntityTypeConfiguration<PurchaseEvent>
{
    public void Configure(EntityTypeBuilder<PurchaseEvent> table)
    {
        table.ToTable("purchase_events");
        table.Property(line => line.By).HasMaxLength(100);
    }
}
