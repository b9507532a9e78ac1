using GrindShop.Shop.Records;
using Npgsql;

namespace GrindShop.Testing;

/// <summary>
/// The server that all database tests of this process share, started on first use: the one named by
/// <c>GRINDSHOP_TEST_POSTGRES</c> (a connection string), else a container where <c>GRINDSHOP_TEST_CONTAINERS=1</c> and Docker
/// answers, else a private, non-durable PostgreSQL that goes away with the process.
/// </summary>
public static class PostgresServer
{
    private const string Given = "GRINDSHOP_TEST_POSTGRES";
    private static readonly string? GivenServer = Environment.GetEnvironmentVariable(Given);
    private static readonly Lazy<Task<string>> Maintenance = new(StartAsync);

    /// <summary>The server outlives this process, so what was made on it has to be dropped.</summary>
    public static bool IsKept => !string.IsNullOrWhiteSpace(GivenServer);

    public static async Task<string> ConnectionStringAsync(string database) =>
        new NpgsqlConnectionStringBuilder(await Maintenance.Value) { Database = database, MaxPoolSize = 20, IncludeErrorDetail = true }.ToString();

    /// <summary>Runs one statement in the maintenance database.</summary>
    public static async Task RunAsync(string statement)
    {
        await using var connection = new NpgsqlConnection(await Maintenance.Value);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(statement, connection) { CommandTimeout = 120 };
        await command.ExecuteNonQueryAsync();
    }

    public static Task DropAsync(string database) => RunAsync($"DROP DATABASE IF EXISTS {database} WITH (FORCE)");

    private static async Task<string> StartAsync() =>
        IsKept ? GivenServer! : await PostgresContainer.TryStartAsync() ?? await StartPrivateAsync();

    private static async Task<string> StartPrivateAsync()
    {
        TestFolder.SweepAbandoned();
        var folder = TestFolder.Make();
        var server = await PrivatePostgres.StartAsync(new(folder.Path) { Durable = false });
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Stop(server, folder);
        return server.ConnectionString(PrivatePostgres.MaintenanceDatabase);
    }

    private static void Stop(PrivatePostgres server, TestFolder folder)
    {
        server.DisposeAsync().AsTask().GetAwaiter().GetResult();
        folder.Dispose();
    }
}
