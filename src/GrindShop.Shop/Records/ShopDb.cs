using GrindShop.Shop.People;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Records;

/// <summary>The shop's one database. Each folder brings its own tables, and its own sets as extensions beside them.</summary>
public sealed class ShopDb(DbContextOptions<ShopDb> options) : IdentityDbContext<ShopUser>(options), IDataProtectionKeyContext
{
    public const string OrderSequence = "order_numbers";
    public const string PurchaseSequence = "purchase_numbers";
    public const string LotSequence = "lot_numbers";

    public DbSet<ShopSettings> Settings => Set<ShopSettings>();

    public DbSet<CatalogVersion> CatalogVersions => Set<CatalogVersion>();

    public DbSet<DataProtectionKey> DataProtectionKeys => Set<DataProtectionKey>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configuration)
    {
        configuration.Properties<Enum>().HaveConversion<string>().HaveMaxLength(40);
        configuration.Properties<decimal>().HavePrecision(10, 2);
    }

    protected override void OnModelCreating(ModelBuilder model)
    {
        base.OnModelCreating(model);
        model.HasSequence<long>(OrderSequence).StartsAt(1001);
        model.HasSequence<long>(PurchaseSequence).StartsAt(1001);
        model.HasSequence<long>(LotSequence).StartsAt(1001);
        model.ApplyConfigurationsFromAssembly(typeof(ShopDb).Assembly);
    }
}
