using GrindShop.Testing;
using Npgsql;

namespace GrindShop.Shop.Tests.Records;

/// <summary>Somebody else's transaction that has locked rows, so that others come to wait in a known order.</summary>
internal sealed class HeldRows : IAsyncDisposable
{
    private readonly NpgsqlConnection _connection;
    private NpgsqlTransaction _transaction = null!;

    private HeldRows(TestDatabase database) => _connection = new NpgsqlConnection(database.ConnectionString);

    public static async Task<HeldRows> TakeAsync(TestDatabase database, string sql)
    {
        var held = new HeldRows(database);
        await held._connection.OpenAsync();
        held._transaction = await held._connection.BeginTransactionAsync();
        await held.RunAsync(sql);
        return held;
    }

    public async Task RunAsync(string sql)
    {
        await using var command = new NpgsqlCommand(sql, _connection);
        await command.ExecuteNonQueryAsync();
    }

    /// <summary>Ends when so many others of this database wait for a lock; fails when one of them has ended instead.</summary>
    public async Task UntilWaitingAsync(params Task[] waiting)
    {
        await using var command = new NpgsqlCommand(
            "SELECT count(*) FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'", _connection);
        while (await command.ExecuteScalarAsync() is long count && count < waiting.Length)
        {
            Assert.DoesNotContain(waiting, task => task.IsCompleted);
            await RunAsync("SELECT pg_stat_clear_snapshot()");
        }
    }

    public Task ReleaseAsync() => _transaction.CommitAsync();

    public async ValueTask DisposeAsync()
    {
        await _transaction.DisposeAsync();
        await _connection.DisposeAsync();
    }
}
