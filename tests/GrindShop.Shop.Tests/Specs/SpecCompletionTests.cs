using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Specs;

public class SpecCompletionTests
{
    [Fact]
    public void Shop_fills_what_the_customer_left_blank_and_marks_it()
    {
        var completed = Wishes.Completed(Wishes.Street);
        var (grind, family) = (completed.Grind!, Wishes.MainFamily);

        Assert.Equal((family.RockerRatio, family.RollerDiameterIn, family.FiringOrder), (grind.RockerRatio, grind.FollowerDiameterIn, grind.FiringOrder));
        Assert.Equal((family.UsualLobeSeparationCamDeg, family.UsualAdvanceCrankDeg), (grind.LobeSeparationCamDeg, grind.AdvanceCrankDeg));
        Assert.Equal((.006, 272), (grind.Intake.AdvertisedAtIn, grind.Intake.AdvertisedDurationCrankDeg));
        Assert.Equal(
            ["exhaust", "followerDiameterIn", "intake.advertisedAtIn", "intake.advertisedDurationCrankDeg", "intakeCenterlineCrankDeg", "lobeSeparationCamDeg", "rockerRatio"],
            completed.Filled.Select(field => field.Field).Order(StringComparer.Ordinal));
        Assert.All(completed.Filled, field => Assert.True(field.Value.Length > 0 && field.Why.Length > 0));
    }

    [Fact]
    public void Blank_exhaust_is_like_the_intake()
    {
        var grind = Wishes.Grind(Wishes.Street);

        Assert.Equal(grind.Intake, grind.Exhaust);
    }

    [Fact]
    public void Exhaust_known_in_part_takes_the_rest_from_the_intake()
    {
        var grind = Wishes.Grind(Wishes.Street with { Exhaust = new LobeWish { DurationAt050CrankDeg = 230 } });

        Assert.Equal((.335, 230, 280), (grind.Exhaust.LobeLiftIn, grind.Exhaust.DurationAt050CrankDeg, grind.Exhaust.AdvertisedDurationCrankDeg));
    }

    [Fact]
    public void Exhaust_valve_lift_replaces_the_intakes_lobe_lift()
    {
        var grind = Wishes.Grind(Wishes.Street with { RockerRatio = 1.5, Exhaust = new LobeWish { ValveLiftIn = .525 } });

        Assert.Equal(.350, grind.Exhaust.LobeLiftIn, 12);
    }

    [Fact]
    public void Valve_lift_alone_is_divided_by_the_rocker_ratio()
    {
        var grind = Wishes.Grind(Wishes.Street with { Intake = new LobeWish { ValveLiftIn = .5025, DurationAt050CrankDeg = 222 } });

        Assert.Equal(.5025 / Wishes.MainFamily.RockerRatio, grind.Intake.LobeLiftIn, 12);
    }

    [Theory]
    [InlineData(null, null, 2.0, 110, 108)]
    [InlineData(112.0, null, 2.0, 112, 110)]
    [InlineData(null, 104.0, 6.0, 110, 104)]
    [InlineData(null, 104.0, null, 110, 104)]
    public void Two_of_separation_centreline_and_advance_give_the_third(double? separation, double? centerline, double? advance, double lsa, double icl)
    {
        var grind = Wishes.Grind(Wishes.Street with { LobeSeparationCamDeg = separation, IntakeCenterlineCrankDeg = centerline, AdvanceCrankDeg = advance });

        Assert.Equal((lsa, icl), (grind.LobeSeparationCamDeg, grind.IntakeCenterlineCrankDeg));
    }

    [Theory]
    [InlineData(.690, 130)]
    [InlineData(.100, 340)]
    [InlineData(.120, 150)]
    public void Usual_advertised_duration_out_of_reach_is_moved_into_reach(double lift, double at050)
    {
        var completed = Wishes.Completed(Wishes.Street with { Intake = new LobeWish { LobeLiftIn = lift, DurationAt050CrankDeg = at050 } });

        Assert.True(Lobes.PolynomialLaw.TrySolve(completed.Grind!.Intake, out _, out _));
        Assert.Contains(completed.Filled, field => field.Field == "intake.advertisedDurationCrankDeg");
    }

    /// <summary>.006 in for hydraulic lifters and .020 in for solid ones: common practice, no source.</summary>
    [Theory]
    [InlineData(LifterType.HydraulicRoller, .006, 0, 272)]
    [InlineData(LifterType.HydraulicFlat, .006, 0, 272)]
    [InlineData(LifterType.SolidRoller, .020, .016, 256)]
    [InlineData(LifterType.SolidFlat, .020, .016, 256)]
    public void Lifter_decides_check_lift_lash_and_ramps(LifterType lifter, double at, double lash, double advertised)
    {
        var grind = Wishes.Grind(Wishes.Street with { Lifter = lifter });

        Assert.Equal((at, lash, lash, advertised), (grind.Intake.AdvertisedAtIn, grind.IntakeLashIn, grind.ExhaustLashIn, grind.Intake.AdvertisedDurationCrankDeg));
        Assert.Equal(lifter.IsRoller() ? Wishes.MainFamily.RollerDiameterIn : Wishes.MainFamily.FootDiameterIn, grind.FollowerDiameterIn);
    }

    [Fact]
    public void Side_is_asked_for_where_the_engine_has_two_cams() =>
        Assert.Equal("side", Assert.Single(Wishes.Completed(Wishes.Street with { EngineFamily = "OV8-D" }).Needed).Field);

    [Fact]
    public void What_only_the_customer_knows_is_asked_for()
    {
        var completed = SpecCompletion.Complete(new CamSpec(), null);

        Assert.Null(completed.Grind);
        Assert.Empty(completed.Problems);
        Assert.Equal(["engineFamily", "lifter", "intake.lobeLiftIn", "intake.durationAt050CrankDeg"], completed.Needed.Select(problem => problem.Field));
    }
}
