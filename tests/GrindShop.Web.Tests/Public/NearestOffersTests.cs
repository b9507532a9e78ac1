using Bunit;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;
using Xunit;

namespace GrindShop.Web.Tests.Public;

public sealed class NearestOffersTests
{
    private static readonly CamSpec Wish = new()
    {
        EngineFamily = "RV8-R",
        Lifter = LifterType.HydraulicRoller,
        Intake = new LobeWish { ValveLiftIn = .600, DurationAt050CrankDeg = 222, LashIn = 0 },
        LobeSeparationCamDeg = 112,
        AdvanceCrankDeg = 4,
        DistributorGear = DistributorGear.Iron,
        Notes = "kept",
    };

    [Fact]
    public async Task One_click_puts_the_offers_figures_into_the_wish()
    {
        await using var page = new BunitContext();
        CamSpec? taken = null;
        var shown = page.Render<NearestOffers>(set => set.Add(p => p.Wish, Wish).Add(p => p.Nearest, [Offer]).Add(p => p.OnTake, spec => taken = spec));
        await shown.InvokeAsync(() => shown.Find("button").ClickAsync(new()));

        Assert.Contains("lobe separation 110 instead of 112 cam degrees", shown.Find(".given-up").TextContent);
        Assert.Contains("1.051 in", shown.Find(".base-circle").TextContent);
        Assert.Equal(Wish with
        {
            Intake = Wish.Intake with { LobeLiftIn = .380, ValveLiftIn = null, AdvertisedDurationCrankDeg = 272, AdvertisedAtIn = .006 },
            Exhaust = new LobeWish { LobeLiftIn = .385, DurationAt050CrankDeg = 230, AdvertisedDurationCrankDeg = 280, AdvertisedAtIn = .006 },
            LobeSeparationCamDeg = 110,
            IntakeCenterlineCrankDeg = 107.5,
            AdvanceCrankDeg = null,
            DistributorGear = DistributorGear.Bronze,
        }, taken);
    }

    [Fact]
    public async Task No_offer_no_heading()
    {
        await using var page = new BunitContext();
        Assert.Empty(page.Render<NearestOffers>(set => set.Add(p => p.Wish, Wish)).Markup.Trim());
    }

    private static NearestGrind Offer => new()
    {
        Grind = new GrindSpec
        {
            EngineFamily = "RV8-R",
            Lifter = LifterType.HydraulicRoller,
            FollowerDiameterIn = .75,
            Intake = new LobeSpec(.380, 222, 272, .006),
            Exhaust = new LobeSpec(.385, 230, 280, .006),
            RockerRatio = 1.5,
            LobeSeparationCamDeg = 110,
            IntakeCenterlineCrankDeg = 107.5,
            DistributorGear = DistributorGear.Bronze,
            FiringOrder = "1-8-4-3-6-5-7-2",
        },
        Fit = new BlankFit
        {
            PartNumber = "RV8R-515-07",
            InStock = true,
            Fits = true,
            IntakeBaseCircleDiameterIn = 1.051,
            ExhaustBaseCircleDiameterIn = 1.049,
            NeedsHeatTreat = false,
            LeadTimeDays = 0,
            Gear = new GearAdvice(GearVerdict.Ok, ""),
            Reasons = [],
        },
        GivenUp = ["lobe separation 110 instead of 112 cam degrees"],
        Cost = 2,
    };
}
