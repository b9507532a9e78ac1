namespace GrindShop.Shop.Records;
public sealed class ScenarioException(string message) : Exception(message);
public static class Scenario { public static Task LoadAsync(ShopDb db, string folder, CancellationToken cancel = default) => Task.CompletedTask; }
