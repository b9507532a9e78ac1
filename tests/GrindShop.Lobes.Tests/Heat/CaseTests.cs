namespace GrindShop.Lobes.Tests;

public class CaseTests
{
    private static readonly CaseReading[] Traverse =
        [new(.004, 740), new(.012, 700), new(.020, 620), new(.028, 520), new(.036, 420), new(.050, 330)];

    // SAE J423 limits for induction-hardened steel (memory).
    [Theory]
    [InlineData(.33, 40)]
    [InlineData(.42, 40)]
    [InlineData(.43, 45)]
    [InlineData(.52, 45)]
    [InlineData(.53, 50)]
    [InlineData(.60, 50)]
    public void Induction_limit_by_carbon(double carbon, double hrc) =>
        Assert.Equal(new HardnessReading(hrc, HardnessScale.Hrc), CaseLimit.Induction(carbon)!.Limit);

    [Fact]
    public void Too_little_carbon_has_no_induction_limit() => Assert.Null(CaseLimit.Induction(.20));

    // ISO 18203 to 550 HV and SAE J423 to 50 HRC = 513 HV (ASTM E140); the straight lines are computed by hand.
    [Fact]
    public void Two_criteria_give_two_depths()
    {
        Assert.Equal(.020 + .008 * 70 / 100, EffectiveCase.Depth(Traverse, CaseLimit.Iso18203).Required(), 1e-12);
        Assert.Equal(.028 + .008 * 7 / 100, EffectiveCase.Depth(Traverse, CaseLimit.SaeCarburized).Required(), 1e-12);
    }

    [Fact]
    public void A_reading_at_the_limit_is_still_case() => Assert.Equal(
        .03, EffectiveCase.Depth([new(.01, 600), new(.02, 550), new(.03, 550), new(.04, 500)], CaseLimit.Iso18203).Required(), 1e-12);

    [Fact]
    public void A_traverse_that_gives_no_depth_says_why()
    {
        Assert.Equal(new CaseProblem.TooFewReadings(), Problem(new CaseReading(.01, 600)));
        Assert.Equal(new CaseProblem.SoftFromTheStart(500, 550), Problem(new(.01, 500), new(.02, 480)));
        Assert.Equal(new CaseProblem.DeeperThanMeasured(.02, 550), Problem(new(.01, 700), new(.02, 600)));
        Assert.Equal(new CaseProblem.DepthsNotRising(.01), Problem(new(.01, 700), new(.01, 600)));
    }

    [Fact]
    public void Nonsense_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("carbonPercent", () => CaseLimit.Induction(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("HardnessHv", () => Problem(new(.01, double.NaN), new(.02, 500)));
        Assert.Throws<ArgumentOutOfRangeException>("DepthIn", () => Problem(new(-1, 700), new(.02, 500)));
    }

    private static CaseProblem? Problem(params CaseReading[] readings) => EffectiveCase.Depth(readings, CaseLimit.Iso18203).Problem;
}
