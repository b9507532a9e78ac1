using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Buying;

internal sealed class BuyingRulesTable : IEntityTypeConfiguration<BuyingRules>
{
    public void Configure(EntityTypeBuilder<BuyingRules> table)
    {
        table.ToTable("buying_rules", t =>
        {
            t.HasCheckConstraint("ck_buying_rules_one_row", "id = 1");
            t.HasCheckConstraint("ck_buying_rules_service", "service_level BETWEEN 0.5 AND 0.999");
            t.HasCheckConstraint("ck_buying_rules_costs", "order_cost >= 0 AND storage_a_year > 0 AND cost_of_capital BETWEEN 0 AND 1 AND obsolescence_a_year BETWEEN 0 AND 1 AND most_years_of_cover > 0");
        });
        table.Property(rules => rules.Id).ValueGeneratedNever();
        table.Property(rules => rules.Version).IsRowVersion();
        table.HasData(new BuyingRules());
    }
}

internal sealed class SupplyTermsTable : IEntityTypeConfiguration<SupplyTerms>
{
    public void Configure(EntityTypeBuilder<SupplyTerms> table)
    {
        table.ToTable("supply_terms", t =>
        {
            t.HasCheckConstraint("ck_supply_terms_sold", "multiple >= 1 AND setup_charge >= 0");
            t.HasCheckConstraint("ck_supply_terms_service", "service_level BETWEEN 0.5 AND 0.999");
        });
        table.HasIndex(terms => terms.BlankPartId).IsUnique();
        table.Ignore(terms => terms.Source);
        table.HasOne<Blanks.Vendor>().WithMany().HasForeignKey(terms => terms.SupplierId).OnDelete(DeleteBehavior.Restrict);
        table.Property(terms => terms.PriceBreaks).HasJson();
        table.Property(terms => terms.Version).IsRowVersion();
        table.HasOne(terms => terms.BlankPart).WithMany().HasForeignKey(terms => terms.BlankPartId).OnDelete(DeleteBehavior.Restrict);
    }
}

public static class BuyingSets
{
    extension(ShopDb db)
    {
        public DbSet<PurchaseOrder> PurchaseOrders => db.Set<PurchaseOrder>();

        public DbSet<SupplyTerms> SupplyTerms => db.Set<SupplyTerms>();

        public DbSet<BuyingRules> BuyingRules => db.Set<BuyingRules>();

        /// <summary>Orders with vendor, lines, their parts with who sells them, deliveries and lots, and history, the oldest line first.</summary>
        public IQueryable<PurchaseOrder> WholePurchases() => db.PurchaseOrders
            .Include(order => order.Vendor)
            .Include(order => order.Lines.OrderBy(line => line.Ordinal)).ThenInclude(line => line.BlankPart).ThenInclude(part => part.EngineFamily)
            .Include(order => order.Lines).ThenInclude(line => line.BlankPart).ThenInclude(part => part.OtherSources)
            .Include(order => order.Lines).ThenInclude(line => line.Receipts.OrderBy(receipt => receipt.Id)).ThenInclude(receipt => receipt.BlankLot)
            .Include(order => order.History.OrderBy(line => line.Id))
            .AsSplitQuery();

        /// <summary>Blanks on order with a supplier and not here yet, by part id; parts without any are left out.</summary>
        public Task<Dictionary<int, int>> OnOrderAsync(CancellationToken cancel) =>
            MissingAsync(db.PurchaseOrders.Where(order => order.State == PurchaseState.Sent || order.State == PurchaseState.PartlyReceived), cancel);

        /// <summary>The day the next of a part are expected, by part id; parts of which none are on order are left out.</summary>
        public Task<Dictionary<int, DateOnly>> NextReceiptsAsync(CancellationToken cancel) => db.PurchaseOrders
            .Where(order => order.State == PurchaseState.Sent || order.State == PurchaseState.PartlyReceived)
            .SelectMany(order => order.Lines).Where(line => line.Received < line.Quantity)
            .GroupBy(line => line.BlankPartId)
            .Select(lines => new { lines.Key, On = lines.Min(line => line.ExpectedOn) })
            .ToDictionaryAsync(part => part.Key, part => part.On, cancel);

        /// <summary>Blanks on purchase orders that are not sent, by part id.</summary>
        public Task<Dictionary<int, int>> InDraftsAsync(CancellationToken cancel) => MissingAsync(db.PurchaseOrders.Where(order => order.State == PurchaseState.Draft), cancel);

        /// <summary>Draws the next purchase order number; numbers are never used twice.</summary>
        public async Task<string> NextPurchaseNumberAsync(CancellationToken cancel) =>
            $"PO-{await db.Database.SqlQueryRaw<long>($"SELECT nextval('{ShopDb.PurchaseSequence}') AS \"Value\"").SingleAsync(cancel)}";
    }

    private static Task<Dictionary<int, int>> MissingAsync(IQueryable<PurchaseOrder> orders, CancellationToken cancel) => orders
        .SelectMany(order => order.Lines).Where(line => line.Received < line.Quantity)
        .GroupBy(line => line.BlankPartId)
        .Select(lines => new { lines.Key, Missing = lines.Sum(line => line.Quantity - line.Received) })
        .ToDictionaryAsync(part => part.Key, part => part.Missing, cancel);
}
