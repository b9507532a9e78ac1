using CsCheck;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;

namespace GrindShop.Shop.Tests.Nearest;

/// <summary>What holds for every offer, on plausible wishes of every family with some of its blanks in stock.</summary>
public class NearestPropertyTests
{
    private const int Wishes = 60;

    private static readonly Gen<NearCase?> Cases =
        from family in Gen.OneOf(SeedFiles.Scenario.Families.ToArray())
        from lifter in Gen.Enum<LifterType>()
        from lift in Gen.Int[240, 460]
        from at050 in Gen.Int[196, 284]
        from exhaust in Gen.Int[-6, 24]
        from ramps in Gen.Int[32, 58]
        from separation in Gen.Int[200, 248]
        from advance in Gen.Int[-4, 16]
        from gear in Gen.OneOf<DistributorGear?>(null, DistributorGear.Iron, DistributorGear.NitrocarburizedSteel)
        from limit in Gen.OneOf<double?>(null, null, 1.000, 1.250)
        from stock in Gen.Int[0, (1 << 14) - 1]
        select Case(family, new CamSpec
        {
            EngineFamily = family.Code,
            Lifter = lifter,
            Intake = Lobe(lift, at050, ramps, lifter),
            Exhaust = Lobe(lift + 5, at050 + exhaust, ramps, lifter),
            LobeSeparationCamDeg = separation / 2.0,
            IntakeCenterlineCrankDeg = separation / 2.0 - advance / 2.0,
            DistributorGear = family.Gear == GearPosition.None ? null : gear,
            MaxBaseCircleDiameterIn = limit,
        }, stock);

    [Fact]
    public void Offers_are_few_usable_different_and_the_same_each_time()
    {
        var offered = 0;
        Cases.Sample(near => { Interlocked.Add(ref offered, near is null ? 0 : Check(near)); }, iter: Wishes, threads: 2);
        Assert.True(offered > 0);
    }

    private static int Check(NearCase near)
    {
        var answer = near.Judge(near.Wish);
        var offers = near.Offers();

        Assert.InRange(offers.Count, 0, answer.Verdict == Verdict.FromStock ? 0 : 3);
        Assert.Equal(offers.Select(Figures), near.Offers().Select(Figures));
        Assert.Equal(offers.Select(offer => offer.Cost).Order(), offers.Select(offer => offer.Cost));
        Assert.Equal(offers.Count, offers.Select(offer => offer.Grind).Distinct().Count());
        foreach (var offer in offers)
            CheckOffer(near, answer.Verdict, offer);
        return offers.Count;
    }

    private static void CheckOffer(NearCase near, Verdict verdict, NearestGrind offer)
    {
        Assert.NotEqual(near.Wish, offer.Grind);
        Assert.NotEmpty(offer.GivenUp);
        Assert.All(offer.GivenUp, Shorthand.None);
        Assert.Equal(GrindDistance.Cost(near.Wish, offer.Grind, offer.Fit.InStock), offer.Cost, 9);
        Assert.Equal(near.Wish, offer.Grind with
        {
            Intake = near.Wish.Intake,
            Exhaust = near.Wish.Exhaust,
            DistributorGear = near.Wish.DistributorGear,
            LobeSeparationCamDeg = near.Wish.LobeSeparationCamDeg,
            IntakeCenterlineCrankDeg = near.Wish.IntakeCenterlineCrankDeg,
        });

        var typed = NearCase.Completed(NearCase.Typed(offer.Grind));
        Assert.Empty(typed.Problems);
        var moved = near.Judge(typed.Grind!);
        Assert.True(moved.Blanks.Single(fit => fit.PartNumber == offer.Fit.PartNumber).Usable);
        Assert.Equal(verdict == Verdict.SpecialOrder || offer.Fit.InStock ? Verdict.FromStock : moved.Verdict, moved.Verdict);
        Assert.NotEqual(Verdict.NotGrindable, moved.Verdict);
    }

    private static (GrindSpec, string, double) Figures(NearestGrind offer) => (offer.Grind, offer.Fit.PartNumber, offer.Cost);

    private static NearCase? Case(EngineFamily family, CamSpec wish, int stock) =>
        NearCase.Completed(wish).Grind is null
            ? null
            : NearCase.Stocked(wish, [.. NearCase.Of(wish).Where((_, i) => (stock >> i & 1) == 1).Select(blank => blank.Part.PartNumber)]);

    private static LobeWish Lobe(int liftThousandths, int at050, int ramps, LifterType lifter) => new()
    {
        LobeLiftIn = liftThousandths / 1000.0,
        DurationAt050CrankDeg = at050,
        AdvertisedDurationCrankDeg = at050 + ramps,
        AdvertisedAtIn = lifter.AdvertisedAtIn(),
    };
}
