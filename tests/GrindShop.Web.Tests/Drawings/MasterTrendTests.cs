using Bunit;
using GrindShop.Lobes;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class MasterTrendTests
{
    private static readonly WheelSetting MadeAt = new(SampleLobe.BaseCircleIn, 9);
    private static readonly double[] Checks = [.050, .006];

    [Fact]
    public void Settings_run_from_the_largest_base_circle_down_with_both_wheels()
    {
        var settings = MasterTrend.SettingsOf(1.1, .8, 9, 8).ToList();
        Assert.Equal(2 * MasterTrend.Settings, settings.Count);
        Assert.Equal((new WheelSetting(1.1, 9), new WheelSetting(1.1, 8)), (settings[0], settings[1]));
        Assert.Equal(.8, settings[^1].BaseCircleDiameterIn, 9);
    }

    /// <summary>Common practice, no source: under a roller a smaller base circle gives a smaller duration from the same master; it starts from the duration it was made for.</summary>
    [Fact]
    public void Under_a_roller_the_duration_falls_with_the_base_circle()
    {
        var trend = Trend(SampleLobe.Roller);
        Assert.Equal(222, trend.SameWheel[0].Durations[0].CrankDeg, .01);
        var changes = trend.SameWheel.Select(result => trend.ChangeCrankDeg(result, 0)).ToList();
        Assert.Equal(changes.OrderDescending(), changes);
        Assert.True(changes[^1] < -1, $"{changes[^1]}");
    }

    /// <summary>Follows from the geometry: a flat tappet sees almost none of it.</summary>
    [Fact]
    public void Under_a_flat_tappet_it_hardly_changes()
    {
        var (roller, flat) = (Trend(SampleLobe.Roller), Trend(Follower.Flat));
        Assert.True(Math.Abs(flat.ChangeCrankDeg(flat.SameWheel[^1], 0)) < .2 * Math.Abs(roller.ChangeCrankDeg(roller.SameWheel[^1], 0)));
    }

    [Fact]
    public async Task The_plot_lists_every_setting_and_says_the_change()
    {
        await using var browser = new BunitContext();
        var plot = browser.Render<MasterPlot>(parts => parts.Add(plot => plot.Trend, Trend(SampleLobe.Roller)).Add(plot => plot.Id, "one"));
        Assert.Equal(MasterTrend.Settings, plot.FindAll("tbody tr").Count);
        Assert.Equal(4, plot.FindAll("svg > path").Count);
        Assert.Contains("The master was made on a base circle of 1.130 in with a wheel of 9.0 in radius", plot.Find("#one-desc").TextContent);
    }

    private static MasterTrend Trend(Follower follower) => MasterTrend.Of(
        MadeAt, Checks, MasterLobe.Results(SampleLobe.Law, follower, MadeAt, MasterTrend.SettingsOf(SampleLobe.BaseCircleIn, 1.0, 9, 8), Checks));
}
