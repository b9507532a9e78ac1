using Bunit;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Web.Drawings;
using GrindShop.Web.Public;

namespace GrindShop.Web.Tests.Drawings;

public sealed class ContactCurveTests
{
    private static readonly LobeContour Contour = LobeContour.Of(SampleLobe.Law, SampleLobe.Roller, SampleLobe.BaseCircleIn);

    [Fact]
    public void Stations_are_the_law_and_the_contour()
    {
        var stations = LobeStations.Of(SampleLobe.Finish, Contour);
        Assert.Equal(181, stations.Count);
        var nose = stations.Single(station => station.CamDeg == 0);
        Assert.Equal((SampleLobe.LiftIn, 0), (nose.LiftIn, nose.PressureAngleDeg));
        Assert.Equal(Contour.MaxPressureAngleDeg!.Value, stations.Max(station => station.PressureAngleDeg), .1);
        Assert.Equal(SampleLobe.BaseCircleIn / 2, stations[0].RadiusIn!.Value, 1e-9);
    }

    /// <summary>On the base circle, without inertia: two cylinders under the seat load times the rocker ratio; p0 = sqrt(F E* / (pi w R)).</summary>
    [Fact]
    public void On_the_base_circle_it_is_the_plain_formula()
    {
        var train = new ValveTrain(130, 400, 1.5, 0, .9);
        var row = Profile(train, 0).Rows[0];
        var steel = ElasticConstants.Steel;
        var modulus = 1 / (2 * (1 - steel.Poisson * steel.Poisson) / steel.ModulusPsi);
        var curvature = 1 / .375 + 2 / SampleLobe.BaseCircleIn;
        Assert.Equal(Math.Sqrt(130 * 1.5 * modulus * curvature / (Math.PI * .5)), row.Contact.Value!.PeakPressurePsi, 1);
    }

    [Fact]
    public void Too_fast_for_the_spring_the_curve_says_where_the_follower_leaves()
    {
        var train = new ValveTrain(130, 400, 1.5, 0, .9);
        Assert.Null(new ContactCurve(Profile(train, 1000), null).LostCamDeg);
        var fast = new ContactCurve(Profile(train, 12000), null);
        Assert.NotNull(fast.LostCamDeg);
        Assert.Contains("the follower leaves the lobe", fast.Description);
    }

    [Fact]
    public async Task The_plot_names_the_row_that_stands_in()
    {
        await using var browser = new BunitContext();
        var curve = new ContactCurve(Profile(new ValveTrain(130, 400, 1.5, 0, .9), 1000), ContactAdvice.For(BlankAlloy.Steel5160.Kernel(), FollowerMotion.Rolling));
        var plot = browser.Render<ContactPlot>(parts => parts.Add(plot => plot.Curve, curve).Add(plot => plot.Id, "one"));
        Assert.Contains("stands in: no row for 5150 or 5160", plot.Find("figcaption").TextContent);
        Assert.Single(plot.FindAll("path.level"));
        Assert.Contains("thousand psi", plot.Find("#one-desc").TextContent);
    }

    [Fact]
    public void Every_alloy_has_its_name_in_the_kernel() =>
        Assert.Equal(Enum.GetValues<CamAlloy>(), Enum.GetValues<BlankAlloy>().Select(alloy => alloy.Kernel()).Order());

    [Fact]
    public void The_springs_rate_follows_from_its_two_loads()
    {
        var draft = TrainFields.Example();
        Assert.Empty(TrainFields.Problems(draft));
        var train = TrainFields.Train(draft, .400, 1.5, 0);
        Assert.Equal((330 - 130) / .6, train.SpringRateLbfPerIn, 9);
        draft["contact.open"] = "100";
        Assert.Equal("contact.open", Assert.Single(TrainFields.Problems(draft)).Field);
        draft["contact.seat"] = "strong";
        Assert.Contains("between 20 and 1000 lbf", Assert.Single(TrainFields.Problems(draft)).Message);
    }

    private static ContactProfile Profile(ValveTrain train, double rpm) => ContactProfile.Of(
        LobeStations.Of(SampleLobe.Finish, Contour), train, new FollowerFace(.5, .375, ElasticConstants.Steel, ElasticConstants.Steel), rpm);
}
