using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public class FilledBoxTests
{
    [Fact]
    public void A_box_follows_the_book_until_somebody_types_in_it()
    {
        var box = new FilledBox();
        box.Follow("H1");
        box.Follow("H2");
        Assert.Equal(("H2", false), (box.Typed, box.IsStale));

        box.Typed = "H7";
        box.Follow("H2");
        Assert.False(box.IsStale);
        box.Follow("H3");
        Assert.Equal(("H7", true), (box.Typed, box.IsStale));
        box.Look();
        Assert.Equal(("H7", false), (box.Typed, box.IsStale));

        box.Follow("H7");
        box.Follow("H8");
        Assert.Equal(("H8", false), (box.Typed, box.IsStale));
    }
}
