using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Records;

public static class Migrate
{
    /// <summary>Brings the database to the newest shape and then runs <paramref name="then"/> (such as loading a scenario), one node at a time.</summary>
    public static async Task UnderLockAsync(string connectionString, Func<ShopDb, Task> then, CancellationToken cancel = default)
    {
        await using var connection = new NpgsqlConnection(connectionString);
        await connection.OpenAsync(cancel);
        await Run(connection, "SELECT pg_advisory_lock($1)", cancel);
        try
        {
            await using var db = new ShopDb(new DbContextOptionsBuilder<ShopDb>().UseShop(connectionString).Options);
            await db.Database.MigrateAsync(cancel);
            await then(db);
        }
        finally
        {
            await Run(connection, "SELECT pg_advisory_unlock($1)", CancellationToken.None);
        }
    }

    private static async Task Run(NpgsqlConnection connection, string sql, CancellationToken cancel)
    {
        await using var command = new NpgsqlCommand(sql, connection) { Parameters = { new() { Value = Turn.Migrating } }, CommandTimeout = 0 };
        await command.ExecuteNonQueryAsync(cancel);
    }
}
