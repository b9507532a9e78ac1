using System.Text;
using CsCheck;
using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
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
        Assert.Equal((4, 0, lines.Length - 6), (preview.WrongRows, preview.Rows.Count, preview.Unchanged));
        Assert.False(preview.CanApply);
        Assert.Equal("badRows", (await _import.ApplyAsync(preview, "why", "Owner")).Refusal!.Code);
    }

    /// <summary>Every column comes out with what went in, and the preview names each one that differs.</summary>
    [Fact]
    public async Task Every_fact_of_a_part_goes_out_and_comes_in_again()
    {
        var columns = BlankColumns.All.Select(column => column.Name).ToList();
        var whole = new Dictionary<string, string>
        {
            ["partNumber"] = "RV8R-NEW-1",
            ["engineFamily"] = "RV8-R",
            ["side"] = "",
            ["fuelPumpLobe"] = "no",
            ["form"] = "milled",
            ["alloy"] = "steel5160",
            ["hardening"] = "induction",
            ["caseDepthIn"] = "0.15",
            ["hardnessHrc"] = "58",
            ["camGear"] = "pressedIron",
            ["firingOrder"] = "1-8-4-3-6-5-7-2",
            ["followerKind"] = "roller",
            ["rollerRadiusIn"] = "0.35",
            ["intakeLobeLiftIn"] = "0.35",
            ["intakeDurationAt050CrankDeg"] = "230",
            ["intakeAdvertisedDurationCrankDeg"] = "284",
            ["exhaustLobeLiftIn"] = "0.355",
            ["exhaustDurationAt050CrankDeg"] = "236",
            ["exhaustAdvertisedDurationCrankDeg"] = "290",
            ["advertisedAtIn"] = "0.006",
            ["baseCircleDiameterIn"] = "1.12",
            ["stockIn"] = "0.03",
            ["lobeSeparationCamDeg"] = "110",
            ["intakeCenterlineCrankDeg"] = "106",
            ["roundDiameterIn"] = "",
            ["leastBaseCircleIn"] = "1",
            ["driveEnd"] = "three-bolt, dowel at 12 o'clock",
            ["journalDiametersIn"] = string.Join(' ', Shelf.Blank("RV8R-516-08").Part.EngineFamily.JournalDiametersIn.Select(d => d - .01).Select(d => d.ToString("0.####"))),
            ["supplier"] = "BRISKMILL",
            ["supplierPart"] = "BM-9",
            ["costUsd"] = "140.5",
            ["leadTimeDays"] = "35",
            ["leastQuantity"] = "3",
            ["otherSources"] = "LONGBAR | LB-9 | 151 | 20 | 1; TURNSTILE | TS-9 | 130 | 60 | 6",
            ["supersedes"] = "RV8R-516-10",
            ["alternates"] = "RV8R-516-08 RV8R-515-07",
            ["notes"] = "a, \"b\"; c",
        };
        Assert.Equal(columns.Order(), whole.Keys.Order());
        var text = CsvText.Record(columns) + CsvText.Record(columns.Select(column => whole[column]));
        var preview = await _import.PreviewAsync(text);
        Assert.Empty(preview.Problems);
        Assert.True(Assert.Single(preview.Rows).IsNew);
        Assert.True((await _import.ApplyAsync(preview, "new part", "Owner")).Succeeded);

        var records = CsvText.Records(await _import.ExportAsync()).ToList();
        var row = records.Single(record => record.Cells[0] == "RV8R-NEW-1").Cells;
        Assert.Equal(whole, records[0].Cells.Zip(row).ToDictionary(cell => cell.First, cell => cell.Second));

        var other = whole.ToDictionary();
        (other["leastQuantity"], other["otherSources"], other["driveEnd"]) = ("5", "LONGBAR | LB-9 | 151 | 20 | 1", "keyway");
        var changed = await _import.PreviewAsync(CsvText.Record(columns) + CsvText.Record(columns.Select(column => other[column])));
        Assert.Equal(["driveEnd", "leastQuantity", "otherSources"], Assert.Single(changed.Rows).Changes.Select(change => change.Column));
        Assert.True((await _import.ApplyAsync(changed, "one fewer", "Owner")).Succeeded);
        await using var db = _shop.Db();
        var part = await db.WholeParts().SingleAsync(part => part.PartNumber == "RV8R-NEW-1");
        Assert.Equal((5, "LONGBAR", "keyway"), (part.LeastQuantity, Assert.Single(part.OtherSources).Supplier.Code, part.DriveEnd));
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
