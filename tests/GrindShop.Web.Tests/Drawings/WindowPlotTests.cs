using Bunit;
using GrindShop.Lobes;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class WindowPlotTests
{
    private static readonly CamPhase Milled = new(110, 106);

    [Fact]
    public void The_corners_of_the_picture_are_those_of_the_window()
    {
        var window = Window(Milled);
        var picture = new WindowPicture(window);
        Assert.Equal(4, window.Window.Corners.Length);
        var around = window.Window.Corners.Select(picture.Place).Select(corner => $"{PlotFrame.N(corner.X)} {PlotFrame.N(corner.Y)}");
        Assert.Equal($"M{string.Join('L', around)}Z", picture.Outline);
        Assert.All(window.Window.Corners, corner => Assert.InRange(picture.Place(corner).X, PlotFrame.Left, PlotFrame.Right));
    }

    /// <summary>Intake turn = ICL change / 2; separation = sum of both turns (the definitions in docs/mathematics.md).</summary>
    [Fact]
    public void A_corner_follows_from_the_turns_of_both_lobes()
    {
        var window = Window(Milled).Window;
        var (intake, exhaust) = (window.IntakeTurn!.Value, window.ExhaustTurn!.Value);
        Assert.Equal(new CamPhase(110 + intake.MaxCamDeg + exhaust.MaxCamDeg, 106 + 2 * intake.MaxCamDeg), window.Corners[2]);
    }

    [Fact]
    public void A_point_inside_needs_no_nearest_and_one_outside_is_led_to_the_edge()
    {
        Assert.Null(new WindowPicture(Window(Milled)).Nearest);
        var outside = new WindowPicture(Window(new CamPhase(125, 106)));
        Assert.NotNull(outside.Nearest);
        Assert.True(outside.Nearest.Value.X < outside.Wanted.X);
        Assert.Contains("outside the window; the nearest point inside is lobe separation 11", outside.Description);
    }

    [Fact]
    public async Task The_plot_says_its_numbers_and_lists_the_corners()
    {
        await using var browser = new BunitContext();
        var plot = browser.Render<WindowPlot>(parts => parts.Add(plot => plot.Window, Window(Milled)).Add(plot => plot.Id, "one"));
        Assert.Equal("img", plot.Find("svg").GetAttribute("role"));
        Assert.Contains("milled for lobe separation 110.0° and intake centreline 106.0°", plot.Find("#one-desc").TextContent);
        Assert.Contains("Inside", plot.Find("figcaption strong").TextContent);
        Assert.Equal(4, plot.FindAll("tbody tr").Count);
    }

    [Fact]
    public async Task Without_metal_there_is_a_sentence_and_no_table()
    {
        await using var browser = new BunitContext();
        var plot = browser.Render<WindowPlot>(parts => parts.Add(plot => plot.Window, Window(Milled, SampleLobe.BaseCircleIn + .1)).Add(plot => plot.Id, "one"));
        Assert.Empty(plot.FindAll("table"));
        Assert.Contains("there is no separation and centreline", plot.Find("figcaption").TextContent);
    }

    private static BlankWindow Window(CamPhase wanted, double baseCircleIn = SampleLobe.BaseCircleIn) => new(
        GrindWindow.Of(new WindowQuestion(
            SampleLobe.Blank, SampleLobe.Blank, Milled, SampleLobe.Finish, SampleLobe.Finish, wanted, new BandLimits(.005), baseCircleIn, baseCircleIn)),
        Milled, wanted, baseCircleIn, baseCircleIn);
}
