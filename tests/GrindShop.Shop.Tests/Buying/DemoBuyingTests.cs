using GrindShop.Shop.Buying;
using GrindShop.Shop.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Buying;

/// <summary>What the demo has of buying.</summary>
public sealed class DemoBuyingTests(DemoBuyingTests.OneScenario scenario) : IClassFixture<DemoBuyingTests.OneScenario>
{
    [Fact]
    public void Something_is_due_something_late_something_partly_here_and_something_drafted()
    {
        var today = scenario.Settings.Today(DateTimeOffset.UtcNow);
        Assert.InRange(scenario.Needs.Count(need => need.IsDue), 3, 40);
        Assert.Contains(scenario.Needs, need => !need.IsDue && need.History.Wanted > 0);
        Assert.Contains(scenario.Open, order => order.DaysLate(today) > 0);
        Assert.Contains(scenario.Open, order => order.State == PurchaseState.PartlyReceived);
        Assert.Contains(scenario.Open, order => order.State == PurchaseState.Draft);
        Assert.Contains(scenario.Open, order => order.IsOpen && order.DaysLate(today) == 0);
    }

    [Fact]
    public void Lead_times_come_from_the_years_deliveries()
    {
        Assert.Contains(scenario.Needs, need => need.Lead.Words.Contains("of this part"));
        Assert.All(scenario.Needs, need => Assert.DoesNotContain("assumed", need.Lead.Words));
    }

    [Fact]
    public void Service_is_never_below_what_is_wanted() =>
        Assert.All(scenario.Needs, need => Assert.True(need.Rule.CycleService >= need.ServiceLevel - 1e-9, need.Part.PartNumber));

    [Fact]
    public void Some_parts_have_too_little_history_and_say_so() =>
        Assert.Contains(scenario.Needs, need => need.History is { IsEnough: false, Wanted: > 0 } && need.Why.Contains("too little"));

    public sealed class OneScenario : IAsyncLifetime
    {
        private TestDatabase _database = null!;

        public IReadOnlyList<PartNeed> Needs { get; private set; } = [];

        public IReadOnlyList<PurchaseOrder> Open { get; private set; } = [];

        public ShopSettings Settings { get; private set; } = null!;

        public async Task InitializeAsync()
        {
            _database = await ShopTemplates.Scenario.CopyAsync();
            var factory = new Factory(_database.ConnectionString);
            Needs = await new BuyingBook(factory, TimeProvider.System).NeedsAsync();
            await using var db = factory.CreateDbContext();
            Settings = await db.Settings.SingleAsync();
            Open = await db.WholePurchases().Where(order => order.State != PurchaseState.Received && order.State != PurchaseState.Cancelled).ToListAsync();
        }

        public async Task DisposeAsync() => await _database.DisposeAsync();
    }

    private sealed class Factory(string connectionString) : IDbContextFactory<ShopDb>
    {
        public ShopDb CreateDbContext() => new(new DbContextOptionsBuilder<ShopDb>().UseShop(connectionString).Options);
    }
}
