using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>The owner changes the price list; the next price uses it on every node, and the change stays in the history.</summary>
public sealed class PriceBookTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _here = null!;
    private TestShop _there = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        (_here, _there) = (new TestShop(_database), new TestShop(_database, "two"));
    }

    public async Task DisposeAsync()
    {
        await _here.DisposeAsync();
        await _there.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task A_changed_price_is_the_next_price_on_the_other_node()
    {
        const string key = "base/RV8-R/hydraulicRoller";
        var before = await EntryAsync(key);

        Assert.True((await ChangeAsync(key, before.Version, 333.33m)).Succeeded);

        Assert.Contains((await _there.Prices.AllAsync()).OfType<BasePrice>(), price => price.Key == key && price.Amount == 333.33m);
        var line = Assert.Single((await _here.Prices.FindAsync(key))!.Value.History);
        Assert.Equal(("price/" + key, before.Words, "$333.33", "Steel went up.", "Owner"), (line.Key, line.Before, line.After, line.Why, line.By));
    }

    [Fact]
    public async Task An_option_is_added_changed_to_percent_and_taken_off()
    {
        const string key = "adder/CRATE";
        Assert.True((await _here.Prices.ChangeAsync(new PriceEdit(key, 0, 18, "asked for") { Name = "Wooden crate" }, "Owner")).Succeeded);
        var added = (PriceAdder)await EntryAsync(key);
        Assert.True((await _here.Prices.ChangeAsync(new PriceEdit(key, added.Version, 4, "fairer") { Name = "Wooden crate", Measure = AdderMeasure.Percent }, "Owner")).Succeeded);
        Assert.Contains((await _there.Desk.PriceRulesAsync()).ManualAdders, adder => adder is { Code: "CRATE", IsPercent: true, Amount: 4 });
        Assert.True((await ChangeAsync(key, (await EntryAsync(key)).Version, null)).Succeeded);

        Assert.DoesNotContain(await _here.Prices.AllAsync(), entry => entry.Key == key);
        var history = (await _here.Prices.FindAsync(key))!.Value.History;
        Assert.Equal(["", "Wooden crate: 4 %", "Wooden crate: $18.00"], history.Select(line => line.After));
    }

    [Fact]
    public async Task The_slower_of_two_is_told()
    {
        const string key = "break/4";
        var seen = await EntryAsync(key);
        Assert.True((await ChangeAsync(key, seen.Version, 6)).Succeeded);

        var late = await ChangeAsync(key, seen.Version, 7);

        Assert.Equal("stale", late.Refusal!.Code);
        Assert.Contains("6 %", late.Refusal.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("base/RV8-R/hydraulicRoller", 0, "badAmount")]
    [InlineData("base/RV8-R/hydraulicRoller", 12.345, "badAmount")]
    [InlineData("base/RV8-R/hydraulicRoller", 1e6, "badAmount")]
    [InlineData("break/4", 51, "badAmount")]
    [InlineData("adder/HEAT", -1, "noName")]
    [InlineData("adder/no such", 5, "unknown")]
    public async Task What_cannot_be_a_price_is_refused(string key, double amount, string code) =>
        Assert.Equal(code, (await ChangeAsync(key, (await _here.Prices.FindAsync(key))?.Entry.Version ?? 0, (decimal)amount)).Refusal!.Code);

    [Fact]
    public async Task What_applies_by_itself_cannot_be_taken_off() =>
        Assert.Equal("automatic", (await ChangeAsync("adder/HEAT", (await EntryAsync("adder/HEAT")).Version, null)).Refusal!.Code);

    private async Task<PriceEntry> EntryAsync(string key) => (await _here.Prices.FindAsync(key))!.Value.Entry;

    private Task<Outcome<PriceEntry>> ChangeAsync(string key, uint version, decimal? amount) =>
        _here.Prices.ChangeAsync(new PriceEdit(key, version, amount, "Steel went up."), "Owner");
}
