using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.BlankCatalog;

public sealed class CatalogDeskTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private CatalogDesk _desk = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        _desk = new CatalogDesk(_shop.Factory, _shop.Clock);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task The_second_of_two_is_told_what_the_first_changed()
    {
        var part = await PartAsync("RV8R-516-08");
        Assert.NotNull((await SaveAsync(part, "costUsd", "99.50", "new price list")).Saved);

        var late = await SaveAsync(part, "leadTimeDays", "50", "slower now");

        Assert.Equal("stale", late.Refusal!.Code);
        Assert.Contains("to 99.5", late.Refusal.Reason, StringComparison.Ordinal);
        Assert.Equal(99.50m, (await PartAsync("RV8R-516-08")).Cost);
    }

    [Fact]
    public async Task Bad_cells_are_named_all_at_once()
    {
        var part = await PartAsync("RV8R-516-08");
        var cells = new Dictionary<string, string>(BlankColumns.Cells(part)) { ["stockIn"] = "9", ["costUsd"] = "-1", ["alternates"] = "", ["intakeLobeLiftIn"] = "x" };

        var saving = await _desk.SaveAsync(cells, part.Version, "why", "Owner");

        Assert.Subset(saving.Problems.Select(problem => problem.Field).ToHashSet(), new HashSet<string> { "costUsd", "intakeLobeLiftIn" });
        Assert.Null(saving.Saved);
    }

    [Theory]
    [InlineData("supersedes", "NO-SUCH")]
    [InlineData("supersedes", "RV8R-516-08")]
    [InlineData("alternates", "FV8F-516-05")]
    public async Task Links_lead_to_parts_of_the_same_engine(string column, string to) =>
        Assert.NotEmpty((await SaveAsync(await PartAsync("RV8R-516-08"), column, to, "why")).Problems);

    [Fact]
    public async Task A_second_supplier_is_written_down_named_in_the_history_and_seen_by_whoever_looks_at_the_older_state()
    {
        var part = await PartAsync("RV8R-516-09");
        var saved = await SaveAsync(part, "otherSources", "TURNSTILE|TS-1|120.5|60|4", "asked for a second price");
        Assert.NotNull(saved.Saved);
        var changed = await PartAsync("RV8R-516-09");
        var source = Assert.Single(changed.OtherSources);
        Assert.Equal(("TURNSTILE", "TS-1", 120.5m, 60, 4), (source.Supplier.Code, source.SupplierPart, source.Cost, source.LeadTimeDays, source.LeastQuantity));

        Assert.Equal("stale", (await SaveAsync(part, "notes", "typed meanwhile", "why")).Refusal!.Code);
        Assert.NotNull((await SaveAsync(changed, "otherSources", "", "given up")).Saved);
        Assert.Empty((await PartAsync("RV8R-516-09")).OtherSources);
        await using var db = _shop.Db();
        var lines = await db.BlankPartEvents.OrderBy(line => line.Id).ToListAsync();
        Assert.Equal([("otherSources", "", "TURNSTILE | TS-1 | 120.5 | 60 | 4"), ("otherSources", "TURNSTILE | TS-1 | 120.5 | 60 | 4", "")],
            lines.SelectMany(line => line.Changes).Select(change => (change.Column, change.Before, change.After)));
    }

    [Theory]
    [InlineData("NOBODY | X | 1 | 1 | 1")]
    [InlineData("STILLGAS | X | 1 | 1 | 1")]
    [InlineData("BRISKMILL | X | 1 | 1 | 1")]
    [InlineData("TURNSTILE | X | 1 | 1 | 1; TURNSTILE | Y | 1 | 1 | 1")]
    [InlineData("TURNSTILE | X | -1 | 1 | 1")]
    [InlineData("TURNSTILE | X | 1.005 | 1 | 1")]
    [InlineData("TURNSTILE | X | 1 | 1.5 | 1")]
    [InlineData("TURNSTILE | X | 1 | 1 | 0")]
    [InlineData("TURNSTILE | X | 1 | 1 | 1 | 1")]
    [InlineData("TURNSTILE | X | 1,250 | 1 | 1")]
    [InlineData("TURNSTILE")]
    public async Task A_supplier_that_cannot_be_is_named(string cell) =>
        Assert.Equal("otherSources", (await SaveAsync(await PartAsync("RV8R-516-09"), "otherSources", cell, "why")).Problems[0].Field);

    [Fact]
    public async Task Parts_do_not_replace_each_other_in_a_circle()
    {
        Assert.NotNull((await SaveAsync(await PartAsync("RV8R-516-08"), "supersedes", "RV8R-516-09", "why")).Saved);
        Assert.NotEmpty((await SaveAsync(await PartAsync("RV8R-516-09"), "supersedes", "RV8R-516-08", "why")).Problems);
    }

    [Fact]
    public async Task A_replaced_part_is_used_up_and_not_offered_again()
    {
        var (part, lot) = await _shop.StockAsync(1);
        var other = await OtherAsync(part);
        Assert.NotNull((await SaveAsync(other, "supersedes", part.PartNumber, "why")).Saved);
        var grind = Feasibility.Shelf.Nominal(Feasibility.Shelf.Blank(part.PartNumber));
        Assert.Contains((await _shop.Catalog.JudgeAsync(grind)).Blanks, fit => fit.PartNumber == part.PartNumber);

        await _shop.StockRoom.ScrapAsync(new(lot.LotNumber, null, "Owner", "s"), 1, "cracked");

        Assert.DoesNotContain((await _shop.Catalog.JudgeAsync(grind)).Blanks, fit => fit.PartNumber == part.PartNumber);
    }

    [Theory]
    [InlineData("RV8R-NEW.1", null)]
    [InlineData("rv8r-new-1", "RV8R-NEW-1")]
    [InlineData("A+1", "capital letters")]
    [InlineData("A&B", "capital letters")]
    [InlineData("A 1", "capital letters")]
    [InlineData("Ä-1", "capital letters")]
    [InlineData("..", "capital letters")]
    [InlineData("new", "page of the catalog")]
    [InlineData("IMPORT", "page of the catalog")]
    public async Task A_new_part_number_can_be_typed_scanned_and_stand_in_an_address(string number, string? problem)
    {
        var cells = new Dictionary<string, string>(BlankColumns.Cells(await PartAsync("RV8R-516-08"))) { ["partNumber"] = number };
        var saving = await _desk.SaveAsync(cells, null, "", "Owner");
        Assert.Equal(problem is null ? number : null, saving.Saved?.PartNumber);
        if (problem is not null)
            Assert.Contains(problem, Assert.Single(saving.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_older_part_number_in_small_letters_is_still_read_and_changed()
    {
        await Sql.RunAsync(_database.ConnectionString, "UPDATE blank_parts SET part_number = 'ab+12' WHERE part_number = (SELECT min(part_number) FROM blank_parts p WHERE NOT EXISTS (SELECT 1 FROM blank_parts n WHERE n.supersedes = p.part_number))");
        Assert.NotNull((await SaveAsync(await PartAsync("ab+12"), "notes", "old stock", "why")).Saved);
        Assert.Equal("old stock", (await PartAsync("ab+12")).Notes);
    }

    private async Task<BlankPart> OtherAsync(BlankPart part)
    {
        await using var db = _shop.Db();
        return await PartAsync((await db.BlankParts.FirstAsync(p => p.EngineFamilyId == part.EngineFamilyId && p.Id != part.Id && p.Supersedes == null)).PartNumber);
    }

    private async Task<BlankPart> PartAsync(string number)
    {
        await using var db = _shop.Db();
        return await db.WholeParts().AsNoTracking().SingleAsync(part => part.PartNumber == number);
    }

    private Task<BlankSaving> SaveAsync(BlankPart part, string column, string value, string why) =>
        _desk.SaveAsync(new Dictionary<string, string>(BlankColumns.Cells(part)) { [column] = value }, part.Version, why, "Owner");
}
