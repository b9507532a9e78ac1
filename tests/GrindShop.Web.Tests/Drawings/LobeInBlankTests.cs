using Bunit;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class LobeInBlankTests
{
    [Fact]
    public async Task The_picture_has_its_numbers_as_its_text()
    {
        await using var browser = new BunitContext();
        var section = SampleLobe.Section();
        var drawing = browser.Render<LobeInBlank>(parts => parts.Add(lobe => lobe.Section, section).Add(lobe => lobe.Id, "one"));
        var svg = drawing.Find("svg");
        Assert.Equal("img", svg.GetAttribute("role"));
        Assert.Equal("one-title one-desc", svg.GetAttribute("aria-labelledby"));
        Assert.Equal(section.Description, drawing.Find("#one-desc").TextContent);
        Assert.Equal(2 * SampleLobe.BaseCircleIn / 4 * Scale(section), double.Parse(drawing.Find("circle.base").GetAttribute("r")!, System.Globalization.CultureInfo.InvariantCulture), .01);
    }

    [Fact]
    public async Task Case_edge_and_missing_metal_are_drawn_only_where_there_are_any()
    {
        await using var browser = new BunitContext();
        var plain = browser.Render<LobeInBlank>(parts => parts.Add(lobe => lobe.Section, SampleLobe.Section(caseDepthIn: null)).Add(lobe => lobe.Id, "one"));
        Assert.Empty(plain.FindAll(".case"));
        var lacking = browser.Render<LobeInBlank>(parts => parts.Add(lobe => lobe.Section, SampleLobe.Section(baseCircleIn: 1.230)).Add(lobe => lobe.Id, "two"));
        Assert.Single(lacking.FindAll(".case"));
        Assert.Contains("a: 0.020 in of metal missing", lacking.Find("figcaption").TextContent);
    }

    private static double Scale(LobeSection section) => new LobePicture(section, LobeReach.Of(section)).Scale;
}
