using Npgsql;

namespace GrindShop.Testing;

/// <summary>
/// A database built once per process and copied for every test class that asks.
/// <code>
/// static readonly TemplateDatabase Shop = new("shop", async connection => await MigrateAsync(connection));
/// await using var database = await Shop.CopyAsync();
/// </code>
/// </summary>
/// <param name="name">Starts the names of the template and its copies; lower case.</param>
/// <param name="build">Given a connection string to the empty database, migrates and fills it.</param>
public sealed class TemplateDatabase(string name, Func<string, Task> build)
{
    private readonly Lazy<Task<string>> template = new(() => BuildAsync(Unique(name), build));

    public async Task<TestDatabase> CopyAsync()
    {
        var copy = Unique(name);
        await PostgresServer.RunAsync($"CREATE DATABASE {copy} TEMPLATE {await template.Value}");
        return new(copy, await PostgresServer.ConnectionStringAsync(copy));
    }

    private static async Task<string> BuildAsync(string template, Func<string, Task> build)
    {
        await PostgresServer.RunAsync($"CREATE DATABASE {template}");
        if (PostgresServer.IsKept) AppDomain.CurrentDomain.ProcessExit += (_, _) => PostgresServer.DropAsync(template).GetAwaiter().GetResult();
        await build(await WithoutPoolAsync(template));
        return template;
    }

    // A pooled connection left open would keep the template from being copied.
    private static async Task<string> WithoutPoolAsync(string template) =>
        new NpgsqlConnectionStringBuilder(await PostgresServer.ConnectionStringAsync(template)) { Pooling = false }.ToString();

    private static string Unique(string name) => $"{name}_{Guid.NewGuid():N}";
}
