using System.Runtime.CompilerServices;
using System.Security.Claims;
using Bunit;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Records;
using GrindShop.Shop;
using GrindShop.Testing;
using GrindShop.Web.Security;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;

namespace GrindShop.Web.Tests.Desk;

/// <summary>The demo shop with a handful of its orders, one of each state, in a database of the test's own.</summary>
public sealed class StaffShop : IAsyncLifetime
{
    public const string Shipped = "C1001", InWork = "C1002", Job = "J1002", Quoted = "C1003", Accepted = "C1004", New = "C1005";

    /// <summary>Rows of the scenario, one of each state above; numbers are drawn in the order of the rows.</summary>
    private static readonly string[] Rows = ["1004", "1180", "1190", "1192", "1198"];

    private static readonly TemplateDatabase Template = new("staff", LoadAsync);
    private TestDatabase? _database;
    private ServiceProvider? _services;

    public T Get<T>() where T : notnull => _services!.GetRequiredService<T>();

    public async Task InitializeAsync()
    {
        _database = await Template.CopyAsync();
        _services = (ServiceProvider)Add(new ServiceCollection()).BuildServiceProvider();
    }

    public async Task DisposeAsync()
    {
        await _services!.DisposeAsync();
        await _database!.DisposeAsync();
    }

    /// <summary>A browser page of one signed-in person on this shop.</summary>
    public BunitContext Browser(string person, params string[] policies)
    {
        var browser = new BunitContext();
        browser.JSInterop.Mode = JSRuntimeMode.Loose;
        Add(browser.Services);
        var who = browser.AddAuthorization();
        who.SetAuthorized(person);
        who.SetPolicies(policies);
        who.SetClaims(new Claim(ClaimTypes.GivenName, person));
        return browser;
    }

    /// <summary>Ends when a change listener stands on the line of this shop's database.</summary>
    public async Task IsListeningAsync()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        await using var command = Get<NpgsqlDataSource>().CreateCommand(
            "SELECT count(*) FROM pg_stat_activity WHERE datname = current_database() AND state = 'idle' AND query LIKE 'LISTEN%'");
        while (await command.ExecuteScalarAsync(patience.Token) is 0L)
            await Task.Yield();
    }

    private IServiceCollection Add(IServiceCollection services)
    {
        services.AddLogging();
        services.AddShop(_database!.ConnectionString);
        return services;
    }

    private static async Task LoadAsync(string connectionString)
    {
        using var folder = TestFolder.Make();
        CopySeed(folder.Path);
        await Migrate.UnderLockAsync(connectionString, db => Scenario.LoadAsync(db, folder.Path));
    }

    private static void CopySeed(string folder)
    {
        var seed = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "../../../seed"));
        foreach (var file in Directory.GetFiles(seed))
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        var kept = File.ReadLines(Path.Combine(seed, "orders.csv")).Where((row, line) => line == 0 || Rows.Contains(row.Split(',')[0])).ToList();
        File.WriteAllLines(Path.Combine(folder, "orders.csv"), kept);
    }

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
