using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Buying;

public sealed class PurchasingTests : IAsyncLifetime
{
    private const string Part = "RV8R-516-08", Vendor = "BRISKMILL", Other = "RV8R-516-09";

    private TestDatabase _database = null!;
    private TestShop _one = null!, _two = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        (_one, _two) = (new TestShop(_database), new TestShop(_database, "two"));
    }

    public async Task DisposeAsync()
    {
        await _one.DisposeAsync();
        await _two.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task A_delivery_leaves_on_order_and_enters_stock_in_one_step()
    {
        var before = await StockAsync();
        var purchase = await SentAsync(6);
        Assert.Equal(before with { OnOrder = before.OnOrder + 6 }, await StockAsync());

        var receipt = (await _one.Purchasing.ReceiveAsync(purchase.Number, Delivery(4), "Owner")).Value!;

        Assert.Equal(before with { OnHand = before.OnHand + 4, Available = before.Available + 4, OnOrder = before.OnOrder + 2 }, await StockAsync());
        var found = (await _two.Purchasing.FindAsync(purchase.Number))!;
        Assert.Equal((PurchaseState.PartlyReceived, 2), (found.State, found.Lines[0].Missing));
        await using var db = _one.Db();
        var lot = await db.BlankLots.Include(lot => lot.Supplier).Include(lot => lot.Movements).SingleAsync(lot => lot.Id == receipt.BlankLotId);
        Assert.Equal((4, "H 77", purchase.Number, Vendor), (lot.OnHand, lot.HeatNumber, lot.PurchaseLine, lot.Supplier!.Code));
        Assert.Equal(StockMovementKind.Receipt, Assert.Single(lot.Movements).Kind);
    }

    [Fact]
    public async Task The_same_delivery_ten_times_at_once_is_booked_once()
    {
        var purchase = await SentAsync(6);
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 10).Select(i => Task.Run(() => (i % 2 == 0 ? _one : _two).Purchasing.ReceiveAsync(purchase.Number, Delivery(4), "Owner"))));

        Assert.All(outcomes, outcome => Assert.Equal(outcomes[0].Value!.Id, outcome.Value!.Id));
        Assert.Equal(2, (await _one.Purchasing.FindAsync(purchase.Number))!.Lines[0].Missing);
    }

    [Fact]
    public async Task Of_two_deliveries_at_once_that_are_too_much_together_one_is_refused()
    {
        var purchase = await SentAsync(6);
        var outcomes = await Task.WhenAll(
            _one.Purchasing.ReceiveAsync(purchase.Number, Delivery(4, "a"), "Owner"), _two.Purchasing.ReceiveAsync(purchase.Number, Delivery(4, "b"), "Owner"));

        Assert.Equal("tooMany", Assert.Single(outcomes, outcome => !outcome.Succeeded).Refusal!.Code);
        Assert.Equal(4, (await _one.Purchasing.FindAsync(purchase.Number))!.Lines[0].Received);
    }

    [Fact]
    public async Task A_refused_delivery_leaves_stock_and_order_alone()
    {
        var purchase = await SentAsync(6);
        var before = await StockAsync();
        Assert.Equal("tooMany", (await _one.Purchasing.ReceiveAsync(purchase.Number, Delivery(7), "Owner")).Refusal!.Code);
        Assert.Equal("noLocation", (await _one.Purchasing.ReceiveAsync(purchase.Number, Delivery(2) with { Location = " " }, "Owner")).Refusal!.Code);
        Assert.Equal("notOnOrder", (await _one.Purchasing.ReceiveAsync(purchase.Number, Delivery(2) with { PartNumber = Other }, "Owner")).Refusal!.Code);
        Assert.Equal(before, await StockAsync());
    }

    [Fact]
    public async Task Whoever_decides_on_an_older_state_is_told_what_changed()
    {
        var purchase = await DraftAsync(6);
        Assert.True((await _one.Purchasing.WantAsync(purchase.Number, purchase.Version, Part, Wish(9), "Hollis")).Succeeded);

        var late = await _two.Purchasing.SendAsync(purchase.Number, purchase.Version, "Imka");

        Assert.Equal("stale", late.Refusal!.Code);
        Assert.Contains("Hollis changed this order", late.Refusal.Reason);
        Assert.Equal(PurchaseState.Draft, (await _one.Purchasing.FindAsync(purchase.Number))!.State);
    }

    [Fact]
    public async Task Two_who_send_at_once_send_once()
    {
        var purchase = await DraftAsync(6);
        var outcomes = await Task.WhenAll(
            _one.Purchasing.SendAsync(purchase.Number, purchase.Version, "Hollis"), _two.Purchasing.SendAsync(purchase.Number, purchase.Version, "Imka"));

        Assert.Equal("stale", Assert.Single(outcomes, outcome => !outcome.Succeeded).Refusal!.Code);
        Assert.Single((await _one.Purchasing.FindAsync(purchase.Number))!.History, line => line.Kind == PurchaseEventKind.Sent);
    }

    [Fact]
    public async Task One_click_twice_makes_one_draft()
    {
        var wishes = new Dictionary<string, PurchaseWish> { [Part] = Wish(6), [Other] = Wish(3) };
        var drafts = await Task.WhenAll(
            _one.Purchasing.DraftAsync(Vendor, wishes, "click", "From the reorder points.", "Owner"), _two.Purchasing.DraftAsync(Vendor, wishes, "click", "From the reorder points.", "Owner"));

        Assert.Equal(drafts[0].Value!.Number, drafts[1].Value!.Number);
        Assert.Equal(2, (await _one.Purchasing.FindAsync(drafts[0].Value!.Number))!.Lines.Count);
    }

    [Fact]
    public async Task A_draft_with_a_wrong_wish_is_not_made()
    {
        Assert.Equal("otherVendor", (await _one.Purchasing.DraftAsync("CLAYBED", new Dictionary<string, PurchaseWish> { [Part] = Wish(6) }, "k", "", "Owner")).Refusal!.Code);
        Assert.Equal("unknownPart", (await _one.Purchasing.DraftAsync(Vendor, new Dictionary<string, PurchaseWish> { ["NO-SUCH"] = Wish(6) }, "k", "", "Owner")).Refusal!.Code);
        await using var db = _one.Db();
        Assert.False(await db.PurchaseOrders.AnyAsync(purchase => purchase.CommandKey == "k"));
    }

    [Fact]
    public async Task A_part_comes_off_a_draft_and_a_draft_can_be_dropped()
    {
        var purchase = await DraftAsync(6);
        var dropped = (await _one.Purchasing.DropAsync(purchase.Number, purchase.Version, Part, "Owner")).Value!;
        Assert.Empty((await _one.Purchasing.FindAsync(purchase.Number))!.Lines);
        Assert.True((await _one.Purchasing.CloseAsync(purchase.Number, dropped.Version, "not needed", "Owner")).Succeeded);
    }

    /// <summary>What the database itself refuses, whoever asks.</summary>
    [Theory]
    [InlineData("UPDATE purchase_events SET what = 'never was'", "23001")]
    [InlineData("DELETE FROM purchase_receipts", "23001")]
    [InlineData("TRUNCATE purchase_events", "23001")]
    [InlineData("UPDATE purchase_lines SET received = received + 1, more_why = 'x'", "23514")]
    [InlineData("UPDATE purchase_lines SET quantity = 3", "23514")]
    [InlineData("UPDATE purchase_orders SET sent_at = NULL", "23514")]
    [InlineData("UPDATE buying_rules SET service_level = 1", "23514")]
    [InlineData("UPDATE blank_parts SET least_quantity = 0", "23514")]
    [InlineData("INSERT INTO blank_sources (blank_part_id, supplier_id, supplier_part, cost, lead_time_days, least_quantity) SELECT id, supplier_id, '', -1, 1, 1 FROM blank_parts LIMIT 1", "23514")]
    [InlineData("UPDATE supply_terms SET multiple = 0", "23514")]
    public async Task The_database_holds_the_books_together(string statement, string state)
    {
        var purchase = await SentAsync(6);
        Assert.True((await _one.Purchasing.ReceiveAsync(purchase.Number, Delivery(4), "Owner")).Succeeded);
        Assert.True((await _one.Terms.SellAsync(Other, await VersionAsync(Other), new TermsWanted(1, 0, [], null))).Succeeded);
        Assert.Equal(state, (await Assert.ThrowsAsync<Npgsql.PostgresException>(() => Sql.RunAsync(_database.ConnectionString, statement))).SqlState);
    }

    [Fact]
    public async Task Terms_and_assumptions_are_set_on_the_state_that_was_seen()
    {
        var wanted = new TermsWanted(5, 150m, [new(10, 160m), new(50, 140m)], .9);
        Assert.True((await _one.Terms.SellAsync(Other, await VersionAsync(Other), wanted)).Succeeded);
        Assert.Equal("stale", (await _two.Terms.SellAsync(Other, 0, wanted)).Refusal!.Code);
        var need = (await _two.BuyingBook.NeedsAsync()).Single(need => need.Part.PartNumber == Other);
        Assert.Equal((5, 150m, .9, 140m), (need.Terms.Multiple, need.Terms.SetupCharge, need.ServiceLevel, need.Terms.UnitPrice(60)));

        var rules = await _one.BuyingBook.RulesAsync();
        var assumed = new BuyingAssumptions(.9, 50m, .1, 2m, .02, 3);
        Assert.True((await _one.Terms.AssumeAsync(rules.Version, assumed)).Succeeded);
        Assert.Equal("stale", (await _two.Terms.AssumeAsync(rules.Version, assumed)).Refusal!.Code);
        Assert.Equal(.9, (await _two.BuyingBook.RulesAsync()).ServiceLevel);
    }

    [Fact]
    public async Task Demand_counts_blanks_taken_and_cams_that_wait_but_not_blanks_given_back()
    {
        var (part, _) = await _one.StockAsync(5);
        await WatchedSinceAsync(part.PartNumber, TestShop.Now.AddDays(-70));
        var before = await NeedAsync(part.PartNumber);
        var orders = await _one.AcceptedOrdersAsync(part.PartNumber, 3);
        Assert.True((await _one.StartAsync(orders[0], part.PartNumber)).Succeeded);

        var after = await NeedAsync(part.PartNumber);

        Assert.Equal(before.Stock with { Allocated = before.Stock.Allocated + 1, Available = before.Stock.Available - 1, Waiting = before.Stock.Waiting + 2 }, after.Stock);
        Assert.Equal(before.History.Wanted + 3, after.History.Wanted);
        Assert.Equal(10, after.History.Weeks.Count);

        await using var db = _one.Db();
        var held = await db.WholeLots().SingleAsync(lot => lot.LotNumber.StartsWith("TEST-") && lot.Allocated > 0);
        Assert.True(held.Release(held.HeldBy[0], "Owner", TestShop.Now, "customer called it off").Succeeded);
        await db.SaveChangesAsync();
        Assert.Equal(before.History.Wanted + 2, (await NeedAsync(part.PartNumber)).History.Wanted);
    }

    /// <summary>The demo's three-piece roller blank is sold by two: from one up within 35 days, or cheaper from six up within 52.</summary>
    [Fact]
    public async Task Each_supplier_sells_on_its_own_terms_and_buying_follows_the_usual_one()
    {
        await using var db = _one.Db();
        var part = await db.WholeParts().AsNoTracking().SingleAsync(part => part.PartNumber == Part);
        var other = Assert.Single(part.OtherSources);
        Assert.True((await _one.Terms.SellAsync(Part, await VersionAsync(Part), new TermsWanted(2, 90m, [new(8, 160m)], .97))).Succeeded);
        var there = (await _one.BuyingBook.NeedsFromAsync(other.SupplierId)).Single(need => need.Part.PartNumber == Part);
        Assert.Equal((6, 1, 0m, 166.5m, .97), (there.Terms.LeastQuantity, there.Terms.Multiple, there.Terms.SetupCharge, there.Terms.UnitPrice(50), there.ServiceLevel));

        var few = Wish(5) with { UnusualWhy = null };
        Assert.Equal("tooFew", (await OrderAsync(other.Supplier.Code, few, "few")).Refusal!.Code);
        Assert.Equal("otherVendor", (await OrderAsync("DEEPCASE", few, "wrong")).Refusal!.Code);
        Assert.True((await OrderAsync(other.Supplier.Code, few with { Quantity = 7 }, "enough")).Succeeded);

        var saved = await _one.Of<CatalogDesk>().SaveAsync(SourceText.BoughtFrom(part, other.Supplier.Code), part.Version, "cheaper", "Owner");
        Assert.NotNull(saved.Saved);
        var need = await NeedAsync(Part);
        Assert.Equal((other.SupplierId, 6, 166.5m, 1, .97), (need.Part.SupplierId, need.Terms.LeastQuantity, need.Terms.UnitPrice(50), need.Terms.Multiple, need.ServiceLevel));
        Assert.Equal((part.Supplier.Code, 174m, 35, 1), need.Part.OtherSources.Select(source => (source.Supplier.Code, source.Cost, source.LeadTimeDays, source.LeastQuantity)).Single());
    }

    private Task<Outcome<PurchaseOrder>> OrderAsync(string vendor, PurchaseWish wish, string key) =>
        _one.Purchasing.DraftAsync(vendor, new Dictionary<string, PurchaseWish> { [Part] = wish }, key, "By hand.", "Owner");

    private async Task WatchedSinceAsync(string partNumber, DateTimeOffset at)
    {
        await using var db = _one.Db();
        db.Add(BlankLot.Receive(await db.BlankParts.SingleAsync(part => part.PartNumber == partNumber), "TEST-OLD", "A1", 1, "Owner", at));
        await db.SaveChangesAsync();
    }

    private async Task<PartNeed> NeedAsync(string part) => (await _two.BuyingBook.NeedsAsync()).Single(need => need.Part.PartNumber == part);

    private async Task<uint> VersionAsync(string part) => (await NeedAsync(part)).Terms.Version;

    private async Task<StockPosition> StockAsync() => (await NeedAsync(Part)).Stock;

    private async Task<PurchaseOrder> DraftAsync(int quantity)
    {
        var draft = await _one.Purchasing.DraftAsync(Vendor, new Dictionary<string, PurchaseWish> { [Part] = Wish(quantity) }, $"draft {quantity}", "By hand.", "Owner");
        return (await _one.Purchasing.FindAsync(draft.Value!.Number))!;
    }

    private async Task<PurchaseOrder> SentAsync(int quantity)
    {
        var draft = await DraftAsync(quantity);
        Assert.True((await _one.Purchasing.SendAsync(draft.Number, draft.Version, "Owner")).Succeeded);
        return draft;
    }

    private static PurchaseWish Wish(int quantity) => new(quantity, 174m, 0, DateOnly.FromDateTime(TestShop.Now.UtcDateTime).AddDays(35), "test");

    private static Delivery Delivery(int quantity, string key = "d1") => new() { PartNumber = Part, Quantity = quantity, Location = "B9-1", HeatNumber = "H 77", Key = key };
}
