using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;

namespace GrindShop.Shop.Tests.Specs;

public class SpecQuestionsTests
{
    [Fact]
    public void Nothing_given_asks_for_what_nothing_can_be_judged_without() =>
        Assert.Equal(["engineFamily", "lifter", "intake.lobeLiftIn", "intake.durationAt050CrankDeg"], Ask(new CamSpec()).Where(question => question.Kind == QuestionKind.Missing).Select(question => question.Field));

    [Fact]
    public void Advance_that_does_not_follow_is_asked_with_all_three_figures()
    {
        var question = Contradiction(Wishes.Street with { LobeSeparationCamDeg = 112, IntakeCenterlineCrankDeg = 108, AdvanceCrankDeg = 2 });

        Assert.Contains("lobe separation of 112, an intake centreline of 108 and an advance of 2, but 112 less 108 is 4", question.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Lifts_that_disagree_are_asked_with_the_ratio() =>
        Assert.Contains(".335 times the rocker ratio 1.5 is .503", Contradiction(Wishes.Street with { Intake = Wishes.Street.Intake with { ValveLiftIn = .56 } }).Text, StringComparison.Ordinal);

    [Fact]
    public void Lash_on_hydraulic_lifters_is_asked() =>
        Assert.Contains("Are the lifters solid", Contradiction(Wishes.Street with { Intake = Wishes.Street.Intake with { LashIn = .018 } }).Text, StringComparison.Ordinal);

    [Fact]
    public void Side_of_an_engine_with_two_cams_is_missing() =>
        Assert.Contains(Ask(Wishes.Street with { EngineFamily = "OV8-D" }), question => question is { Field: "side", Kind: QuestionKind.Missing });

    [Fact]
    public void Gear_is_asked_only_where_there_is_a_distributor()
    {
        Assert.Contains(Ask(Wishes.Street), question => question.Field == "distributorGear");
        Assert.DoesNotContain(Ask(Wishes.Street with { EngineFamily = "NV8-C" }), question => question.Field == "distributorGear");
    }

    [Fact]
    public void Everything_said_leaves_nothing_to_ask() => Assert.Empty(Ask(Wishes.Street with
    {
        Exhaust = new LobeWish { LobeLiftIn = .34, DurationAt050CrankDeg = 228 },
        LobeSeparationCamDeg = 112,
        AdvanceCrankDeg = 4,
        DistributorGear = DistributorGear.Bronze,
        MechanicalFuelPump = false,
    }));

    /// <summary>Whatever stands in the way of an order is asked, and every question ends as one.</summary>
    [Fact]
    public void Whatever_is_in_the_way_is_asked() => CsCheck.Check.Sample(
        RandomSpecs.Any,
        spec =>
        {
            var questions = Ask(spec);
            Assert.Superset(Wishes.Completed(spec).InTheWay.Select(problem => problem.Field).ToHashSet(), questions.Select(question => question.Field).ToHashSet());
            Assert.All(questions, question => Assert.Contains('?', question.Text));
        },
        iter: 2000);

    private static SpecQuestion Contradiction(CamSpec spec) => Assert.Single(Ask(spec), question => question.Kind == QuestionKind.Contradiction);

    private static IReadOnlyList<SpecQuestion> Ask(CamSpec spec) =>
        SpecQuestions.Of(spec, SeedFiles.Scenario.Families.SingleOrDefault(family => family.Code == spec.EngineFamily));
}
