using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Npgsql;

namespace GrindShop.Shop.Tests.Orders;

public sealed class OrderDeskTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private Order _order = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        _order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Second_of_two_who_edit_one_order_is_refused_and_told_who_did_what()
    {
        await QuoteAsync("Petra");
        var before = await SnapshotAsync();

        var second = await _shop.Desk.DeclineAsync(_order.Number, _order.Version, "No time.", "Milo");

        Assert.Equal("stale", second.Refusal!.Code);
        Assert.Contains("Petra changed this order", second.Refusal.Reason, StringComparison.Ordinal);
        Assert.Contains("Priced at $300.00", second.Refusal.Reason, StringComparison.Ordinal);
        Assert.Equal(before, await SnapshotAsync());
    }

    [Fact]
    public async Task Of_several_who_save_at_the_same_moment_one_succeeds()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => QuoteAsync($"Desk {i}"))));

        var saved = Assert.Single(outcomes, outcome => outcome.Succeeded);
        Assert.All(outcomes.Where(outcome => outcome != saved), outcome => Assert.Contains(saved.Value!.History[^1].By, outcome.Refusal!.Reason, StringComparison.Ordinal));
        Assert.Equal(2, (await _shop.Desk.FindAsync(_order.Number))!.History.Count);
    }

    [Fact]
    public async Task Correction_with_something_wrong_changes_nothing()
    {
        var before = await SnapshotAsync();

        var outcome = await _shop.Desk.CorrectAsync(_order.Number, _order.Version, Wishes.Street with { LobeSeparationCamDeg = 20 }, "", "Petra");

        Assert.Equal("badSpec", outcome.Refusal!.Code);
        Assert.Equal(before, await SnapshotAsync());
    }

    [Fact]
    public async Task Blank_that_does_not_fit_is_not_priced()
    {
        var wrong = _order.First.Answer!.Blanks.First(blank => !blank.Fits).PartNumber;

        Assert.Equal("doesNotFit", (await _shop.Desk.QuoteAsync(_order.Number, _order.Version, wrong, SomeOrders.Lines, "Petra")).Refusal!.Code);
    }

    [Fact]
    public async Task Every_change_is_told_to_whoever_listens()
    {
        var heard = System.Threading.Channels.Channel.CreateUnbounded<string>();
        await using var connection = new NpgsqlConnection(_database.ConnectionString);
        await connection.OpenAsync();
        connection.Notification += (_, notice) => heard.Writer.TryWrite(notice.Payload);
        await using (var listen = new NpgsqlCommand($"LISTEN {ChangeNotice.Channel}", connection))
            await listen.ExecuteNonQueryAsync();

        await QuoteAsync("Petra");
        await connection.WaitAsync(TimeSpan.FromSeconds(30));

        Assert.Equal(_order.Number, await heard.Reader.ReadAsync());
    }

    [Fact]
    public async Task Cancelled_change_leaves_nothing_half_saved()
    {
        var before = await SnapshotAsync();
        using var cancel = new CancellationTokenSource();
        var order = await _shop.Desk.FindAsync(_order.Number);
        await cancel.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => _shop.Desk.QuoteAsync(order!.Number, order.Version, SomeOrders.Blank, SomeOrders.Lines, "Petra", cancel.Token));

        Assert.Equal(before, await SnapshotAsync());
    }

    [Fact]
    public async Task Failure_after_the_rows_are_written_and_before_the_notice_takes_them_back()
    {
        var before = await SnapshotAsync();
        await using var db = new ShopDb(new DbContextOptionsBuilder<ShopDb>().UseShop(_database.ConnectionString).AddInterceptors(new BreaksAfterSaving()).Options);
        var order = await db.Orders.Include(order => order.History).SingleAsync(order => order.Number == _order.Number);
        order.Quote(SomeOrders.Blank, SomeOrders.Lines, "Petra", TestShop.Now);

        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveAndTellAsync(order.Number, default));

        Assert.Equal(before, await SnapshotAsync());
    }

    private Task<Outcome<Order>> QuoteAsync(string by) => _shop.Desk.QuoteAsync(_order.Number, _order.Version, SomeOrders.Blank, SomeOrders.Lines, by);

    private async Task<string> SnapshotAsync() => System.Text.Json.JsonSerializer.Serialize(await _shop.Desk.FindAsync(_order.Number), ShopJson.Options);

    private sealed class BreaksAfterSaving : SaveChangesInterceptor
    {
        public override ValueTask<int> SavedChangesAsync(SaveChangesCompletedEventData data, int result, CancellationToken cancel = default) =>
            throw new InvalidOperationException("The power fails.");
    }
}
