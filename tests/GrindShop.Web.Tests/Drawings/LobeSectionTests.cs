using GrindShop.Lobes;

namespace GrindShop.Web.Tests.Drawings;

public sealed class LobeSectionTests
{
    [Fact]
    public void The_finished_lobe_runs_from_its_base_circle_to_its_nose()
    {
        var radii = SampleLobe.Section().Finish.Select(Radius).ToList();
        Assert.Equal(SampleLobe.BaseCircleIn / 2, radii.Min(), 5);
        Assert.Equal(SampleLobe.BaseCircleIn / 2 + SampleLobe.LiftIn, radii.Max(), 5);
    }

    [Fact]
    public void Parallel_curves_leave_the_stock_everywhere()
    {
        var section = SampleLobe.Section();
        Assert.Equal(SampleLobe.StockIn, section.MinRemovalIn, 4);
        Assert.Equal(SampleLobe.StockIn, section.MaxRemovalIn, 4);
        Assert.Equal(.120, section.LeastCaseLeftIn!.Value, 4);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(-2)]
    public void A_turn_turns_the_nose_by_as_much(double camDeg)
    {
        var nose = SampleLobe.Section(camDeg).Finish.MaxBy(Radius);
        Assert.Equal(camDeg, double.RadiansToDegrees(Math.Atan2(nose.Y, nose.X)), .26);
    }

    [Fact]
    public void The_least_and_most_metal_lie_on_opposite_flanks_of_a_turned_lobe()
    {
        var section = SampleLobe.Section(2);
        Assert.True(section.MinRemovalIn < SampleLobe.StockIn && section.MaxRemovalIn > SampleLobe.StockIn);
        Assert.InRange(section.LeastAtRad, 0, Math.PI / 2);
        Assert.InRange(section.MostAtRad, -Math.PI / 2, 0);
    }

    [Fact]
    public void The_words_say_the_numbers_of_the_drawing()
    {
        var words = SampleLobe.Section().Description;
        Assert.Contains("Intake lobe inside its blank, to scale: lobe lift 0.335 in on a base circle of 1.130 in", words);
        Assert.Contains("0.030 in at the least", words);
        Assert.Contains("0.120 in of the hardened case is left", words);
    }

    [Fact]
    public void The_words_say_where_metal_is_missing()
    {
        var section = SampleLobe.Section(baseCircleIn: SampleLobe.BaseCircleIn + .100);
        Assert.True(section.LacksMetal);
        Assert.Contains("Metal is missing: the finished lobe would stand up to 0.020 in outside the blank.", section.Description);
    }

    [Fact]
    public void A_blank_without_an_end_to_its_hardness_has_no_case_edge()
    {
        var section = SampleLobe.Section(caseDepthIn: null);
        Assert.Empty(section.CaseEdge);
        Assert.DoesNotContain("case", section.Description);
    }

    private static double Radius((double X, double Y) point) => Math.Sqrt(point.X * point.X + point.Y * point.Y);
}
