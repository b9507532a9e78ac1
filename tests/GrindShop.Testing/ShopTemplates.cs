using GrindShop.Shop.Records;
namespace GrindShop.Testing;

/// <summary>The shop's databases to copy: migrated and empty, or with the demo scenario of the repository.</summary>
public static class ShopTemplates
{
    public static readonly TemplateDatabase Empty = new("shop_empty", connection => Migrate.UnderLockAsync(connection, _ => Task.CompletedTask));

    public static readonly TemplateDatabase Scenario = new("shop_scenario", connection => Migrate.UnderLockAsync(connection, db => Shop.Demo.Scenario.LoadAsync(db, SeedFolder)));

    public static string SeedFolder => Path.Combine(Root(new DirectoryInfo(AppContext.BaseDirectory)).FullName, "seed");

    private static DirectoryInfo Root(DirectoryInfo folder) =>
        File.Exists(Path.Combine(folder.FullName, "GrindShop.sln")) ? folder : Root(folder.Parent ?? throw new DirectoryNotFoundException("The tests do not lie inside the repository."));
}
