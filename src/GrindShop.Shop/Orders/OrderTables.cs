using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Orders;

internal sealed class CustomerTable : IEntityTypeConfiguration<Customer>
{
    public void Configure(EntityTypeBuilder<Customer> table)
    {
        table.ToTable("customers");
        table.Property(customer => customer.Name).HasMaxLength(100);
        table.Property(customer => customer.Email).HasMaxLength(200);
        table.Property(customer => customer.Phone).HasMaxLength(40);
        table.HasIndex(customer => customer.Email).IsUnique();
        table.HasIndex(customer => customer.Phone);
    }
}

internal sealed class OrderTable : IEntityTypeConfiguration<Order>
{
    public void Configure(EntityTypeBuilder<Order> table)
    {
        table.ToTable("orders", t =>
        {
            t.HasCheckConstraint("ck_orders_price", "price >= 0");
            t.HasCheckConstraint("ck_orders_snooze", "(snoozed_until IS NULL) = (snooze_reason IS NULL)");
            t.HasCheckConstraint("ck_orders_reachable", "channel IN ('Phone', 'WalkIn') OR coalesce(btrim(contact->>'email'), '') <> '' OR coalesce(btrim(contact->>'phone'), '') <> ''");
            t.HasCheckConstraint("ck_orders_promise", "state NOT IN ('Accepted', 'InWork', 'Shipped') OR promised_on IS NOT NULL");
        });
        table.HasIndex(order => order.TrackingCode).IsUnique();
        table.HasIndex(order => order.SubmitKey).IsUnique();
        table.HasIndex(order => order.State);
        table.Property(order => order.Number).HasMaxLength(20);
        table.Property(order => order.TrackingCode).HasMaxLength(20);
        table.Property(order => order.SubmitKey).HasMaxLength(200);
        table.Property(order => order.SubmitDigest).HasMaxLength(64);
        table.Property(order => order.CustomerReference).HasMaxLength(100);
        table.Property(order => order.Contact).HasJson();
        table.Property(order => order.Version).IsRowVersion();
        table.HasOne(order => order.Customer).WithMany().HasForeignKey(order => order.CustomerId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany<IncomingMail>().WithOne().HasForeignKey(mail => mail.OrderNumber).HasPrincipalKey(order => order.Number).OnDelete(DeleteBehavior.Restrict);
        table.HasMany<OutgoingMail>().WithOne().HasForeignKey(mail => mail.OrderNumber).HasPrincipalKey(order => order.Number).OnDelete(DeleteBehavior.Restrict);
        table.Ignore(order => order.First);
        table.Ignore(order => order.ToldCams);
        table.Ignore(order => order.HasAddress);
        table.Ignore(order => order.Unheard);
        table.HasMany(order => order.Cams).WithOne().HasForeignKey(cam => cam.OrderId).OnDelete(DeleteBehavior.Restrict);
        table.Navigation(order => order.Cams).AutoInclude();
        table.Ignore(order => order.PriceLines);
        table.Ignore(order => order.CurrentQuote);
        table.Property(order => order.CurrentQuoteNumber).HasMaxLength(20);
        table.Property(order => order.AcceptedBy).HasMaxLength(100);
        table.HasMany(order => order.Quotes).WithOne().HasForeignKey(quote => quote.OrderId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(order => order.Revisions).WithOne().HasForeignKey(revision => revision.OrderId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(order => order.Deposits).WithOne().HasForeignKey(deposit => deposit.OrderId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(order => order.Questions).WithOne().HasForeignKey(question => question.OrderId).OnDelete(DeleteBehavior.Restrict);
        table.Property(order => order.AssignedTo).HasMaxLength(100);
        table.Property(order => order.SnoozeReason).HasMaxLength(Order.LongestReason);
        table.HasMany(order => order.Calls).WithOne().HasForeignKey(call => call.OrderId).OnDelete(DeleteBehavior.Restrict);
        table.HasMany(order => order.History).WithOne().HasForeignKey(line => line.OrderId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class OrderRevisionTable : IEntityTypeConfiguration<OrderRevision>
{
    public void Configure(EntityTypeBuilder<OrderRevision> table)
    {
        table.ToTable("order_revisions");
        table.HasIndex(revision => new { revision.OrderId, revision.Number }).IsUnique();
        table.Property(revision => revision.By).HasMaxLength(100);
        table.Property(revision => revision.AgreedBy).HasMaxLength(100);
        table.Property(revision => revision.Changes).HasJson();
        table.Property(revision => revision.Now).HasJson();
    }
}

internal sealed class OrderCamTable : IEntityTypeConfiguration<OrderCam>
{
    public void Configure(EntityTypeBuilder<OrderCam> table)
    {
        table.ToTable("order_cams", t => t.HasCheckConstraint("ck_order_cams_pieces", "quantity BETWEEN 0 AND 99 AND started BETWEEN 0 AND quantity AND shipped BETWEEN 0 AND started"));
        table.HasIndex(cam => new { cam.OrderId, cam.Ordinal }).IsUnique();
        table.Property(cam => cam.Spec).HasJson();
        table.Property(cam => cam.Answer).HasJson();
        table.Property(cam => cam.Measured).HasJson();
        table.Ignore(cam => cam.Entry);
        table.Ignore(cam => cam.QuotedFit);
        table.Ignore(cam => cam.ConditionWords);
        table.Property(cam => cam.Gear).HasJson();
        table.Property(cam => cam.QuotedPartNumber).HasMaxLength(40);
    }
}

internal sealed class OrderEventTable : IEntityTypeConfiguration<OrderEvent>
{
    public void Configure(EntityTypeBuilder<OrderEvent> table)
    {
        table.ToTable("order_events");
        table.Property(line => line.By).HasMaxLength(100);
        table.Property(line => line.Told).HasMaxLength(1000);
    }
}

public static class OrderSets
{
    extension(ShopDb db)
    {
        public DbSet<Customer> Customers => db.Set<Customer>();

        public DbSet<Order> Orders => db.Set<Order>();

        /// <summary>The whole order, and nobody else changes it until the transaction ends.</summary>
        internal async Task<Order> LockOrderAsync(string number, CancellationToken cancel)
        {
            await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE number = {number} FOR UPDATE", cancel);
            return await OrderDesk.Whole(db).SingleAsync(order => order.Number == number, cancel);
        }

        /// <summary>Draws the next order number; numbers are never used twice, though a failed submit may leave a gap.</summary>
        public async Task<OrderNumbers> NextOrderNumbersAsync(CancellationToken cancel) =>
            OrderNumbers.Next(await db.Database.SqlQueryRaw<long>($"SELECT nextval('{ShopDb.OrderSequence}') AS \"Value\"").SingleAsync(cancel));
    }
}
