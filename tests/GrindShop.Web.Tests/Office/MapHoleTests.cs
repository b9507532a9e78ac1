using System.Globalization;
using Bunit;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Specs;
using GrindShop.Testing;
using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public class MapHoleTests
{
    private static readonly ShopScenario Demo = ScenarioReader.Read(ShopTemplates.SeedFolder).Scenario!;
    private static readonly EngineFamily Family = Demo.Families.Single(family => family.Code == "RV8-R");

    [Fact]
    public void Wishes_near_each_other_that_stock_does_not_serve_are_one_hole_the_largest_first()
    {
        var holes = MapHole.Of(
        [
            Dot("C1", 229, 110, 1, MapService.FromStock), Dot("C2", 240, 108, 1, MapService.None),
            Dot("C3", 228, 110, 2, MapService.ToOrder, "X-1"), Dot("C4", 231.5, 111, 1, MapService.ToOrder, "X-2"), Dot("C5", 232, 110, 3, MapService.None),
        ]);

        Assert.Equal([6, 1], holes.Select(hole => hole.Count));
        Assert.Equal("228 to 232 crank deg at .050, LSA 110 to 111 cam deg", holes[0].Where);
        Assert.Equal([("X-1", 2), ("X-2", 1)], holes[0].ToOrder);
        Assert.Equal((3, 1), (holes[0].Unserved, holes[1].Unserved));
        Assert.Equal("240 crank deg at .050, LSA 108 cam deg", holes[1].Where);
    }

    [Fact]
    public void Where_stock_serves_all_there_is_no_hole() => Assert.Empty(MapHole.Of([Dot("C1", 229, 110, 4, MapService.FromStock)]));

    [Fact]
    public void The_map_counts_cams_as_its_holes_do()
    {
        MapDot[] dots = [Dot("C1", 229, 110, 4, MapService.FromStock), Dot("C2", 240, 108, 1, MapService.None), Dot("C3", 228, 110, 2, MapService.ToOrder, "X-1")];
        Assert.Equal((7, 7), (new MapPicture([], dots).Cams, new MapPicture([], dots).InHoles));

        var blank = PreparedBlank.Of(Demo.Blanks.Single(part => part.PartNumber == "RV8R-516-08"));
        var (region, nominal) = (BlankRegion.Of(blank, Family, new ShopRules(Demo.Settings, Demo.Rules), .010), blank.Part.Nominal!);
        dots = [Dot("C1", nominal.Intake.DurationAt050CrankDeg, nominal.LobeSeparationCamDeg, 4, MapService.FromStock), Dot("C2", nominal.Intake.DurationAt050CrankDeg + 44, nominal.LobeSeparationCamDeg, 3, MapService.None)];
        Assert.Equal((7, 3), (new MapPicture([new MapBlank("A", region, 1)], dots).Cams, new MapPicture([new MapBlank("A", region, 1)], dots).InHoles));
    }

    /// <summary>The server may stand in a country that writes a comma.</summary>
    [Fact]
    public async Task Figures_are_written_alike_in_every_culture()
    {
        await using var browser = new BunitContext();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var picture = new MapPicture([], [Dot("C1", 229.5, 110.5, 4, MapService.None)]);
            Assert.Equal(["4", "229.5", "110.5"], browser.Render<MapLists>(with => with.Add(each => each.Picture, picture)).FindAll("#wishes tbody td").Take(3).Select(cell => cell.TextContent));
            Assert.Contains("between 50 and 99.9 %", new BuyingRules().Set(new BuyingAssumptions(.2, 1, .1, 1, .1, 1)).Refusal!.Reason, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static MapDot Dot(string order, double duration, double separation, int quantity, MapService service, string? part = null)
    {
        var spec = new CamSpec
        {
            EngineFamily = Family.Code,
            Lifter = LifterType.HydraulicRoller,
            Intake = new LobeWish { LobeLiftIn = .35, DurationAt050CrankDeg = duration },
            LobeSeparationCamDeg = separation,
        };
        return new MapDot(new ShelfDemand(order, default, DemandKind.Open, quantity, "street", SpecCompletion.Complete(spec, Family).Grind!), service, part);
    }
}
