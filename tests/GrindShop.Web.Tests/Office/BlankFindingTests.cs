using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Demo;
using GrindShop.Testing;
using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public class BlankFindingTests
{
    private static readonly BlankPart Part = ScenarioReader.Read(ShopTemplates.SeedFolder).Scenario!.Blanks.Single(part => part.PartNumber == "RV8R-516-08");

    [Theory]
    [InlineData("", true)]
    [InlineData("rv8r", true)]
    [InlineData("BM-2149", true)]
    [InlineData("TS-5183", true)]
    [InlineData("turnstile three-piece", true)]
    [InlineData("induction 5160 pressed", true)]
    [InlineData("carburized", false)]
    [InlineData("turnstile carburized", false)]
    public void Any_fact_finds_it(string typed, bool found) => Assert.Equal(found, BlankFinding.Finds(BlankFinding.Words(Part), typed));

    [Fact]
    public void Every_column_can_be_found() =>
        Assert.All(BlankColumns.All, column => Assert.Contains(column.Write(Part), BlankFinding.Words(Part), StringComparison.Ordinal));
}
