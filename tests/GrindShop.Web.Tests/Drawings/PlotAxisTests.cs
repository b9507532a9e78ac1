using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class PlotAxisTests
{
    [Theory]
    [InlineData(0, .335, new[] { 0, .1, .2, .3, .4 }, "0.3")]
    [InlineData(-.0003, .0011, new[] { -.0005, 0, .0005, .001, .0015 }, "0.0005")]
    [InlineData(97, 117, new double[] { 95, 100, 105, 110, 115, 120 }, "100")]
    public void Marks_are_round_and_hold_the_values(double least, double most, double[] marks, string said)
    {
        var axis = new PlotAxis(least, most, 0, 100);
        Assert.Equal(marks, axis.Marks, (one, other) => Math.Abs(one - other) < 1e-9);
        Assert.Equal((0, 100), (axis.At(marks[0]), axis.At(marks[^1])));
        Assert.Contains(said, axis.Marks.Select(axis.Say));
    }

    [Fact]
    public void An_axis_that_is_not_rounded_ends_where_it_was_told()
    {
        var axis = new PlotAxis(-83, 83, 10, 20, rounded: false);
        Assert.Equal((10, 15, 20), (axis.At(-83), axis.At(0), axis.At(83)));
        Assert.Equal([-50, 0, 50], axis.Marks);
    }

    [Fact]
    public void One_value_alone_is_given_room()
    {
        var axis = new PlotAxis(4, 4, 0, 100);
        Assert.True(axis.From < 4 && axis.To > 4);
    }

    [Fact]
    public void A_curve_breaks_where_there_is_no_value()
    {
        var axis = new PlotAxis(0, 10, 0, 10);
        Assert.Equal("M0 0L1 1M3 3L4 4", PlotFrame.Curve(axis, axis, [(0, 0), (1, 1), (2, null), (3, 3), (4, 4)]));
    }
}
