using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Orders;

internal sealed class QuoteTable : IEntityTypeConfiguration<Quote>
{
    public void Configure(EntityTypeBuilder<Quote> table)
    {
        table.ToTable("quotes", t => t.HasCheckConstraint("ck_quotes_total", "total > 0"));
        table.HasIndex(quote => quote.Number).IsUnique();
        table.Property(quote => quote.Number).HasMaxLength(20);
        table.Property(quote => quote.By).HasMaxLength(100);
        table.Ignore(quote => quote.Charged);
        table.Property(quote => quote.Lines).HasJson();
        table.Property(quote => quote.Cams).HasJson();
    }
}

internal sealed class DepositTable : IEntityTypeConfiguration<Deposit>
{
    public void Configure(EntityTypeBuilder<Deposit> table)
    {
        table.ToTable("deposits", t => t.HasCheckConstraint("ck_deposits_amount", "amount <> 0"));
        table.HasIndex(deposit => new { deposit.OrderId, deposit.CommandKey }).IsUnique();
        table.Property(deposit => deposit.By).HasMaxLength(100);
        table.Property(deposit => deposit.Note).HasMaxLength(200);
        table.Property(deposit => deposit.CommandKey).HasMaxLength(100);
    }
}

public static class QuoteSets
{
    extension(ShopDb db)
    {
        public DbSet<Quote> Quotes => db.Set<Quote>();
    }
}
