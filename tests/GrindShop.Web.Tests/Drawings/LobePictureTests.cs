using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class LobePictureTests
{
    [Fact]
    public void The_base_circle_is_drawn_to_the_scale_of_the_bar()
    {
        var picture = Picture(SampleLobe.Section());
        Assert.Equal(SampleLobe.BaseCircleIn / 2, picture.BaseRadius / picture.Scale, 9);
    }

    [Fact]
    public void Distances_in_the_picture_are_those_of_the_metal()
    {
        var picture = Picture(SampleLobe.Section());
        var gap = picture.OnFinish(Math.PI).Y - picture.OnBlank(Math.PI).Y;
        Assert.Equal(-SampleLobe.StockIn, gap / picture.Scale, 4);
    }

    [Fact]
    public void The_nose_points_up_and_the_closing_side_lies_right()
    {
        var picture = Picture(SampleLobe.Section());
        Assert.True(picture.OnFinish(0).Y < picture.Axis.Y - picture.BaseRadius);
        Assert.True(picture.OnFinish(Math.PI / 2).X > picture.Axis.X);
    }

    [Fact]
    public void Everything_lies_inside_the_picture()
    {
        var section = SampleLobe.Section(5);
        var picture = Picture(section);
        for (var rad = -Math.PI; rad < Math.PI; rad += .1)
        {
            Assert.InRange(picture.OnBlank(rad, 29).X, 0, LobePicture.Width);
            Assert.InRange(picture.OnBlank(rad, 29).Y, 0, picture.Height);
        }
    }

    [Fact]
    public void Lobes_that_are_compared_have_one_scale()
    {
        var (one, other) = (SampleLobe.Section(), SampleLobe.Section(baseCircleIn: 1.300));
        var reach = LobeReach.Of(one, other);
        Assert.Equal(new LobePicture(one, reach).Scale, new LobePicture(other, reach).Scale);
        Assert.NotEqual(Picture(one).Scale, Picture(other).Scale);
    }

    private static LobePicture Picture(LobeSection section) => new(section, LobeReach.Of(section));
}
