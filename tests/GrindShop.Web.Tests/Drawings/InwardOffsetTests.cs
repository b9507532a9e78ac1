using GrindShop.Lobes;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class InwardOffsetTests
{
    [Fact]
    public void Of_a_circle_it_is_the_smaller_circle()
    {
        var edge = InwardOffset.Of(Around(BlankOutline.Round(2)), .1);
        Assert.Equal(720, edge.Count);
        Assert.All(edge, point => Assert.Equal(.9, Math.Sqrt(point.X * point.X + point.Y * point.Y), 4));
    }

    [Fact]
    public void Every_point_lies_as_deep_as_asked_below_a_milled_lobe()
    {
        var lobe = Around(SampleLobe.Blank);
        var edge = InwardOffset.Of(lobe, .150);
        Assert.NotEmpty(edge);
        Assert.All(edge, point => Assert.Equal(.150, InwardOffset.DistanceIn(lobe, point), 3e-4));
    }

    [Fact]
    public void A_narrow_nose_is_trimmed_and_not_turned_inside_out()
    {
        var lobe = Around(SampleLobe.Blank);
        var edge = InwardOffset.Of(lobe, .450);
        Assert.InRange(edge.Count, 1, lobe.Count - 1);
        Assert.All(edge, point => Assert.True(InwardOffset.DistanceIn(lobe, point) > .4495));
    }

    [Fact]
    public void Nothing_lies_deeper_than_the_middle() => Assert.Empty(InwardOffset.Of(Around(BlankOutline.Round(1)), .6));

    private static List<(double X, double Y)> Around(BlankOutline blank) => [.. blank.Points.Select(point => (point.XIn, point.YIn))];
}
