using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>The starting table of gears: common practice, no source.</summary>
public class GearTableTests
{
    [Theory]
    [InlineData(CamGear.HardenableIron, GearVerdict.Ok, GearVerdict.Ok, GearVerdict.Ok, GearVerdict.Ok)]
    [InlineData(CamGear.AustemperedDuctileIron, GearVerdict.Ok, GearVerdict.Ok, GearVerdict.Ok, GearVerdict.Ok)]
    [InlineData(CamGear.Steel, GearVerdict.No, GearVerdict.Caution, GearVerdict.Ok, GearVerdict.Ok)]
    [InlineData(CamGear.PressedIron, GearVerdict.Ok, GearVerdict.Ok, GearVerdict.Ok, GearVerdict.Ok)]
    public void Cam_gear_runs_with(CamGear cam, GearVerdict iron, GearVerdict nitrocarburized, GearVerdict bronze, GearVerdict polymer)
    {
        var advice = Enum.GetValues<DistributorGear>().Select(gear => Shelf.Rules.Gear(Wishes.MainFamily, cam, gear)).ToList();

        Assert.Equal([iron, nitrocarburized, bronze, polymer], advice.Select(cell => cell.Verdict));
        Assert.All(advice, cell => Assert.NotEmpty(cell.Reason));
        Assert.Matches("wear|inspect", advice[(int)DistributorGear.Bronze].Reason);
    }

    [Fact]
    public void Without_a_distributor_or_a_gear_named_there_is_no_verdict()
    {
        Assert.Equal(GearVerdict.None, Shelf.Rules.Gear(Wishes.Family("OV8-D"), CamGear.None, null).Verdict);
        Assert.Equal(GearVerdict.None, Shelf.Rules.Gear(Wishes.MainFamily, CamGear.Steel, null).Verdict);
    }

    [Fact]
    public void Pair_without_a_rule_is_a_caution() =>
        Assert.Equal(GearVerdict.Caution, new ShopRules(Shelf.Rules.Settings, []).Gear(Wishes.MainFamily, CamGear.Steel, DistributorGear.Iron).Verdict);
}
