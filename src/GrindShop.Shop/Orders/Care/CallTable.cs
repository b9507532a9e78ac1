using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Orders;

internal sealed class CallTable : IEntityTypeConfiguration<CallBack>
{
    public void Configure(EntityTypeBuilder<CallBack> table)
    {
        table.ToTable("order_calls", t => t.HasCheckConstraint("ck_order_calls_done", "(done_at IS NULL) = (done_by IS NULL) AND (tries = 0) = (last_tried_at IS NULL)"));
        table.HasIndex(call => new { call.OrderId, call.CommandKey }).IsUnique();
        table.HasIndex(call => call.DueAt).HasFilter("done_at IS NULL");
        table.Property(call => call.Number).HasMaxLength(CallBack.LongestNumber);
        table.Property(call => call.About).HasMaxLength(CallBack.LongestAbout);
        table.Property(call => call.By).HasMaxLength(100);
        table.Property(call => call.DoneBy).HasMaxLength(100);
        table.Property(call => call.CommandKey).HasMaxLength(100);
        table.Ignore(call => call.IsOpen);
    }
}
