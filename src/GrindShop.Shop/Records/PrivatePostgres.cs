using Npgsql;

namespace GrindShop.Shop.Records;

/// <summary>
/// A PostgreSQL server of the application's own: made on first start, kept in the data folder, stopped with the application.
/// It listens on a Unix socket in a folder closed to other users and on no network port.
/// </summary>
public sealed class PrivatePostgres : IAsyncDisposable
{
    public const string User = "grindshop";
    public const string MaintenanceDatabase = "postgres";

    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(25);

    private readonly PostgresCluster cluster;
    private readonly PostgresProcess process;
    private readonly string socketFolder;
    private int stopped;

    private PrivatePostgres(PostgresCluster cluster, PostgresProcess process, string socketFolder) =>
        (this.cluster, this.process, this.socketFolder) = (cluster, process, socketFolder);

    /// <summary>Ends when the server ends, asked or not.</summary>
    public Task Exited => process.Exited;

    /// <exception cref="PrivatePostgresException">The server cannot start; the message is one line that says what to do.</exception>
    public static async Task<PrivatePostgres> StartAsync(PrivatePostgresOptions options, CancellationToken cancel = default)
    {
        var cluster = PostgresCluster.Open(options.DataFolder);
        try
        {
            return await StartAsync(cluster, options, cancel);
        }
        catch
        {
            cluster.Dispose();
            throw;
        }
    }

    private static async Task<PrivatePostgres> StartAsync(PostgresCluster cluster, PrivatePostgresOptions options, CancellationToken cancel)
    {
        var account = await ServerAccount.ChooseAsync(cluster.Folder, cancel);
        if (Directory.Exists(cluster.Folder)) await account.TakeOverAsync(cluster.Folder, cancel);
        var kept = cluster.KeptMajor();
        var binaries = await PostgresBinaries.FindAsync(options.BinFolder, kept, cluster.Folder, cancel);
        if (kept is null) await cluster.CreateAsync(binaries, account, options.Durable, cancel);
        if (!await cluster.Pid.ClearAsync(cancel)) throw PostgresCluster.InUse(cluster.DataFolder);
        return await LaunchAsync(cluster, binaries, account, options.Durable, cancel);
    }

    private static async Task<PrivatePostgres> LaunchAsync(
        PostgresCluster cluster, PostgresBinaries binaries, ServerAccount account, bool durable, CancellationToken cancel)
    {
        var socketFolder = await SocketFolder.MakeAsync(cluster, account, cancel);
        var log = PostgresLog.From(cluster.Log);
        var process = await PostgresProcess.StartAsync(ServerWords(binaries, cluster, socketFolder, durable), account, cluster.Log);
        var server = new PrivatePostgres(cluster, process, socketFolder);
        try
        {
            await server.ReadyAsync(log, cancel);
            return server;
        }
        catch
        {
            await server.DisposeAsync();
            throw;
        }
    }

    private static string[] ServerWords(PostgresBinaries binaries, PostgresCluster cluster, string socketFolder, bool durable) =>
    [
        binaries.Postgres, "-D", cluster.Folder, "-p", "5432", "-k", socketFolder, "-c", "listen_addresses=",
        "-c", "unix_socket_permissions=0700", "-c", "logging_collector=off", "-c", "log_checkpoints=off",
        .. durable ? Array.Empty<string>() : ["-c", "fsync=off", "-c", "synchronous_commit=off", "-c", "full_page_writes=off"],
    ];

    private async Task ReadyAsync(PostgresLog log, CancellationToken cancel)
    {
        while (!await AnswersAsync(cancel))
        {
            if (Exited.IsCompleted) throw log.Failure(cluster);
            await Task.Delay(Beat, cancel);
        }
    }

    private async Task<bool> AnswersAsync(CancellationToken cancel)
    {
        try
        {
            await using var connection = new NpgsqlConnection(ConnectionString(MaintenanceDatabase) + ";Pooling=false");
            await connection.OpenAsync(cancel);
            return true;
        }
        catch (PostgresException e) when (e.SqlState != PostgresErrorCodes.CannotConnectNow)
        {
            throw new PrivatePostgresException(PostgresFailure.Broken, $"{cluster.Folder} does not let the application in: {e.MessageText}");
        }
        catch (NpgsqlException)
        {
            return false;
        }
    }

    public string ConnectionString(string database) => $"Host={socketFolder};Port=5432;Username={User};Database={database}";

    /// <summary>Makes the database unless it is there.</summary>
    /// <returns>Its connection string.</returns>
    public async Task<string> EnsureDatabaseAsync(string database, CancellationToken cancel = default)
    {
        await using var source = NpgsqlDataSource.Create(ConnectionString(MaintenanceDatabase) + ";Pooling=false");
        await using var find = source.CreateCommand("SELECT 1 FROM pg_database WHERE datname = $1");
        find.Parameters.Add(new() { Value = database });
        if (await find.ExecuteScalarAsync(cancel) is not null) return ConnectionString(database);
        await using var create = source.CreateCommand($"CREATE DATABASE \"{database.Replace("\"", "\"\"")}\"");
        await create.ExecuteNonQueryAsync(cancel);
        return ConnectionString(database);
    }

    /// <summary>Fast shutdown: open transactions are rolled back, everything committed is on disk.</summary>
    public async ValueTask DisposeAsync()
    {
        if (Interlocked.Exchange(ref stopped, 1) == 1) return;
        await process.StopAsync();
        SocketFolder.Remove(socketFolder);
        cluster.Dispose();
    }
}
