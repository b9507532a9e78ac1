using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>Each thing that stands against a blank is said for its own reason, and alone.</summary>
public class ObjectionTests
{
    private static readonly PreparedBlank Roller = Shelf.Blank("RV8R-516-08"), Flat = Shelf.Blank("RV8R-HI-02");

    [Fact]
    public void Lifter_the_alloy_does_not_bear()
    {
        var rule = Shelf.Rules.Lifter(BlankAlloy.HardenableIron, LifterType.HydraulicRoller)!;

        Assert.Equal(RuleVerdict.No, rule.Verdict);
        Only(Shelf.Nominal(Roller), Shelf.Like(Roller.Part, BlankAlloy.HardenableIron, Hardening.ToTheBarrel), rule.Reason);
    }

    [Fact]
    public void Other_side() => Only(Shelf.Nominal(Shelf.Blank("OV8D-516-04")), Shelf.Blank("OV8D-516-08").Part, "right-hand blank; the left cam is wanted");

    [Fact]
    public void Other_firing_order() => Only(Shelf.Nominal(Roller) with { FiringOrder = "1-8-7-3-6-5-4-2" }, Roller.Part, "Its lobes stand for firing order 1-8-4-3-6-5-7-2");

    [Fact]
    public void Same_firing_order_begun_elsewhere_is_no_objection() => Assert.True(Shelf.Fit(Shelf.Nominal(Roller) with { FiringOrder = "4-3-6-5-7-2-1-8" }, Roller).Fits);

    [Fact]
    public void Too_little_metal() => Both(Shelf.Longer(Shelf.Nominal(Roller), 60), Roller, "There is not enough metal for the intake lobe");

    [Fact]
    public void Too_little_case() => Both(Shelf.Longer(Shelf.Nominal(Shelf.Blank("RV8R-862-12")), -25), Shelf.Blank("RV8R-862-12"), "of the 0.060 in case; 0.025 in must stay");

    [Fact]
    public void Bearing_bores() => Both(
        Shelf.Nominal(Roller) with { Intake = Roller.Part.Nominal!.Intake with { LobeLiftIn = .480 }, Exhaust = Roller.Part.Nominal.Exhaust with { LobeLiftIn = .480 } },
        PreparedBlank.Of(Shelf.Like(Roller.Part, hardening: Hardening.Through, roundDiameterIn: 2.2)),
        "leaves room for a base circle of 0.930 in only");

    [Fact]
    public void Room_in_the_customers_engine() => Both(Shelf.Nominal(Roller) with { MaxBaseCircleDiameterIn = 1.0 }, Roller, "this blank needs at least 1.010 in");

    [Fact]
    public void Small_foot() => Both(Shelf.Nominal(Flat) with { FollowerDiameterIn = .7 }, Flat, "too fast for this tappet");

    [Fact]
    public void Undercut_at_the_base_circle_that_is_left()
    {
        var grind = Shelf.Longer(Shelf.Nominal(Flat), -30) with { FollowerDiameterIn = 2, MaxBaseCircleDiameterIn = 1.02 };
        grind = grind with { Intake = grind.Intake with { LobeLiftIn = .400 }, Exhaust = grind.Exhaust with { LobeLiftIn = .400 } };

        Both(grind, PreparedBlank.Of(Shelf.Like(Flat.Part, roundDiameterIn: 3)), "would undercut it");
    }

    [Fact]
    public void Everything_against_a_blank_is_said() => Assert.True(Shelf.Fit(
        Shelf.Longer(Shelf.Nominal(Roller), 60) with { FiringOrder = "1-8-7-3-6-5-4-2", Lifter = LifterType.HydraulicRoller },
        PreparedBlank.Of(Shelf.Like(Roller.Part, BlankAlloy.HardenableIron, Hardening.ToTheBarrel))).Reasons.Count >= 4);

    private static void Only(GrindSpec grind, BlankPart part, string words)
    {
        var fit = Shelf.Fit(grind, part);
        Assert.False(fit.Fits);
        Assert.Contains(words, Assert.Single(fit.Reasons), StringComparison.Ordinal);
    }

    /// <summary>The same for the intake and for the exhaust lobe.</summary>
    private static void Both(GrindSpec grind, PreparedBlank blank, string words)
    {
        var fit = Shelf.Fit(grind, blank);
        Assert.False(fit.Fits);
        Assert.Contains(words, fit.Reasons[0], StringComparison.Ordinal);
        Assert.Equal(2, fit.Reasons.Count);
    }
}
