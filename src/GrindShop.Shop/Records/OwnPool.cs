using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Records;

/// <summary>
/// Contexts on connections apart from everybody else's, for short readings that are also asked for in the middle of a transaction: whoever holds a
/// connection never waits here for another one of the same pool, which many at once would do for ever.
/// </summary>
public sealed class OwnPool : IDbContextFactory<ShopDb>
{
    private readonly DbContextOptions<ShopDb> _options;

    /// <param name="connectionString">The shop's database.</param>
    /// <param name="name">Name of these connections at the server.</param>
    public OwnPool(string connectionString, string name)
    {
        var apart = new NpgsqlConnectionStringBuilder(connectionString);
        apart.ApplicationName = $"{apart.ApplicationName} {name}".Trim();
        _options = new DbContextOptionsBuilder<ShopDb>().UseShop(apart.ToString()).Options;
    }

    public ShopDb CreateDbContext() => new(_options);
}
