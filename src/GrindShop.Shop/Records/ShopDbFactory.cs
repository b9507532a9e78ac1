using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace GrindShop.Shop.Records;

/// <summary>Gives the migration tool a context; it never connects.</summary>
public sealed class ShopDbFactory : IDesignTimeDbContextFactory<ShopDb>
{
    public ShopDb CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<ShopDb>().UseShop("Host=localhost;Database=design").Options);
}
