using Npgsql;

namespace GrindShop.Shop.Tests.Records;

internal static class Sql
{
    public static string Host(string connectionString) => new NpgsqlConnectionStringBuilder(connectionString).Host!;

    public static async Task<object?> AskAsync(string connectionString, string question)
    {
        await using var source = NpgsqlDataSource.Create(connectionString + ";Pooling=false");
        await using var command = source.CreateCommand(question);
        return await command.ExecuteScalarAsync();
    }

    public static Task RunAsync(string connectionString, string statement) => AskAsync(connectionString, statement);
}
