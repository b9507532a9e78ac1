using System.Net;
using GrindShop.Lobes;
using GrindShop.Web.Public.Learn;

namespace GrindShop.Web.Tests.Public;

/// <summary>The explanations say what the mathematics says, and a link shows the same picture without any script.</summary>
public sealed class LearnTests(ShopApp app) : IClassFixture<ShopApp>
{
    private const double CleanupIn = .004;

    [Fact]
    public async Task Every_topic_is_reached_from_the_first_page()
    {
        using var client = app.CreateClient();
        Assert.Contains("/learn", await client.GetStringAsync("/"), StringComparison.Ordinal);
        var list = await client.GetStringAsync("/learn");
        Assert.All(LearnTopic.All, topic => Assert.Contains($"href=\"{topic.Address}\"", list, StringComparison.Ordinal));
        foreach (var topic in LearnTopic.All)
            Assert.Contains($">{topic.Title}</h1>", WebUtility.HtmlDecode(await client.GetStringAsync(topic.Address)), StringComparison.Ordinal);
    }

    /// <summary>1.900 - 2 x .420 - .010 = 1.050: the definition of the largest base circle that passes the bore.</summary>
    [Fact]
    public async Task A_link_shows_the_figures_that_were_set()
    {
        using var client = app.CreateClient();
        Assert.Contains("With 0.420 in of lobe lift the base circle can be 1.050 in", await client.GetStringAsync("/learn/base-circle?lift=0.42"), StringComparison.Ordinal);
        Assert.Contains("/learn/base-circle?lift=0.42", await client.GetStringAsync("/learn/base-circle?lift=0.42"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lift=NaN&longer=1e999&drop=-4")]
    [InlineData("lift=%3Cscript%3Ealert(1)%3C/script%3E&separation=9999999&smaller=-1")]
    [InlineData("engine=%27;drop+table&cam=None&distributor=Gold&lift=.3.3")]
    public async Task Nonsense_in_a_link_is_brought_into_range(string query)
    {
        using var client = app.CreateClient();
        foreach (var topic in LearnTopic.All)
        {
            var page = await client.GetStringAsync($"{topic.Address}?{query}");
            Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", page.Replace("lift=NaN", "", StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task An_unknown_topic_offers_the_others()
    {
        using var client = app.CreateClient();
        var page = await client.GetStringAsync("/learn/witchcraft");
        Assert.Contains("There is no such page", page, StringComparison.Ordinal);
        Assert.Contains(LearnTopic.Case.Address, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gears_answer_by_the_shops_own_table()
    {
        using var client = app.CreateClient();
        Assert.Contains("do not run", Advice(await client.GetStringAsync("/learn/gears?engine=RV8-R&cam=Steel&distributor=Iron")), StringComparison.Ordinal);
        Assert.DoesNotContain("do not run", Advice(await client.GetStringAsync("/learn/gears?engine=RV8-R&cam=PressedIron&distributor=Iron")), StringComparison.Ordinal);
    }

    /// <summary>Common practice, no source: with everyday stock the separation can move about 2 cam degrees and the centreline about 3 crank degrees; 10 degrees it cannot.</summary>
    [Theory]
    [InlineData(2, 2, true)]
    [InlineData(-2, -2, true)]
    [InlineData(0, 3, true)]
    [InlineData(8, 0, false)]
    [InlineData(-10, 0, false)]
    public void The_example_moves_as_far_as_the_trade_knows(double separationBy, double centerlineBy, bool may)
    {
        var lobe = LearnCam.Lobe(LearnCam.LiftIn, LearnCam.DurationAt050CrankDeg);
        var baseIn = LearnCam.Section(LearnCam.Milled, lobe, CleanupIn).BaseCircleDiameterIn - .020;
        var wanted = new CamPhase(LearnCam.Phase.LobeSeparationCamDeg + separationBy, LearnCam.Phase.IntakeCenterlineCrankDeg + centerlineBy);
        var window = GrindWindow.Of(new WindowQuestion(LearnCam.Milled, LearnCam.Milled, LearnCam.Phase, lobe, lobe, wanted, new BandLimits(CleanupIn), baseIn, baseIn));
        Assert.Equal(may, window.Inside);
    }

    /// <summary>Common practice, no source: with the same master a smaller base circle shortens the duration under a roller, and hardly under a flat tappet.</summary>
    [Fact]
    public async Task The_same_master_is_shorter_under_a_roller_only()
    {
        using var client = app.CreateClient();
        var page = await client.GetStringAsync("/learn/base-circle?drop=0.1");
        var changes = page[page.IndexOf("id=\"same-master\"", StringComparison.Ordinal)..].Split("</tr>")[1..3].Select(row => Number(row.Split("</td>")[2])).ToList();
        Assert.InRange(changes[0], -4, -1);
        Assert.InRange(changes[1], -.1, .1);
    }

    private static string Advice(string page) => page[page.IndexOf("id=\"gear-advice\"", StringComparison.Ordinal)..][..300];

    private static double Number(string cell) => double.Parse(WebUtility.HtmlDecode(cell[(cell.LastIndexOf('>') + 1)..]), System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void A_shallow_case_is_ground_through_where_a_deep_one_holds()
    {
        var lobe = LearnCam.Lobe(LearnCam.LiftIn, LearnCam.DurationAt050CrankDeg);
        Assert.True(LearnCam.Section(LearnCam.Milled, lobe, CleanupIn, .120, caseIn: .060).LeastCaseLeftIn < .025);
        Assert.True(LearnCam.Section(LearnCam.Milled, lobe, CleanupIn, .120, caseIn: .250).LeastCaseLeftIn > .080);
    }

    [Theory]
    [InlineData(double.NaN, .36)]
    [InlineData(9, .48)]
    [InlineData(-9, .26)]
    [InlineData(.3024, .30)]
    public void A_slider_stops_at_its_stops(double value, double stop) => Assert.Equal(stop, BaseCircleCosts.Lift.Stop(value), 9);
}
