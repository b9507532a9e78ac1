using System.Text;
using CsCheck;
using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.BlankCatalog;

public sealed class CatalogImportTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private CatalogImport _import = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        _import = new CatalogImport(_shop.Factory, _shop.Clock);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task What_was_exported_changes_nothing()
    {
        var preview = await _import.PreviewAsync(await _import.ExportAsync());
        Assert.Empty(preview.Problems);
        Assert.Empty(preview.Rows);
        Assert.Equal(Shelf.Blanks.Count, preview.Unchanged);
    }

    [Fact]
    public async Task A_change_is_shown_then_written_once_with_its_history()
    {
        var rows = (await _import.ExportAsync()).Split("\r\n");
        var text = string.Join("\r\n", rows.Select(row => row.StartsWith("RV8R-HI-01,", StringComparison.Ordinal) ? row.Replace(",55,", ",54.5,", StringComparison.Ordinal) : row));
        var preview = await _import.PreviewAsync(text);
        var change = Assert.Single(Assert.Single(preview.Rows).Changes);
        Assert.Equal(("hardnessHrc", "55", "54.5"), (change.Column, change.Before, change.After));

        Assert.Equal(1, (await _import.ApplyAsync(preview, "new price list", "Owner")).Value);
        Assert.Equal("stale", (await _import.ApplyAsync(preview, "new price list", "Owner")).Refusal!.Code);

        await using var db = _shop.Db();
        var line = await db.Set<Shop.Blanks.BlankPartEvent>().Include(e => e.BlankPart).SingleAsync();
        Assert.Equal(("RV8R-HI-01", "changed", "new price list", 54.5), (line.BlankPart!.PartNumber, line.What, line.Why, line.BlankPart.HardnessHrc));
        Assert.Equal(54.5, (await _shop.Catalog.ContentAsync()).Blank("RV8R-HI-01")!.Part.HardnessHrc);
    }

    [Fact]
    public async Task Every_bad_row_is_named_and_nothing_can_be_written()
    {
        var lines = (await _import.ExportAsync()).Split("\r\n");
        lines[1] = lines[1].Replace("induction", "magic", StringComparison.Ordinal);
        lines[2] = lines[2].Replace("milled", "woven", StringComparison.Ordinal);
        lines[3] = lines[3] + ",more";
        lines[4] = lines[5];
        var preview = await _import.PreviewAsync(string.Join("\r\n", lines));

        Assert.Equal(["line 2", "line 3", "line 4", "line 6"], preview.Problems.Select(problem => problem.Row).Distinct().Order());
        Assert.False(preview.CanApply);
        Assert.Equal("badRows", (await _import.ApplyAsync(preview, "why", "Owner")).Refusal!.Code);
    }

    [Theory]
    [InlineData("")]
    [InlineData("partNumber,engineFamily\r\nX,Y")]
    [InlineData("just a sentence")]
    public async Task A_file_that_is_no_catalog_says_what_is_missing(string text) => Assert.NotEmpty((await _import.PreviewAsync(text)).Problems);

    [Fact]
    public async Task Semicolons_and_decimal_commas_of_some_spreadsheets_are_read()
    {
        var records = CsvText.Records(await _import.ExportAsync()).Select(record => record.Cells.Select(cell => double.TryParse(cell, out _) ? cell.Replace('.', ',') : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\""));
        var preview = await _import.PreviewAsync(string.Join("\n", records.Select(cells => string.Join(';', cells))));
        Assert.Empty(preview.Problems);
        Assert.Empty(preview.Rows);
    }

    [Fact]
    public void A_files_letters_are_read_or_the_line_is_named()
    {
        Assert.Equal("a,é", CatalogImport.Decode([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("a,é")]).Value);
        Assert.Equal("a,é", CatalogImport.Decode([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("a,é")]).Value);
        Assert.Contains("Line 2", CatalogImport.Decode([.. "a\nb"u8, 0xE9, (byte)'x']).Refusal!.Reason, StringComparison.Ordinal);
        Assert.Equal("notText", CatalogImport.Decode([0x50, 0x4B, 3, 4, 0, 0]).Refusal!.Code);
        Assert.Equal("tooLarge", CatalogImport.Decode(new byte[CatalogImport.MostBytes + 1]).Refusal!.Code);
    }

    [Fact]
    public void No_cell_is_a_formula_and_every_text_comes_back() => Gen.String.Sample(text =>
    {
        var guarded = CsvText.Guarded(text);
        Assert.False(guarded.Length > 0 && "=+-@\t\r".Contains(guarded[0]));
        Assert.Equal(text, CsvText.Plain(guarded));
    });
}
