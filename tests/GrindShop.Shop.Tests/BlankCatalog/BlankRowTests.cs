using CsCheck;
using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;

namespace GrindShop.Shop.Tests.BlankCatalog;

public class BlankRowTests
{
    private static readonly string[] Odd =
    [
        "1e30", "-1e30", "1e308", "1e400", "1e-300", "NaN", "Infinity", "79228162514264337593543950336", "0.0000000000000000000000000000001", "1,5", "1.2.3", "0x10", "'", "'='", "|||||", ";;", "a|b;c|d",
        "1-1-1", "1-2-99999999999", "-", "0", "2147483648", "new", "RV8R-516-08", "\u0000", "\ud800", "٣", "12 34", "1\t2",
    ];

    private static readonly Gen<string> Cell = Gen.OneOf(Gen.OneOf(Odd.Select(Gen.Const).ToArray()), Gen.String, Gen.Double.Select(number => $"{number:R}"), Gen.Int.Select(number => $"{number}"));

    [Fact]
    public void Any_text_in_any_cell_gives_a_part_or_a_row_that_names_the_cell() =>
        Gen.Select(Gen.Int[0, Shelf.Blanks.Count - 1], Gen.Select(Gen.Int[0, BlankColumns.All.Count - 1], Cell).Array[1, 3], Gen.Bool).Sample((which, cells, comma) =>
        {
            var row = new Dictionary<string, string>(BlankColumns.Cells(Shelf.Blanks[which].Part));
            foreach (var (column, text) in cells)
                row[BlankColumns.All[column].Name] = text;
            var problems = new List<RowProblem>();
            var part = Read(row, problems, comma);
            Assert.All(problems, problem => Assert.Equal("line 7", problem.Row));
            Assert.True(part is not null || problems.Count > 0);
            if (part is not null && problems.Count == 0)
                Assert.Equal(BlankColumns.Cells(part), BlankColumns.Cells(Read(new Dictionary<string, string>(BlankColumns.Cells(part)), problems, false)!));
            Assert.True(part is null || problems.Count > 0 || part.Cost <= 100_000);
        });

    [Theory]
    [InlineData("1e30")]
    [InlineData("-1e30")]
    [InlineData("1e400")]
    public void A_cost_beyond_all_money_is_named(string cost)
    {
        var problems = new List<RowProblem>();
        Read(new Dictionary<string, string>(BlankColumns.Cells(Shelf.Blank("RV8R-516-08").Part)) { ["costUsd"] = cost }, problems, false);
        Assert.Equal("costUsd", Assert.Single(problems).Field);
    }

    [Fact]
    public void A_cell_of_millions_of_letters_is_named_in_short()
    {
        foreach (var text in new[] { new string('\'', 2_000_000) + "=", new string('x', 2_000_000) })
        {
            var problems = new List<RowProblem>();
            Read(new Dictionary<string, string>(BlankColumns.Cells(Shelf.Blank("RV8R-516-08").Part)) { ["costUsd"] = text }, problems, false);
            Assert.InRange(Assert.Single(problems).Message.Length, 1, 200);
        }
    }

    private static Shop.Blanks.BlankPart? Read(IReadOnlyDictionary<string, string> cells, List<RowProblem> problems, bool comma) =>
        BlankRow.Read(new CsvRow("test", 7, cells, problems, comma), Families, Vendors);

    private static readonly Dictionary<string, Engines.EngineFamily> Families = SeedFiles.Scenario.Families.ToDictionary(family => family.Code);

    private static readonly Dictionary<string, Shop.Blanks.Vendor> Vendors = SeedFiles.Scenario.Vendors.ToDictionary(vendor => vendor.Code);
}
