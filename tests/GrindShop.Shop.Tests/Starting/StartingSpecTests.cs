using CsCheck;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;

namespace GrindShop.Shop.Tests.Starting;

public class StartingSpecTests
{
    private static readonly StartRules Rules = SeedFiles.Scenario.StartRules;

    private static readonly Gen<StartAnswers> Answers =
        from family in Gen.OneOf(SeedFiles.Scenario.Families.ToArray())
        from lifter in Gen.Enum<LifterType>()
        from use in Gen.Enum<StartUse>()
        from idle in Gen.Enum<IdleWish>()
        from each in Gen.Double[StartAnswers.Cylinder.Least, StartAnswers.Cylinder.Most]
        from low in Gen.Double[StartAnswers.From.Least, StartAnswers.From.Most]
        from span in Gen.Double[StartAnswers.LeastSpanRpm, 6000]
        let high = Math.Clamp(low + span, StartAnswers.To.Least, StartAnswers.To.Most)
        select new StartAnswers(family, lifter, use, each * family.Cylinders, low, high, idle);

    [Fact]
    public void Any_answer_gives_a_specification_in_every_range_and_without_contradiction() => Answers.Sample(
        answers =>
        {
            var spec = StartingSpec.Of(answers, Rules).Spec;
            var completed = SpecCompletion.Complete(spec, answers.Family);
            Assert.Empty(SpecCheck.Problems(spec, answers.Family));
            Assert.Empty(completed.Problems);
            Assert.NotNull(completed.Grind);
        },
        iter: 2000);

    [Fact]
    public void More_speed_never_takes_a_shorter_or_a_lower_lobe() => Gen.Select(Answers, Gen.Double[0, 4000]).Sample(
        (answers, more) =>
        {
            var faster = answers with { ToRpm = Math.Min(answers.ToRpm + more, StartAnswers.To.Most) };
            var (slow, fast) = (StartingSpec.Of(answers, Rules).Spec, StartingSpec.Of(faster, Rules).Spec);
            Assert.True(fast.Intake.DurationAt050CrankDeg >= slow.Intake.DurationAt050CrankDeg);
            Assert.True(fast.Exhaust.DurationAt050CrankDeg >= slow.Exhaust.DurationAt050CrankDeg);
            Assert.True(fast.Intake.LobeLiftIn >= slow.Intake.LobeLiftIn);
        });

    [Fact]
    public void A_rougher_idle_never_takes_a_shorter_lobe_or_a_wider_separation() => Answers.Sample(answers =>
    {
        var (smooth, rough) = (StartingSpec.Of(answers with { Idle = IdleWish.Smooth }, Rules).Spec, StartingSpec.Of(answers with { Idle = IdleWish.Rough }, Rules).Spec);
        Assert.True(rough.Intake.DurationAt050CrankDeg >= smooth.Intake.DurationAt050CrankDeg);
        Assert.True(rough.LobeSeparationCamDeg <= smooth.LobeSeparationCamDeg);
    });

    /// <summary>Also with rules that only the owner's own check bounds.</summary>
    [Fact]
    public void Whatever_the_owner_may_write_the_figures_stay_in_their_ranges() => Gen.Select(Answers, Gen.Double[0, 1].Array[RuleCell.Of(Rules).Count]).Sample((answers, shares) =>
    {
        var wild = RuleCell.Of(Rules).Zip(shares).Aggregate(Rules, (rules, cell) => cell.First.Set(rules, cell.First.Range.Least + cell.Second * (cell.First.Range.Most - cell.First.Range.Least)));
        Assert.All(StartingSpec.Of(answers, wild).Figures, figure => Assert.Null(figure.Range.Check(figure.Value, figure.Path)));
    });

    [Fact]
    public void Every_figure_says_how_it_came_about()
    {
        var family = SeedFiles.Scenario.Families.Single(family => family.Code == "RV8-R");
        var start = StartingSpec.Of(new StartAnswers(family, LifterType.HydraulicRoller, StartUse.Tow, 400, 1000, 5500, IdleWish.Rough), Rules);
        Assert.All(start.Figures, figure => Assert.NotEmpty(figure.Reasons));
        Assert.Equal(
            [
                "221 for pulling up to 5500 rpm",
                "not more than 212, so that it pulls from 1000 rpm",
                "1.8 longer for cylinders of 50 cubic inches (the table is for 44)",
                "6 shorter for towing and hauling: it works at low speed most of the time",
                "4 longer for a rough idle: more overlap is what one hears",
            ],
            start.Figures.First().Reasons);
        Assert.Equal(212, start.Spec.Intake.DurationAt050CrankDeg);
    }

    /// <summary>A usual wish for each family and lifter that it has blanks for: the start itself, or what comes close, comes out of one.</summary>
    [Fact]
    public void A_usual_wish_starts_from_a_cam_that_can_be_ground_or_from_what_comes_close()
    {
        foreach (var (family, lifter) in from family in SeedFiles.Scenario.Families from lifter in Enum.GetValues<LifterType>() where HasBlank(family, lifter) select (family, lifter))
            foreach (var (use, from, to) in new[] { (StartUse.Street, 1500, 5500), (StartUse.Strip, 4000, 7500) })
                Assert.True(IsGrindable(new StartAnswers(family, lifter, use, 44 * family.Cylinders, from, to, IdleWish.Noticeable)), $"{family.Code} {lifter} {use}");
    }

    private static bool HasBlank(EngineFamily family, LifterType lifter) =>
        Shelf.Of(family).Any(blank => Shelf.Rules.Lifter(blank.Part.Alloy, lifter)?.Verdict != RuleVerdict.No);

    private static bool IsGrindable(StartAnswers answers)
    {
        var answer = Shelf.Judge(SpecCompletion.Complete(StartingSpec.Of(answers, Rules).Spec, answers.Family).Grind!);
        var blanks = Shelf.Of(answers.Family).Select(blank => new StockedBlank(blank, 1)).ToList();
        return answer.Verdict != Verdict.NotGrindable || NearestGrinds.Of(answer, answers.Family, blanks, Shelf.Rules, CancellationToken.None).Count > 0;
    }
}
