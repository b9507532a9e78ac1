using GrindShop.Shop.Demo;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Specs;
using GrindShop.Testing;
using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public class MapHoleTests
{
    private static readonly EngineFamily Family = ScenarioReader.Read(ShopTemplates.SeedFolder).Scenario!.Families.Single(family => family.Code == "RV8-R");

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
