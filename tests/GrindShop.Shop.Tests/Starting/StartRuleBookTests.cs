using GrindShop.Shop.Starting;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Npgsql;

namespace GrindShop.Shop.Tests.Starting;

public sealed class StartRuleBookTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    private StartRuleBook Book => _shop.Of<StartRuleBook>();

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Empty.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task A_change_is_a_new_set_with_who_when_and_why()
    {
        Assert.Null(await Book.CurrentAsync());
        Assert.True((await Book.SaveAsync(0, StartRules.Plain, "to begin with", "Hollis Verne")).Succeeded);
        Assert.True((await Book.SaveAsync(1, Wider, "the small blocks come out too short", "Hollis Verne")).Succeeded);
        var history = await Book.HistoryAsync();
        Assert.Equal([(2, "the small blocks come out too short"), (1, "to begin with")], history.Select(set => (set.Number, set.Why)));
        Assert.Equal("longer with each 10 cubic inches: 0 to 3", Assert.Single(StartRuleCheck.Changes(history[1].Rules, history[0].Rules)));
        Assert.Equal(TestShop.Now, history[0].At);
    }

    [Fact]
    public async Task Of_two_at_once_the_second_is_told_what_the_first_did()
    {
        await Book.SaveAsync(0, StartRules.Plain, "to begin with", "Hollis Verne");
        var both = await Task.WhenAll(Book.SaveAsync(1, Wider, "wider", "Hollis Verne"), Book.SaveAsync(1, Wider, "wider", "Somebody Else"));
        Assert.Single(both, outcome => outcome.Succeeded);
        Assert.Equal("stale", Assert.Single(both, outcome => !outcome.Succeeded).Refusal!.Code);
    }

    [Fact]
    public async Task Nothing_is_saved_without_a_reason_or_a_change()
    {
        Assert.Equal("why", (await Book.SaveAsync(0, StartRules.Plain, " ", "Hollis Verne")).Refusal?.Code);
        Assert.True((await Book.SaveAsync(0, StartRules.Plain, "to begin with", "Hollis Verne")).Succeeded);
        Assert.Equal("nothing", (await Book.SaveAsync(1, StartRules.Plain, "again", "Hollis Verne")).Refusal?.Code);
    }

    [Theory]
    [InlineData("UPDATE start_rule_sets SET by = 'nobody'")]
    [InlineData("DELETE FROM start_rule_sets")]
    [InlineData("TRUNCATE start_rule_sets")]
    [InlineData("UPDATE catalog_grind_events SET by = 'nobody'")]
    [InlineData("TRUNCATE catalog_grind_events")]
    public async Task Histories_are_only_added_to(string statement)
    {
        await using var scenario = await ShopTemplates.Scenario.CopyAsync();
        Assert.Equal(PostgresErrorCodes.RestrictViolation, (await Assert.ThrowsAsync<PostgresException>(() => Sql.RunAsync(scenario.ConnectionString, statement))).SqlState);
    }

    private static StartRules Wider => StartRules.Plain with { Cylinder = new CylinderRow(44, 3) };
}
