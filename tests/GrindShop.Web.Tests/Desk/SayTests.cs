using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Tests.Desk;

public sealed class SayTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 10, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(20, "just now")]
    [InlineData(60, "1 min")]
    [InlineData(59 * 60, "59 min")]
    [InlineData(3 * 3600, "3 h")]
    [InlineData(86400, "1 day")]
    [InlineData(13 * 86400, "13 days")]
    [InlineData(14 * 86400, "2 weeks")]
    [InlineData(100 * 86400, "3 months")]
    public void An_age_is_said_in_its_largest_unit(int seconds, string words) => Assert.Equal(words, Say.Age(Noon.AddSeconds(-seconds), Noon));

    [Theory]
    [InlineData(-1, "1 day late")]
    [InlineData(-4, "4 days late")]
    [InlineData(0, "due today")]
    [InlineData(1, "due tomorrow")]
    [InlineData(9, "due in 9 days")]
    public void A_due_date_is_said_from_today(int days, string words)
    {
        var today = new DateOnly(2026, 3, 10);
        Assert.Equal(words, Say.Due(today.AddDays(days), today));
    }

    [Fact]
    public void A_cam_is_said_in_one_line()
    {
        var spec = new CamSpec
        {
            Intake = new LobeWish { LobeLiftIn = .355, DurationAt050CrankDeg = 230 },
            Exhaust = new LobeWish { LobeLiftIn = .365, DurationAt050CrankDeg = 236 },
            LobeSeparationCamDeg = 112,
        };
        Assert.Equal("230/236 @.050, .355/.365, LSA 112", spec.Short());
    }

    [Fact]
    public void What_the_customer_left_blank_is_not_said()
    {
        var spec = new CamSpec { Intake = new LobeWish { ValveLiftIn = .5325, DurationAt050CrankDeg = 218.5 } };
        Assert.Equal("218.5 @.050, .533 at the valve", spec.Short());
        Assert.Equal("", new CamSpec().Short());
    }
}
