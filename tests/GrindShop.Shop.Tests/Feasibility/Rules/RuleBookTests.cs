using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Tests.Feasibility.Rules;

/// <summary>The owner changes rules; each change is at once what everybody answers from, and stays in the history.</summary>
public sealed class RuleBookTests : IAsyncLifetime
{
    private const string Written = "gear/rear/steel/nitrocarburizedSteel", Unwritten = "pump/steel5160";
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

    [Theory]
    [InlineData(Written)]
    [InlineData(Unwritten)]
    public async Task A_change_counts_on_every_node_and_is_written_down(string key)
    {
        await _there.Catalog.ContentAsync();
        var before = await RuleAsync(key);

        var changed = (await ChangeAsync(before, RuleVerdict.No, "Two came back broken.")).Value!;

        Assert.Equal((RuleVerdict.No, "Two came back broken."), (changed.Verdict, changed.Reason));
        Assert.Contains((await _there.Catalog.ContentAsync()).Rules.All, rule => rule.Key == key && rule.Reason == "Two came back broken.");
        var line = Assert.Single((await _here.Rules.FindAsync(key))!.Value.History);
        Assert.Equal((key, before.Subject, before.Words, "no: Two came back broken.", "Returns in March.", "Owner", TestShop.Now),
            (line.Key, line.Subject, line.Before, line.After, line.Why, line.By, line.At));
    }

    [Theory]
    [InlineData(Written)]
    [InlineData(Unwritten)]
    public async Task The_slower_of_two_editors_is_told_what_changed_and_nothing_is_lost(string key)
    {
        var seen = await RuleAsync(key);
        Assert.True((await ChangeAsync(seen, RuleVerdict.Ok, "The first one's words.")).Succeeded);

        var late = await ChangeAsync(seen, RuleVerdict.No, "The second one's words.");

        Assert.Equal("stale", late.Refusal!.Code);
        Assert.Contains("The first one's words.", late.Refusal.Reason, StringComparison.Ordinal);
        Assert.Equal("The first one's words.", (await RuleAsync(key)).Reason);
        Assert.True((await ChangeAsync(await RuleAsync(key), RuleVerdict.No, "The second one's words.")).Succeeded);
    }

    [Fact]
    public async Task Of_two_at_once_one_wins()
    {
        var seen = await RuleAsync(Unwritten);

        var both = await Task.WhenAll(ChangeAsync(seen, RuleVerdict.No, "One."), _there.Rules.ChangeAsync(Edit(seen, RuleVerdict.Ok, "Other."), "Other owner"));

        Assert.Single(both, outcome => outcome.Succeeded);
        Assert.Equal("stale", both.Single(outcome => !outcome.Succeeded).Refusal!.Code);
        Assert.Single((await _here.Rules.FindAsync(Unwritten))!.Value.History);
    }

    [Theory]
    [InlineData("", "why", "noReason")]
    [InlineData("Reason.", " ", "noWhy")]
    [InlineData("Reason\u0007.", "why", "badText")]
    public async Task What_says_nothing_is_refused(string reason, string why, string code) =>
        Assert.Equal(code, (await _here.Rules.ChangeAsync(new RuleEdit(Written, (await RuleAsync(Written)).Version, RuleVerdict.No, reason, why), "Owner")).Refusal!.Code);

    [Fact]
    public async Task The_same_again_is_no_change()
    {
        var rule = await RuleAsync(Written);

        Assert.Equal("unchanged", (await ChangeAsync(rule, rule.Verdict, rule.Reason)).Refusal!.Code);
    }

    [Fact]
    public async Task History_is_never_rewritten()
    {
        await ChangeAsync(await RuleAsync(Written), RuleVerdict.No, "Once.");
        await using var db = _here.Db();

        await Assert.ThrowsAsync<PostgresException>(() => db.RuleChanges.ExecuteDeleteAsync());
        await Assert.ThrowsAsync<PostgresException>(() => db.RuleChanges.ExecuteUpdateAsync(row => row.SetProperty(change => change.Why, "other")));
    }

    [Fact]
    public async Task An_order_that_was_answered_keeps_its_answer()
    {
        await using var db = _here.Db();
        var order = (await db.Orders.AsNoTracking().OrderByDescending(order => order.Id).Take(40).ToListAsync()).First(order => order.First.Answer is { Blanks.Count: > 0 });
        var gear = order.First.Answer!.Blanks[0];
        foreach (var rule in (await _here.Rules.AllAsync()).Where(rule => rule is GearRule or LifterRule))
            await ChangeAsync(rule, RuleVerdict.No, "Not any more.");

        var kept = (await _here.Desk.FindAsync(order.Number))!.First.Answer!;
        var anew = await _here.Catalog.JudgeAsync(kept.Grind);

        Assert.Equal((gear.PartNumber, gear.Gear), (kept.Blanks[0].PartNumber, kept.Blanks[0].Gear));
        Assert.Contains("Not any more.", anew.Blanks[0].Reasons);
    }

    private async Task<CompatibilityRule> RuleAsync(string key) => (await _here.Rules.FindAsync(key))!.Value.Rule;

    private Task<Outcome<CompatibilityRule>> ChangeAsync(CompatibilityRule seen, RuleVerdict verdict, string reason) =>
        _here.Rules.ChangeAsync(Edit(seen, verdict, reason), "Owner");

    private static RuleEdit Edit(CompatibilityRule seen, RuleVerdict verdict, string reason) => new(seen.Key, seen.Version, verdict, reason, "Returns in March.");
}
