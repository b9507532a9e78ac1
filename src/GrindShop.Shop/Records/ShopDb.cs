using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.People;
using GrindShop.Shop.Routing;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Records;

/// <summary>The shop's one database.</summary>
public sealed class ShopDb(DbContextOptions<ShopDb> options) : IdentityDbContext<ShopUser>(options), IDataProtectionKeyContext
{
    public const string OrderSequence = "order_numbers";

    public DbSet<ShopSettings> Settings => Set<ShopSettings>();

    public DbSet<EngineFamily> EngineFamilies => Set<EngineFamily>();

    public DbSet<Vendor> Vendors => Set<Vendor>();

    public DbSet<BlankPart> BlankParts => Set<BlankPart>();

    public DbSet<BlankLot> BlankLots => Set<BlankLot>();

    public DbSet<StockMovement> StockMovements => Set<StockMovement>();

    public DbSet<GearRule> GearRules => Set<GearRule>();

    public DbSet<LifterRule> LifterRules => Set<LifterRule>();

    public DbSet<BasePrice> BasePrices => Set<BasePrice>();

    public DbSet<PriceAdder> PriceAdders => Set<PriceAdder>();

    public DbSet<Customer> Customers => Set<Customer>();

    public DbSet<Order> Orders => Set<Order>();

    public DbSet<Job> Jobs => Set<Job>();

    public DbSet<DataProtectionKey> DataProtectionKeys => Set<DataProtectionKey>();

    /// <summary>Draws the next order number; numbers are never used twice, though a failed submit may leave a gap.</summary>
    public async Task<OrderNumbers> NextOrderNumbersAsync(CancellationToken cancel)
    {
        var value = await Database.SqlQueryRaw<long>($"SELECT nextval('{OrderSequence}') AS \"Value\"").SingleAsync(cancel);
        return OrderNumbers.Next(value);
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configuration)
    {
        configuration.Properties<Enum>().HaveConversion<string>().HaveMaxLength(40);
        configuration.Properties<decimal>().HavePrecision(10, 2);
    }

    protected override void OnModelCreating(ModelBuilder model)
    {
        base.OnModelCreating(model);
        model.HasSequence<long>(OrderSequence).StartsAt(1001);
        model.ApplyConfigurationsFromAssembly(typeof(ShopDb).Assembly);
    }
}
