using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public class SumWordsTests
{
    [Fact]
    public void The_sum_is_told_without_what_is_zero()
    {
        Assert.Equal("= 12 received − 4 taken + 1 by counts", SumWords.Of(9, (12, "received"), (-4, "taken"), (0, "scrapped"), (1, "by counts")));
        Assert.Equal("= 0 received", SumWords.Of(0, (0, "received"), (0, "taken")));
    }

    [Fact]
    public void A_sum_that_does_not_add_up_is_a_bug() => Assert.Throws<ArgumentException>(() => SumWords.Of(8, (12, "received"), (-3, "taken")));
}
