using Bunit;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class LobeReaderTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(-60)]
    [InlineData(35)]
    [InlineData(180)]
    public void On_its_own_grind_the_stock_comes_off_everywhere(double camDeg)
    {
        var read = SampleLobe.Section().ReadAt(camDeg);
        Assert.Equal(SampleLobe.StockIn, read.RemovalIn, 2e-4);
        Assert.Equal(.150 - SampleLobe.StockIn, read.CaseLeftIn!.Value, 2e-4);
        Assert.Equal(SampleLobe.Law.At(double.DegreesToRadians(camDeg)).LiftIn, read.LiftIn, 9);
    }

    [Fact]
    public void The_extremes_all_round_are_those_of_the_judge()
    {
        var section = SampleLobe.Section(turnCamDeg: 2);
        var around = Enumerable.Range(-180, 361).Select(deg => section.ReadAt(deg).RemovalIn).ToList();
        Assert.Equal(section.MinRemovalIn, around.Min(), 3e-4);
        Assert.Equal(section.MaxRemovalIn, around.Max(), 3e-4);
    }

    [Fact]
    public void Missing_metal_counts_below_nothing() => Assert.Equal(-.020, SampleLobe.Section(baseCircleIn: 1.230).ReadAt(180).RemovalIn, 2e-4);

    [Fact]
    public async Task The_slider_reads_and_marks_and_the_buttons_enlarge()
    {
        await using var browser = new BunitContext();
        browser.JSInterop.Mode = JSRuntimeMode.Loose;
        var reader = browser.Render<LobeReader>(parts => parts.Add(lobe => lobe.Section, SampleLobe.Section()).Add(lobe => lobe.Id, "one"));
        Assert.Equal("0° (nose): lift 0.3350 in, 0.0300 in of metal off, case left 0.120 in", reader.Find("output").TextContent);
        await reader.InvokeAsync(() => reader.Find("#one-at").InputAsync("-180"));
        Assert.StartsWith("-180° (opening side): lift 0.0000 in", reader.Find("output").TextContent);
        Assert.Single(reader.FindAll("circle.reading"));
        var whole = reader.Find("svg").GetAttribute("viewBox")!.Split(' ');
        await reader.InvokeAsync(() => reader.Find("button[aria-label^=Enlarge]").ClickAsync());
        var part = reader.Find("svg").GetAttribute("viewBox")!.Split(' ');
        Assert.Equal(("360", "180"), (whole[2], part[2]));
        Assert.True(reader.Find("button[aria-label^=Shrink]").GetAttribute("disabled") is null);
    }
}
