using GrindShop.Shop.Demo;
using GrindShop.Shop.Records;

namespace GrindShop.Web.Shell;

/// <summary>The database of this run: the one that a connection string names, or the private PostgreSQL in the data folder.</summary>
public sealed class ShopDatabase : IAsyncDisposable
{
    private readonly PrivatePostgres? _server;
    private readonly string? _seed;

    private ShopDatabase(string connectionString, PrivatePostgres? server, string? seed) =>
        (ConnectionString, _server, _seed) = (connectionString, server, seed);

    public string ConnectionString { get; }

    public static async Task<ShopDatabase> OpenAsync(IConfiguration settings)
    {
        var seed = settings["GRINDSHOP_SEED"];
        if (settings.GetConnectionString("Shop") is { Length: > 0 } given)
            return new ShopDatabase(given, null, seed);
        var server = await PrivatePostgres.StartAsync(PrivatePostgresOptions.From(settings));
        return new ShopDatabase(await server.EnsureDatabaseAsync("grindshop"), server, seed);
    }

    /// <summary>Migrates under the advisory lock and, in an empty database, loads the scenario.</summary>
    public Task PrepareAsync() => Migrate.UnderLockAsync(ConnectionString, db => string.IsNullOrWhiteSpace(_seed) ? Task.CompletedTask : Scenario.LoadAsync(db, _seed));

    public async ValueTask DisposeAsync()
    {
        if (_server is not null)
            await _server.DisposeAsync();
    }
}
