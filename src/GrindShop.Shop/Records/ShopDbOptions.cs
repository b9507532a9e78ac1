using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Records;

public static class ShopDbOptions
{
    /// <summary>PostgreSQL with snake_case names: the one way every context of the shop is set up.</summary>
    public static DbContextOptionsBuilder UseShop(this DbContextOptionsBuilder options, string connectionString) =>
        options.UseNpgsql(connectionString).UseSnakeCaseNamingConvention();

    /// <inheritdoc cref="UseShop(DbContextOptionsBuilder, string)"/>
    public static DbContextOptionsBuilder<ShopDb> UseShop(this DbContextOptionsBuilder<ShopDb> options, string connectionString)
    {
        UseShop((DbContextOptionsBuilder)options, connectionString);
        return options;
    }
}
