using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Starting;

namespace GrindShop.Shop.Demo;

/// <summary>The scenario of a folder, or everything that is wrong in its files.</summary>
public sealed record ScenarioReading(ShopScenario? Scenario, IReadOnlyList<RowProblem> Problems);

/// <summary>Reads and checks a scenario's folder; touches no database.</summary>
public static class ScenarioReader
{
    public static ScenarioReading Read(string path)
    {
        var folder = new SeedFolder(path);
        var scenario = Read(folder);
        return new ScenarioReading(folder.Problems.Count == 0 ? scenario : null, folder.Problems);
    }

    private static ShopScenario? Read(SeedFolder folder)
    {
        var families = Keyed(folder, "engines.json", folder.List<EngineFamily>("engines.json"), family => family.Code, "code");
        var vendors = Keyed(folder, "vendors.json", folder.List<Vendor>("vendors.json"), vendor => vendor.Code, "code");
        EngineCheck.Check(folder, families.Values);
        var blanks = Keyed(folder, "blanks.csv", folder.Rows("blanks.csv").Select(row => BlankRow.Read(row, families, vendors)).OfType<BlankPart>(), part => part.PartNumber, "partNumber");
        var customers = Keyed(folder, "customers.csv", folder.Rows("customers.csv").Select(CustomerRow), customer => customer.Name!, "name");
        var lots = Keyed(folder, "stock.csv", folder.Rows("stock.csv").Select(row => LotRow.Read(row, blanks)).OfType<ScenarioLot>(), lot => lot.LotNumber, "lot");
        var (gears, lifters) = (folder.List<GearRule>("gears.json"), folder.List<LifterRule>("lifters.json"));
        var (prices, people) = (folder.Value<ScenarioPrices>("prices.json"), folder.List<ScenarioPerson>("people.json"));
        TableCheck.Check(folder, gears, lifters, prices, families, people);
        var orders = OrderRows.Read(folder, families, blanks, customers);
        var startRules = folder.Value<StartRules>("start-rules.json");
        GrindRows.CheckRules(folder, startRules, families);
        var grinds = Keyed(folder, "grinds.csv", GrindRows.Read(folder, families), grind => grind.Code, "code");
        return folder.Value<ShopSettings>("limits.json") is { } settings && prices is not null && startRules is not null
            ? new ShopScenario(settings, [.. families.Values], [.. vendors.Values], [.. blanks.Values], [.. lots.Values], [.. gears, .. lifters], prices, startRules, [.. grinds.Values], people, [.. customers.Values], orders, PurchaseRows.Read(folder, blanks, lots), PurchaseRows.Terms(folder, blanks))
            : null;
    }

    private static Contact CustomerRow(CsvRow row) => new() { Name = row.Text("name"), Email = row.Text("email"), Phone = row.Maybe("phone") };

    /// <summary>The entries by their key; a key that comes twice is a problem.</summary>
    private static Dictionary<string, T> Keyed<T>(SeedFolder folder, string file, IEnumerable<T> entries, Func<T, string> key, string field)
    {
        var keyed = new Dictionary<string, T>();
        foreach (var entry in entries)
            if (!keyed.TryAdd(key(entry), entry))
                folder.Wrong(file, key(entry), field, "This key comes twice.");
        return keyed;
    }
}
