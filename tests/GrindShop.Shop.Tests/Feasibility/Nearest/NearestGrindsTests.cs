using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Nearest;

public class NearestGrindsTests
{
    [Fact]
    public void What_comes_from_stock_needs_no_offer() =>
        Assert.Empty(NearCase.Stocked(NearCase.Cam(LifterType.HydraulicRoller, .335, 222, 112), "RV8R-AD-06").Offers());

    [Fact]
    public void Nothing_is_offered_where_the_rules_of_the_trade_leave_no_blank() =>
        Assert.Empty(NearCase.Only(NearCase.Cam(LifterType.SolidFlat, .335, 222, 112), "RV8R-516-08").Offers());

    [Fact]
    public void Where_the_distributor_gear_alone_stands_against_it_another_gear_is_the_first_offer()
    {
        var first = NearCase.Only(NearCase.Cam(LifterType.HydraulicRoller, .335, 222, 112, DistributorGear.Iron), "RV8R-515-07").Offers()[0];

        Assert.Equal(DistributorGear.Bronze, first.Grind.DistributorGear);
        Assert.Equal("distributor gear: bronze instead of iron", first.GivenUp[0]);
        Assert.Equal(GearVerdict.Ok, first.Fit.Gear.Verdict);
    }

    /// <summary>Raising the engine's limit is not the shop's to offer; a smaller base circle is, with its figure.</summary>
    [Fact]
    public void A_base_circle_under_the_usual_one_is_named_and_never_passes_a_limit()
    {
        var wish = NearCase.Cam(LifterType.HydraulicRoller, .335, 222, 112, DistributorGear.Iron) with { MaxBaseCircleDiameterIn = .950 };
        var near = NearCase.Only(wish, "RV8R-866-11", "RV8R-516-08");
        var first = near.Offers()[0];

        Assert.Equal("RV8R-866-11", first.Fit.PartNumber);
        Assert.Contains("base circle 0.950 in instead of the usual 1.130 in", first.GivenUp);
        Assert.InRange(first.Fit.IntakeBaseCircleDiameterIn!.Value, .900, .950 + 1e-9);
        Assert.Empty(NearCase.Only(wish with { MaxBaseCircleDiameterIn = .850 }, "RV8R-866-11", "RV8R-516-08").Offers());
    }

    [Fact]
    public void A_lobe_too_fast_for_its_tappet_is_offered_with_less_lift()
    {
        var near = NearCase.Only(NearCase.Cam(LifterType.HydraulicFlat, .400, 222, 110), "RV8R-HI-01", "RV8R-HI-02");
        var offer = near.Offers().First(offer => offer.Grind.Intake.DurationAt050CrankDeg == 222 && offer.Grind.LobeSeparationCamDeg == 110);

        Assert.True(offer.Grind.Intake.LobeLiftIn < .400);
        var more = near.Wish with { Intake = offer.Grind.Intake with { LobeLiftIn = offer.Grind.Intake.LobeLiftIn + .001 }, Exhaust = offer.Grind.Exhaust };
        Assert.DoesNotContain(near.Judge(more).Blanks, fit => fit.Usable && fit.PartNumber == offer.Fit.PartNumber);
        Assert.Contains(offer.GivenUp, words => words.StartsWith("intake lobe lift .3", StringComparison.Ordinal) && words.EndsWith("instead of .400 in", StringComparison.Ordinal));
    }

    [Fact]
    public void Only_the_lobe_that_does_not_come_out_gives_up_duration()
    {
        var near = NearCase.Only(NearCase.Cam(LifterType.HydraulicRoller, .410, 266, 108), "RV8R-862-12");
        var offer = near.Offers()[0];

        Assert.Equal(near.Wish.Exhaust, offer.Grind.Exhaust);
        Assert.True(offer.Grind.Intake.DurationAt050CrankDeg < 266);
        Assert.Equal(Verdict.NotGrindable, near.Judge(near.Wish with { Intake = Longer(offer.Grind.Intake) }).Verdict);
        Assert.Equal($"intake duration at .050 {offer.Grind.Intake.DurationAt050CrankDeg:0} instead of 266 crank degrees", offer.GivenUp[0]);

        static LobeSpec Longer(LobeSpec lobe) => lobe with { DurationAt050CrankDeg = lobe.DurationAt050CrankDeg + 1, AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg + 1 };
    }

    [Fact]
    public void A_wish_that_must_be_ordered_is_met_by_what_is_in_stock()
    {
        var near = NearCase.Stocked(NearCase.Cam(LifterType.HydraulicRoller, .410, 266, 108), "RV8R-862-12");
        var offers = near.Offers();

        Assert.Equal(Verdict.SpecialOrder, near.Judge(near.Wish).Verdict);
        Assert.NotEmpty(offers);
        Assert.All(offers, offer => Assert.True(offer.Fit.InStock));
    }

    [Fact]
    public void A_search_can_be_cancelled()
    {
        var near = NearCase.Only(NearCase.Cam(LifterType.HydraulicFlat, .400, 222, 110), "RV8R-HI-01");
        Assert.Throws<OperationCanceledException>(() => near.Offers(new CancellationToken(canceled: true)));
    }
}
