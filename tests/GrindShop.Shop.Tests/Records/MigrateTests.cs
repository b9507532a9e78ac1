using GrindShop.Shop.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Records;

public class MigrateTests
{
    private static readonly TemplateDatabase Bare = new("bare", _ => Task.CompletedTask);

    [Fact]
    public void Model_has_no_change_without_a_migration()
    {
        using var db = new ShopDb(new DbContextOptionsBuilder<ShopDb>().UseShop("Host=localhost;Database=design").Options);

        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task Nodes_that_start_together_migrate_one_after_the_other()
    {
        await using var database = await Bare.CopyAsync();
        var (inside, most, runs) = (0, 0, 0);

        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => Migrate.UnderLockAsync(database.ConnectionString, async db =>
        {
            most = Math.Max(most, Interlocked.Increment(ref inside));
            Assert.Empty(await db.Database.GetPendingMigrationsAsync());
            runs++;
            Interlocked.Decrement(ref inside);
        }))));

        Assert.Equal((4, 1), (runs, most));
    }
}
