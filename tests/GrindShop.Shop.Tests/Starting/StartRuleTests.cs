using GrindShop.Shop.Starting;
using GrindShop.Shop.Tests.Demo;

namespace GrindShop.Shop.Tests.Starting;

public class StartRuleTests
{
    private static readonly StartRules Rules = SeedFiles.Scenario.StartRules;

    [Fact]
    public void Rules_of_the_demo_and_the_plain_ones_may_be_used()
    {
        Assert.Empty(StartRuleCheck.Problems(Rules));
        Assert.Empty(StartRuleCheck.Problems(StartRules.Plain));
    }

    [Theory]
    [InlineData(3400, 214)]
    [InlineData(4750, 211)]
    [InlineData(5000, 214)]
    [InlineData(12000, 282)]
    public void Tables_run_straight_between_rows_and_level_beyond_them(double rpm, double crankDeg) =>
        Assert.Equal(rpm < 3500 ? 196 : crankDeg, StartRules.Read(Rules.Top, rpm), 9);

    [Fact]
    public void Speeds_and_durations_rise_from_row_to_row()
    {
        var rows = Rules.Top.ToList();
        (rows[1], rows[2]) = (rows[2], rows[1]);
        Assert.Equal(["top.2.rpm", "top.2.crankDeg"], StartRuleCheck.Problems(Rules with { Top = rows }).Select(problem => problem.Field));
    }

    [Fact]
    public void A_choice_without_its_row_is_a_problem() =>
        Assert.Equal("uses", Assert.Single(StartRuleCheck.Problems(Rules with { Uses = [.. Rules.Uses.Skip(1)] })).Field);

    [Fact]
    public void Every_cell_reads_what_it_set_and_leaves_the_rest()
    {
        foreach (var cell in RuleCell.Of(Rules))
        {
            var value = cell.Get(Rules) + .001;
            var changed = cell.Set(Rules, value);
            Assert.Equal(value, cell.Get(changed));
            Assert.Equal($"{cell.Words}: {cell.Text(cell.Get(Rules))} to {cell.Text(value)}", Assert.Single(StartRuleCheck.Changes(Rules, changed)));
        }
    }
}
