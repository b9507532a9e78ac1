using CsCheck;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>
/// Another firing order on lobes that were cut for the usual one, judged by where the lobes stand. The angles follow from the four-stroke cycle: successive
/// cylinders of an even-fire engine are 720 / n crank degrees apart, half of that on the cam (derivation in docs/mathematics-mechanics.md; no textbook example was found).
/// </summary>
public class OtherOrderTests
{
    private static readonly PreparedBlank Milled = Shelf.Blank("RV8R-516-09");

    /// <summary>An owner who lets every firing order pass.</summary>
    private static readonly ShopRules Lenient = new(Shelf.Rules.Settings,
        [.. SeedFiles.Scenario.Rules, new TradeRule { Kind = TradeRuleKind.OtherFiringOrder, Verdict = RuleVerdict.Ok, Reason = "It will do." }]);

    /// <summary>Exchanging two cylinders moves their lobes by half the difference of their firing angles: places apart in the order, 45 cam degrees each on an eight.</summary>
    [Fact]
    public void Exchanging_two_cylinders_of_an_eight_moves_their_lobes_by_forty_five_degrees_a_place() => (
        from one in Gen.Int[1, 7]
        from other in Gen.Int[1, 7]
        where one != other
        select (one, other)).Sample(places =>
    {
        var family = Wishes.MainFamily;
        var order = FiringOrder.Parse(family.FiringOrder, 8).Required();
        var (one, other) = (order.Cylinders[places.one], order.Cylinders[places.other]);
        var grind = Shelf.Nominal(Milled) with { FiringOrder = order.Swapped(one, other).ToString() };

        var moved = EngineLayout.Change(family, grind, Milled.Part.FiringOrder).Value!.Moved;

        Assert.Equal(new[] { one, one, other, other }.Order(), moved.Select(lobe => lobe.Lobe.Cylinder).Order());
        var apart = 45 * Math.Abs(places.one - places.other) % 360;
        Assert.All(moved, lobe => Assert.Equal(Math.Min(apart, 360 - apart), Math.Abs(lobe.ShiftCamDeg), 1e-6));
    }, iter: 60);

    [Fact]
    public void The_metal_says_no_to_exchanged_cylinders_whatever_the_rule_says()
    {
        var grind = Shelf.Nominal(Milled) with { FiringOrder = "1-8-7-3-6-5-4-2" };

        var fit = Fit(grind, Milled);

        Assert.False(fit.Fits);
        Assert.StartsWith("The lobes of cylinders 4, 7 stand up to 180 cam degrees elsewhere than this blank's, and its metal does not let them turn that far.", fit.Reasons[0], StringComparison.Ordinal);
        Assert.True(Fit(Shelf.Nominal(Milled), Milled).Fits);
    }

    [Fact]
    public void A_round_blank_has_metal_for_every_order()
    {
        var ductile = Shelf.Blank("RV8R-AD-05");
        var round = PreparedBlank.Of(Shelf.Like(ductile.Part, roundDiameterIn: 1.9));
        var grind = Shelf.Nominal(ductile) with { FiringOrder = "1-8-7-3-6-5-4-2" };

        Assert.True(Fit(grind, round).Fits, string.Join(' ', Fit(grind, round).Reasons));
    }

    /// <summary>A lobe so small that it lies within the base circle of the milled one comes out at any turn: the geometry also says yes.</summary>
    [Fact]
    public void A_lobe_within_the_blanks_base_circle_may_stand_anywhere()
    {
        var ductile = Shelf.Blank("RV8R-AD-05").Part;
        var large = PreparedBlank.Of(Shelf.Like(ductile, nominal: ductile.Nominal! with { BaseCircleDiameterIn = 1.75, StockIn = .03 }));
        var grind = Shelf.Nominal(large) with { FiringOrder = "1-8-7-3-6-5-4-2", Intake = Small, Exhaust = Small };

        var fit = Fit(grind, large);

        Assert.True(fit.Fits, string.Join(' ', fit.Reasons));
        Assert.True(fit.IntakeBaseCircleDiameterIn / 2 + Small.LobeLiftIn <= (1.75 / 2) + .03 - Lenient.Settings.CleanupIn + 1e-6);
    }

    [Fact]
    public void The_same_order_begun_elsewhere_moves_nothing() =>
        Assert.Empty(EngineLayout.Change(Wishes.MainFamily, Shelf.Nominal(Milled) with { FiringOrder = "4-3-6-5-7-2-1-8" }, Milled.Part.FiringOrder).Value!.Moved);

    private static LobeSpec Small => new(.25, 200, 250, .006);

    private static BlankFit Fit(GrindSpec grind, PreparedBlank blank) =>
        FeasibilityJudge.Judge(grind, blank.Part.EngineFamily, [new StockedBlank(blank, 1)], Lenient).Blanks.Single();
}
