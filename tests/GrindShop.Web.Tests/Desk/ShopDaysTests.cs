using GrindShop.Web.Desk;

namespace GrindShop.Web.Tests.Desk;

public class ShopDaysTests
{
    [Theory]
    [InlineData("2026-03-11T10:30", "2026-03-16T08:00")]
    [InlineData("2026-03-15T23:59", "2026-03-16T08:00")]
    [InlineData("2026-03-16T00:00", "2026-03-23T08:00")]
    public void Monday_is_the_next_one(string now, string monday) =>
        Assert.Equal(DateTime.Parse(monday, null), ShopDays.Usual(DateTime.Parse(now, null)).Single(day => day.Name.StartsWith("Monday", StringComparison.Ordinal)).At);

    [Theory]
    [InlineData("2026-03-11T10:30", "2026-03-11T11:00")]
    [InlineData("2026-03-11T10:31", "2026-03-11T11:30")]
    [InlineData("2026-03-11T23:50", "2026-03-12T00:30")]
    public void Soon_is_a_half_hour_that_is_half_an_hour_away(string now, string soon) => Assert.Equal(DateTime.Parse(soon, null), ShopDays.Soon(DateTime.Parse(now, null)));
}
