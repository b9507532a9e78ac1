using System.Runtime.CompilerServices;
using System.Security.Claims;
using Bunit;
using GrindShop.Shop;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
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

    /// <summary>The new order, agreed on a blank with a case, so that a blank too thin for it can be measured.</summary>
    public async Task<WaitingPiece> AcceptNewAsync()
    {
        var (desk, batch) = (Get<OrderDesk>(), Get<BatchAllocation>());
        var order = (await desk.FindAsync(New))!;
        var part = (await Get<NextBest>().RankAsync(order.First)).First(blank => blank.Option is { Fit.Usable: true, Part.CaseDepthIn: not null }).Option.Part.PartNumber;
        order = (await desk.QuoteAsync(New, order.Version, part, [new PriceLine("base", "Grinding", 300m)], "Imka")).Value!;
        order = (await desk.AcceptAsync(New, order.Version, DateOnly.FromDateTime(DateTime.UtcNow).AddDays(20), "Imka")).Value!;
        return (await batch.WaitingAsync()).Single(piece => piece.Order.Number == New);
    }

    /// <summary>Blanks come in as the catalog has them.</summary>
    public async Task<BlankLot> ReceiveAsync(string part) =>
        (await Get<Receiving>().ReceiveAsync(new Receipt { PartNumber = part, Quantity = 3, Location = "B1", Key = Guid.NewGuid().ToString("N") }, "Imka")).Value!;

    /// <summary>Measures the lot with hardly any case: no cam comes out of it.</summary>
    public async Task<BlankLot> ThinAsync(string lot)
    {
        Assert.True((await Get<StockRoom>().MeasureAsync(new(lot, null, "Ann", Guid.NewGuid().ToString("N")), new SampleFigures(1, null, .005, null, null))).Succeeded);
        return (await Get<StockRoom>().FindAsync(lot))!;
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
