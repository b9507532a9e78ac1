using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>What one node writes, every node answers from.</summary>
public sealed class CatalogRefreshTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _here = null!;
    private TestShop _there = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        (_here, _there) = (new TestShop(_database), new TestShop(_database, "two"));
    }

    public async Task DisposeAsync()
    {
        await _here.DisposeAsync();
        await _there.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task A_change_on_one_node_is_answered_from_on_both_without_any_notice()
    {
        await _there.Catalog.ContentAsync();

        await WriteAsync(db => db.Settings.ExecuteUpdateAsync(row => row.SetProperty(settings => settings.CleanupIn, .0071)));

        Assert.Equal(.0071, (await _here.Catalog.ContentAsync()).Rules.Settings.CleanupIn);
        Assert.Equal(.0071, (await _there.Catalog.ContentAsync()).Rules.Settings.CleanupIn);
    }

    [Fact]
    public async Task Nothing_changed_nothing_is_read_again() =>
        Assert.Same(await _here.Catalog.ContentAsync(), await _here.Catalog.ContentAsync());

    [Fact]
    public async Task Stock_and_orders_do_not_make_the_catalog_anew()
    {
        var before = await _here.Catalog.ContentAsync();

        await _here.StockAsync(1);

        Assert.Same(before, await _here.Catalog.ContentAsync());
    }

    [Fact]
    public async Task A_change_that_is_taken_back_is_never_seen()
    {
        var before = await _there.Catalog.ContentAsync();
        await using var db = _here.Db();
        await using (await db.Database.BeginTransactionAsync())
        {
            await db.GearRules.ExecuteDeleteAsync();
            Assert.Same(before, await _there.Catalog.ContentAsync());
        }

        Assert.Same(before, await _there.Catalog.ContentAsync());
    }

    [Theory]
    [InlineData("engine_families")]
    [InlineData("vendors")]
    [InlineData("blank_parts")]
    [InlineData("settings")]
    [InlineData("gear_rules")]
    [InlineData("lifter_rules")]
    [InlineData("base_prices")]
    [InlineData("price_adders")]
    public async Task Every_table_of_the_catalog_is_watched(string table)
    {
        var before = await VersionAsync();

        await WriteAsync(db => db.Database.ExecuteSqlRawAsync(string.Concat("UPDATE ", table, " SET id = id")));

        Assert.Equal(before + 1, await VersionAsync());
    }

    [Fact]
    public async Task The_other_node_is_told()
    {
        var (listening, told) = (new TaskCompletionSource(), new TaskCompletionSource());
        var notices = 0;
        _there.Listener.Changed += changed =>
        {
            if (changed == ChangeNotice.Catalog)
                (Interlocked.Increment(ref notices) == 1 ? listening : told).TrySetResult();
        };
        await _there.Listener.StartAsync(default);
        await listening.Task.WaitAsync(TimeSpan.FromSeconds(60));

        await WriteAsync(db => db.PriceAdders.ExecuteUpdateAsync(row => row.SetProperty(adder => adder.Amount, adder => adder.Amount + 1)));

        await told.Task.WaitAsync(TimeSpan.FromSeconds(60));
        await _there.Listener.StopAsync(default);
    }

    private async Task<long> VersionAsync()
    {
        await using var db = _here.Db();
        return (await db.CatalogVersions.AsNoTracking().SingleAsync()).Number;
    }

    private async Task WriteAsync(Func<ShopDb, Task> write)
    {
        await using var db = _here.Db();
        await write(db);
    }
}
