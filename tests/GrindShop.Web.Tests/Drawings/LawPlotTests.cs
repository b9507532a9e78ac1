using Bunit;
using GrindShop.Lobes;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class LawPlotTests
{
    private static readonly LawLobe Intake = Lobe("intake", SampleLobe.Law);
    private static readonly LawLobe Exhaust = Lobe("exhaust", PolynomialLaw.Solve(new LobeSpec(.350, 236, 286, .006)));
    private static readonly IReadOnlyList<LawPlot> Plots = LawPlot.Of(Intake, Exhaust);

    [Fact]
    public void The_peaks_are_those_of_the_kernel()
    {
        Assert.Equal(("0.335", "0.350"), (Plots[0].Peaks[0].Intake, Plots[0].Peaks[0].Exhaust));
        Assert.Equal(SampleLobe.Law.MaxVelocityInPerCamDeg, double.Parse(Plots[1].Peaks[0].Intake, System.Globalization.CultureInfo.InvariantCulture), 1e-5);
        Assert.Equal(Intake.Contour.MinConvexRadiusIn, double.Parse(Plots[3].Peaks[0].Intake, System.Globalization.CultureInfo.InvariantCulture), 1e-3);
    }

    /// <summary>A symmetric lobe of 222 crank degrees at .050 passes it 55.5 cam degrees from its nose.</summary>
    [Fact]
    public void The_crossings_are_a_quarter_of_the_duration_from_the_nose()
    {
        Assert.All(Plots, plot => Assert.Equal([-55.5, 55.5], plot.IntakeCrossings, Close));
        Assert.All(Plots, plot => Assert.Equal([-59, 59], plot.ExhaustCrossings, Close));
    }

    [Fact]
    public void Acceleration_is_the_slope_of_velocity()
    {
        const double at = .4, step = 1e-4, perDeg = Math.PI / 180;
        var slope = (SampleLobe.Law.At(at + step).VelocityInPerRad - SampleLobe.Law.At(at - step).VelocityInPerRad) / (2 * step);
        Assert.Equal(slope * perDeg * perDeg, SampleLobe.Law.At(at).AccelerationInPerRad2 * perDeg * perDeg, 1e-8);
        Assert.Equal("most", Plots[2].Peaks[0].Which);
        Assert.Equal("least", Plots[2].Peaks[1].Which);
    }

    /// <summary>An eccentric circle under a flat face has its own radius everywhere (checked against the exact answer).</summary>
    [Fact]
    public void The_contour_of_an_eccentric_circle_is_one_radius()
    {
        var law = TableLaw.Of([.. Enumerable.Range(-180, 360).Select(deg => new TablePoint(deg, .1 * (1 + Math.Cos(double.DegreesToRadians(deg)))))], 0);
        var lobe = new LawLobe("intake", law, LobeContour.Of(law, Follower.Flat, .8));
        var peak = LawPlot.Of(lobe, lobe)[3].Peaks[0];
        Assert.Equal("0.500", peak.Intake);
    }

    [Fact]
    public async Task Every_plot_says_its_numbers_with_units()
    {
        await using var browser = new BunitContext();
        var drawn = browser.Render<LawPlots>(parts => parts.Add(plots => plots.Plots, Plots).Add(plots => plots.Id, "law"));
        Assert.Equal(4, drawn.FindAll("svg[role=img]").Count);
        Assert.Contains("Intake: most 0.335 in; .050 in of lift is passed 55.5 cam degrees before and 55.5 after the nose", drawn.Find("#law-0-desc").TextContent);
        Assert.Contains("in per cam degree squared", drawn.Find("#law-2-desc").TextContent);
    }

    private static LawLobe Lobe(string name, LiftLaw law) => new(name, law, LobeContour.Of(law, SampleLobe.Roller, SampleLobe.BaseCircleIn));

    private static bool Close(double one, double other) => Math.Abs(one - other) < .01;
}
