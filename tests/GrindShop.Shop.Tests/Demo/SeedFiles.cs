using GrindShop.Shop.Demo;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Tests.Demo;

/// <summary>The demo scenario as it stands in the repository.</summary>
internal static class SeedFiles
{
    private static readonly Lazy<ScenarioReading> Read = new(() => ScenarioReader.Read(Folder));

    public static string Folder => Path.Combine(Root(new DirectoryInfo(AppContext.BaseDirectory)), "seed");

    public static ScenarioReading Reading => Read.Value;

    public static ShopScenario Scenario => Reading.Scenario ?? throw new InvalidOperationException(string.Join('\n', Reading.Problems));

    private static string Root(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "GrindShop.sln")) ? folder.FullName : Root(folder.Parent!);
}
