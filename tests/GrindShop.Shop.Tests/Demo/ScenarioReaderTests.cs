using GrindShop.Shop.Demo;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Tests.Demo;

public sealed class ScenarioReaderTests : IDisposable
{
    private readonly SeedCopy _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("blanks.csv", "RV8R-HI-01,RV8-R,", "RV8R-HI-01,XX9-Z,", "blanks.csv, line 2, engineFamily: \"XX9-Z\" is not known.")]
    [InlineData("blanks.csv", ",milled,hardenableIron,toTheBarrel,,55,hardenableIron,1-8-4-3-6-5-7-2,flat,0,0.295", ",milled,hardenableIron,toTheBarrel,,55,hardenableIron,1-8-4-3-6-5-7-2,flat,0,long", "blanks.csv, line 2, intakeLobeLiftIn: \"long\" is not a number.")]
    [InlineData("blanks.csv", "milled,hardenableIron,toTheBarrel,,55,hardenableIron,1-8-4-3-6-5-7-2", "milled,hardenableIron,carburized,.060,55,hardenableIron,1-8-4-3-6-5-7-2", "blanks.csv, line 2, hardening: hardenable gray iron is not delivered carburized.")]
    [InlineData("stock.csv", "partNumber,", "part,", "stock.csv, line 2, partNumber: The column is missing.")]
    [InlineData("orders.csv", ",hydraulicRoller,", ",hydraulicRocker,", "lifter: \"hydraulicRocker\" is none of hydraulicRoller, solidRoller, hydraulicFlat, solidFlat.")]
    [InlineData("orders.csv", ",shipped,", ",lost,", "stage: \"lost\" is none of receive, pressGear, grind, roughGrind,")]
    [InlineData("engines.json", "1-8-4-3-6-5-7-2\"", "1-8-4-3-6-5-7-7\"", "engines.json, RV8-R, firingOrder: Every cylinder from 1 to 8 must stand in it once.")]
    [InlineData("engines.json", "1E 2E 1I 2I", "1E 2E 1I 1I", "engines.json, RV8-R, valveOrder: Every cylinder needs its E and its I once")]
    [InlineData("engines.json", "\"rockerRatio\": 1.5", "\"rockerRation\": 1.5", "engines.json, line")]
    [InlineData("gears.json", "\"bronze\"", "\"iron\"", "gears.json, HardenableIron with Iron, distributorGear: The pair needs one rule.")]
    [InlineData("people.json", "\"Desk\"", "\"Chief\"", "people.json, desk@grindshop.example, role: \"Chief\" is none of Desk, Floor, Owner.")]
    public void Bad_row_is_named_by_file_row_and_field(string file, string good, string bad, string line)
    {
        _folder.Replace(file, good, bad);

        var reading = ScenarioReader.Read(_folder.Path);

        Assert.Null(reading.Scenario);
        Assert.Contains(reading.Problems, problem => problem.ToString().Contains(line, StringComparison.Ordinal));
    }

    [Fact]
    public void Pressed_iron_gear_is_refused_where_the_gear_is_not_at_the_rear()
    {
        _folder.Replace("blanks.csv", "induction,0.28,59,steel,1-5-4-2-6-3-7-8", "induction,0.28,59,pressedIron,1-5-4-2-6-3-7-8");

        Assert.Contains(ScenarioReader.Read(_folder.Path).Problems, problem => problem is { Field: "camGear" } && problem.Message.Contains("rear", StringComparison.Ordinal));
    }

    [Fact]
    public void Missing_file_is_a_problem_and_no_crash()
    {
        File.Delete(Path.Combine(_folder.Path, "stock.csv"));

        Assert.Contains(ScenarioReader.Read(_folder.Path).Problems, problem => problem.File == "stock.csv");
    }

    [Fact]
    public void Short_row_is_a_problem()
    {
        File.AppendAllText(Path.Combine(_folder.Path, "customers.csv"), "Only A Name\n");

        Assert.Contains(ScenarioReader.Read(_folder.Path).Problems, problem => problem.ToString().StartsWith("customers.csv, line 62, all: The row has 1 cells", StringComparison.Ordinal));
    }
}
