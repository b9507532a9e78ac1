using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Buying;

/// <summary>A replaced part is used up and not bought again; what was wanted of it is wanted of the part that replaces it.</summary>
public sealed class ReplacedPartTests : IAsyncLifetime
{
    /// <summary>In the demo the newer one replaces the older one; the third is of the same family.</summary>
    private const string Old = "SI6F-516-07", New = "SI6F-516-08", Newest = "SI6F-55-06";

    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Demand_and_stock_go_to_the_newest_of_the_chain()
    {
        await SetAsync(New, null);
        await TakeAsync(Old, "J-OLD", 3);
        await TakeAsync(New, "J-NEW", 5);
        var (old, middle, newest) = (await NeedAsync(Old), await NeedAsync(New), await NeedAsync(Newest));
        await SetAsync(New, Old);
        await SetAsync(Newest, New);

        var needs = await _shop.BuyingBook.NeedsAsync();

        Assert.DoesNotContain(needs, need => need.Part.PartNumber is Old or New);
        var need = Assert.Single(needs, need => need.Part.PartNumber == Newest);
        Assert.Equal([New, Old], need.Replaces);
        Assert.True(old!.History.Wanted > 0 && middle!.History.Wanted > 0);
        Assert.Equal(old.History.Wanted + middle!.History.Wanted + newest!.History.Wanted, need.History.Wanted);
        Assert.Equal(Math.Max(old.History.Weeks.Count, Math.Max(middle.History.Weeks.Count, newest.History.Weeks.Count)), need.History.Weeks.Count);
        Assert.Equal(old.Stock.Position + middle.Stock.Position + newest.Stock.Position, need.Stock.Position);
        Assert.DoesNotContain(await _shop.BuyingBook.NeedsFromAsync(old.Part.SupplierId), each => each.Part.PartNumber is Old or New);
    }

    [Fact]
    public async Task It_is_neither_put_on_an_order_nor_sent_on_one_drafted_before()
    {
        await SetAsync(New, null);
        var vendor = (await NeedAsync(Old))!.Part.Supplier.Code;
        var draft = (await DraftAsync(vendor, "before")).Value!;
        await SetAsync(New, Old);
        await SetAsync(Newest, New);

        var again = await DraftAsync(vendor, "after");
        var sent = await _shop.Purchasing.SendAsync(draft.Number, draft.Version, "Owner");

        Assert.All(new[] { again.Refusal!, sent.Refusal! }, refusal => Assert.Equal(("replaced", $"{Old} is replaced by {Newest} and not bought again: order {Newest} instead."), (refusal.Code, refusal.Reason)));
        Assert.Equal(PurchaseState.Draft, (await _shop.Purchasing.FindAsync(draft.Number))!.State);
        Assert.True((await _shop.Purchasing.DropAsync(draft.Number, draft.Version, Old, "Owner")).Succeeded);
    }

    [Fact]
    public async Task The_shelf_plan_knows_it_while_some_are_left_and_only_to_use_up()
    {
        var family = (await NeedAsync(New))!.Part.EngineFamily;
        await HoldBackAsync(Old);
        var (blanks, today, usedUp) = await Shelf();
        Assert.DoesNotContain(blanks, blank => blank.Part.PartNumber == Old);
        Assert.Contains(blanks, blank => blank.Part.PartNumber == New);
        Assert.Empty(usedUp);

        await TakeAsync(Old, "J-1", 1);
        (blanks, today, usedUp) = await Shelf();
        Assert.Contains(blanks, blank => blank.Part.PartNumber == Old);
        Assert.Contains(Old, today);
        Assert.Equal([Old], usedUp);

        Task<(IReadOnlyList<Shop.Feasibility.PreparedBlank>, IReadOnlyList<string>, IReadOnlyList<string>)> Shelf() => _shop.Of<ShelfBook>().BlanksAsync(family);
    }

    [Fact]
    public async Task No_mill_run_is_weighed_of_it_or_against_it_and_its_cams_count_for_the_newer_part()
    {
        await SetAsync(New, null);
        await _shop.AcceptedOrdersAsync(Old, 2);
        var runs = _shop.Of<MillRunBook>();
        var (old, middle) = ((await runs.FindAsync(Old))!, (await runs.FindAsync(New))!);
        Assert.Contains(middle.Alternatives, other => other.Part.PartNumber == Old);
        await SetAsync(New, Old);

        Assert.Null(await runs.FindAsync(Old));
        var facts = (await runs.FindAsync(New))!;
        Assert.True(old.PastCams >= 2);
        Assert.Equal(old.PastCams + middle.PastCams, facts.PastCams);
        Assert.DoesNotContain(facts.Alternatives, other => other.Part.PartNumber == Old);
    }

    [Fact]
    public async Task A_need_names_the_alternates_of_its_part_and_what_is_free_of_them()
    {
        var other = await NeedAsync("RV8R-516-08");
        Assert.Equal([new FreeAlternate("RV8R-516-08", other!.Stock.Available)], (await NeedAsync("RV8R-515-07"))!.Alternates);
    }

    private Task<Outcome<PurchaseOrder>> DraftAsync(string vendor, string key) =>
        _shop.Purchasing.DraftAsync(vendor, new Dictionary<string, PurchaseWish> { [Old] = new(6, 100m, 0, DateOnly.FromDateTime(TestShop.Now.UtcDateTime).AddDays(40), "as many as that") }, key, "By hand.", "Owner");

    private async Task<PartNeed?> NeedAsync(string part) => (await _shop.BuyingBook.NeedsAsync()).SingleOrDefault(need => need.Part.PartNumber == part);

    private Task SetAsync(string part, string? supersedes) =>
        Sql.RunAsync(_database.ConnectionString, $"UPDATE blank_parts SET supersedes = {(supersedes is null ? "NULL" : $"'{supersedes}'")} WHERE part_number = '{part}'");

    private async Task HoldBackAsync(string part)
    {
        await using var db = _shop.Db();
        foreach (var lot in await db.WholeLots().Where(lot => lot.BlankPart.PartNumber == part && lot.QuarantineReason == null).ToListAsync())
            Assert.True(lot.Quarantine("held back", "Owner", TestShop.Now).Succeeded);
        await db.SaveChangesAsync();
    }

    /// <summary>Ten blanks came in twenty weeks ago; a job took one.</summary>
    private async Task TakeAsync(string part, string job, int weeksAgo)
    {
        await using var db = _shop.Db();
        var lot = BlankLot.Receive(await db.BlankParts.SingleAsync(each => each.PartNumber == part), $"TEST-{job}", "A1", 10, "Owner", TestShop.Now.AddDays(-140));
        Assert.True(lot.Allocate(job, "Owner", TestShop.Now.AddDays(-7 * weeksAgo - 1)).Succeeded);
        db.Add(lot);
        await db.SaveChangesAsync();
    }
}
