using Npgsql;

namespace GrindShop.Testing;

/// <summary>One test class's own database; dropped when disposed.</summary>
public sealed record TestDatabase(string Name, string ConnectionString) : IAsyncDisposable
{
    public async ValueTask DisposeAsync()
    {
        await using (var pooled = new NpgsqlConnection(ConnectionString))
            NpgsqlConnection.ClearPool(pooled);
        await PostgresServer.DropAsync(Name);
    }
}
