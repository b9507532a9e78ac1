using GrindShop.Shop.Records;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Records;

/// <summary>The owner changes the shop's settings: checked, written down field by field, counted at once.</summary>
public sealed class ShopSettingsBookTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _here = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _here = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _here.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Each_changed_field_is_a_line_and_counts_at_once()
    {
        var result = await ChangeAsync(await VersionAsync(), ("cleanupIn", ".006"), ("timeZone", "America/Denver"), ("phone", "(555) 555-0100"));

        Assert.True(result.Succeeded);
        var settings = (await _here.Catalog.ContentAsync()).Rules.Settings;
        Assert.Equal((.006, "America/Denver"), (settings.CleanupIn, settings.TimeZone));
        var history = (await _here.ShopBook.ReadAsync()).History;
        Assert.Equal([("shop/cleanupIn", "0.004 in", "0.006 in"), ("shop/timeZone", "America/Chicago", "America/Denver")],
            history.OrderBy(line => line.Key).Select(line => (line.Key, line.Before, line.After)));
    }

    [Theory]
    [InlineData("cleanupIn", "0.031")]
    [InlineData("cleanupIn", "NaN")]
    [InlineData("timeZone", "Middle/Earth")]
    [InlineData("email", "nobody")]
    [InlineData("usualGrindDays", "0")]
    [InlineData("usualGrindDays", "2.5")]
    [InlineData("blankMarkup", "0.9")]
    [InlineData("shopName", " ")]
    public async Task What_cannot_be_is_named_at_its_field_and_nothing_is_saved(string field, string text)
    {
        var result = await ChangeAsync(await VersionAsync(), (field, text), ("address", "2 Mill Race"));

        Assert.Equal([field], result.Wrong.Keys);
        Assert.DoesNotContain("2 Mill Race", (await _here.ShopBook.ReadAsync()).Settings.Address);
    }

    [Fact]
    public async Task The_slower_of_two_is_told()
    {
        var seen = await VersionAsync();
        Assert.True((await ChangeAsync(seen, ("usualGrindDays", "9"))).Succeeded);

        var late = await ChangeAsync(seen, ("usualGrindDays", "8"));

        Assert.Equal("stale", late.Refusal!.Code);
        Assert.Contains("9 working days", late.Refusal.Reason, StringComparison.Ordinal);
    }

    private async Task<uint> VersionAsync() => (await _here.ShopBook.ReadAsync()).Settings.Version;

    private Task<ShopEditResult> ChangeAsync(uint version, params (string Key, string Text)[] texts) =>
        _here.ShopBook.ChangeAsync(new ShopEdit(version, texts.ToDictionary(text => text.Key, text => text.Text), "New machine."), "Owner");
}
