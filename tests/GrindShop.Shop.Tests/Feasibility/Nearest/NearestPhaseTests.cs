using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Nearest;

/// <summary>The timing offered against trying every timing near the wish.</summary>
public class NearestPhaseTests
{
    /// <summary>A window's corner may lie this far from the next half degrees, by the diagonal of their cell in both directions.</summary>
    private const double RoundingDeg = 1.0;

    [Theory]
    [InlineData(.410, 260, 113)]
    [InlineData(.410, 260, 103.7)]
    [InlineData(.410, 254, 113)]
    [InlineData(.405, 258, 112.2)]
    public void No_nearer_timing_can_be_ground_from_a_carburized_blank(double lift, double at050, double separation)
    {
        var near = NearCase.Only(NearCase.Cam(LifterType.HydraulicRoller, lift, at050, separation), "RV8R-862-12");
        var offer = near.Offers().First(offer => offer.Grind.Intake == near.Wish.Intake && offer.Grind.Exhaust == near.Wish.Exhaust);
        var away = GrindDistance.Phase(near.Wish, offer.Grind);

        Assert.True(away > 0);
        Assert.All(Around(near.Wish, .5, away), grind => Assert.Equal(Verdict.NotGrindable, near.Judge(grind).Verdict));
        Assert.All(Around(near.Wish, .25, away - RoundingDeg), grind => Assert.Equal(Verdict.NotGrindable, near.Judge(grind).Verdict));
    }

    private static IEnumerable<GrindSpec> Around(GrindSpec wish, double step, double within) =>
        from separation in Steps(wish.LobeSeparationCamDeg, step, within)
        from centerline in Steps(wish.IntakeCenterlineCrankDeg, step, within)
        let grind = wish with { LobeSeparationCamDeg = separation, IntakeCenterlineCrankDeg = centerline }
        where GrindDistance.Phase(wish, grind) < within - 1e-9
        select grind;

    private static IEnumerable<double> Steps(double wish, double step, double within)
    {
        for (var value = Math.Ceiling((wish - within) / step) * step; value <= wish + within; value += step)
            yield return value;
        yield return wish;
    }
}
