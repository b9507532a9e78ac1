using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Specs;

public class SpecCheckTests
{
    [Fact]
    public void Valve_lift_is_lobe_lift_times_the_rocker_ratio()
    {
        var spec = Wishes.Street with { RockerRatio = 1.5, Intake = Wishes.Street.Intake with { ValveLiftIn = .335 * 1.5 } };

        Assert.Empty(Problems(spec));
        Wrong(spec with { RockerRatio = 1.6 }, "intake.valveLiftIn", ".335 x 1.6 is .536 in");
    }

    [Fact]
    public void Valve_lift_alone_must_come_from_a_lobe_the_shop_grinds() =>
        Wrong(Wishes.Street with { RockerRatio = 1, Intake = new LobeWish { ValveLiftIn = .9, DurationAt050CrankDeg = 222 } }, "intake.valveLiftIn", "Lobe lift must lie between 0.1 and 0.7 in. This valve lift would need .900 in.");

    [Fact]
    public void Advance_is_lobe_separation_less_intake_centreline()
    {
        var spec = Wishes.Street with { LobeSeparationCamDeg = 110, IntakeCenterlineCrankDeg = 106, AdvanceCrankDeg = 4 };

        Assert.Empty(Problems(spec));
        Wrong(spec with { AdvanceCrankDeg = 2 }, "advanceCrankDeg", "110 - 106 = 4 crank degrees");
    }

    [Theory]
    [InlineData(220)]
    [InlineData(222)]
    public void Advertised_duration_is_longer_than_the_one_at_050(double advertised) =>
        Wrong(Wishes.Street with { Intake = Wishes.Street.Intake with { AdvertisedDurationCrankDeg = advertised } }, "intake.advertisedDurationCrankDeg", "longer than the duration at .050");

    [Fact]
    public void Advertised_duration_the_lift_law_cannot_reach_is_refused_with_what_it_reaches()
    {
        var problem = Wrong(Wishes.Street with { Intake = Wishes.Street.Intake with { AdvertisedDurationCrankDeg = 420, AdvertisedAtIn = .020 } }, "intake.advertisedDurationCrankDeg", "can be");

        Assert.InRange(problem.Least!.Value, 222, problem.Most!.Value);
        Assert.InRange(problem.Most!.Value, 222, 420);
    }

    [Theory]
    [InlineData(90, 140, 40)]
    [InlineData(130, 80, 180)]
    public void Exhaust_centreline_that_follows_must_be_possible(double separation, double centerline, double exhaust) =>
        Wrong(Wishes.Street with { LobeSeparationCamDeg = separation, IntakeCenterlineCrankDeg = centerline }, "lobeSeparationCamDeg", $"exhaust centreline at {exhaust}");

    [Theory]
    [InlineData(100, -20)]
    [InlineData(120, 20)]
    public void Lobe_separation_that_follows_from_centreline_and_advance_must_be_possible(double centerline, double advance) =>
        Wrong(Wishes.Street with { IntakeCenterlineCrankDeg = centerline, AdvanceCrankDeg = advance }, "lobeSeparationCamDeg", "between 90 and 130 cam degrees");

    [Fact]
    public void Check_lift_at_either_end_of_its_range_has_a_lift_law() => Assert.All(
        new[] { FieldRange.AdvertisedAt.Least, FieldRange.AdvertisedAt.Most },
        at => Assert.Empty(Problems(Wishes.Street with { Intake = Wishes.Street.Intake with { AdvertisedAtIn = at } })));

    [Fact]
    public void Lifts_that_disagree_at_the_familys_usual_rocker_are_noticed() =>
        Wrong(Wishes.Street with { Intake = Wishes.Street.Intake with { ValveLiftIn = .600 } }, "intake.valveLiftIn", ".335 x 1.5 is .503 in");

    [Theory]
    [InlineData(LifterType.HydraulicRoller)]
    [InlineData(LifterType.HydraulicFlat)]
    public void Hydraulic_lifters_run_without_lash(LifterType lifter)
    {
        Wrong(Wishes.Street with { Lifter = lifter, Intake = Wishes.Street.Intake with { LashIn = .016 } }, "intake.lashIn", "without lash");
        Wrong(Wishes.Street with { Lifter = lifter, Exhaust = new LobeWish { LashIn = .016 } }, "exhaust.lashIn", "without lash");
        Assert.Empty(Problems(Wishes.Street with { Lifter = lifter, Intake = Wishes.Street.Intake with { LashIn = 0 } }));
    }

    [Theory]
    [InlineData("1-8-4-3-6-5-7-7")]
    [InlineData("1-8-4-3-6-5-7")]
    [InlineData("1-8-4-3-6-5-7-9")]
    [InlineData("1-8-4-3-6-5-7-2-2")]
    [InlineData("first to last")]
    [InlineData("")]
    public void Firing_order_names_every_cylinder_once(string order) =>
        Wrong(Wishes.Street with { FiringOrder = order }, "firingOrder", "1 to 8 once each, such as 1-8-4-3-6-5-7-2");

    [Fact]
    public void Side_belongs_to_an_engine_with_two_cams() => Wrong(Wishes.Street with { Side = CamSide.Left }, "side", "one camshaft");

    [Fact]
    public void Distributor_gear_belongs_to_an_engine_with_a_distributor() =>
        Wrong(Wishes.Street with { EngineFamily = "OV8-D", Side = CamSide.Left, DistributorGear = DistributorGear.Iron }, "distributorGear", "no distributor");

    [Fact]
    public void Unknown_family_is_named() => Wrong(Wishes.Street with { EngineFamily = "XX9-Z" }, "engineFamily", "no engine family of this code");

    [Theory]
    [InlineData(SpecCheck.LongestNote, 0)]
    [InlineData(SpecCheck.LongestNote + 1, 1)]
    public void Notes_have_a_longest_length(int length, int problems) => Assert.Equal(problems, Problems(Wishes.Street with { Notes = new string('n', length) }).Count);

    [Theory]
    [InlineData("a\0b")]
    [InlineData("a\u001bb")]
    [InlineData("a\ud800b")]
    public void Texts_are_printable(string text) => Wrong(Wishes.Street with { Notes = text }, "notes", "cannot be printed");

    [Fact]
    public void Wrong_rocker_ratio_is_the_only_thing_wrong() =>
        Assert.Equal("rockerRatio", Assert.Single(Problems(Wishes.Street with
        {
            RockerRatio = double.NaN,
            Intake = new LobeWish { ValveLiftIn = .5, DurationAt050CrankDeg = 222, AdvertisedDurationCrankDeg = 272, AdvertisedAtIn = .006 },
        })).Field);

    private static FieldProblem Wrong(CamSpec spec, string field, string words)
    {
        var problem = Assert.Single(Problems(spec));
        Assert.Equal(field, problem.Field);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
        return problem;
    }

    private static IReadOnlyList<FieldProblem> Problems(CamSpec spec) => Wishes.Completed(spec).Problems;
}
