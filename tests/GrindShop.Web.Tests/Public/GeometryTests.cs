using Bunit;
using GrindShop.Web.Public;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Public;

public sealed class GeometryTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private const string Cam = "engine=RV8-R&lifter=HydraulicRoller&i050=222&ilift=.335";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Without_a_cam_it_asks_for_one()
    {
        await using var browser = Browser();
        var page = Open(browser, "geometry");
        page.WaitForState(() => page.FindAll("#engine-family option").Count > 1 && page.FindAll(".waiting").Count == 1, Patience);
        Assert.True(page.Find("details").HasAttribute("open"));
        Assert.Empty(page.FindAll("#use"));
    }

    [Fact]
    public async Task A_link_draws_its_cam()
    {
        await using var browser = Browser();
        var page = Open(browser, $"geometry?{Cam}&blank=RV8R-515-07");
        page.WaitForState(() => page.FindAll("#window-desc").Count == 1 && page.FindAll("#master-desc").Count == 1 && page.FindAll("#contact-desc").Count == 1, Patience);
        Assert.Equal("RV8R-515-07", page.Find("#blank").GetAttribute("value"));
        Assert.Equal(["intake-lobe-desc", "exhaust-lobe-desc", "window-desc", "law-0-desc", "law-1-desc", "law-2-desc", "law-3-desc", "end-desc", "master-desc", "contact-desc"],
            page.FindAll("section desc").Select(text => text.Id));
        Assert.Contains("222° at .050 and 0.335 in intake", page.Find("summary").TextContent);
        Assert.Contains("blank=RV8R-515-07", page.Find(".choice a").GetAttribute("href"));
    }

    [Fact]
    public async Task Another_blank_is_drawn_at_once()
    {
        await using var browser = Browser();
        var page = Open(browser, $"geometry?{Cam}");
        page.WaitForState(() => page.FindAll("#window-desc").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#blank").ChangeAsync("RV8R-862-14"));
        page.WaitForState(() => page.Markup.Contains("A full-round blank has no lobes yet", StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task What_cannot_be_used_of_a_link_is_named_and_the_rest_is_taken()
    {
        await using var browser = Browser();
        var page = Open(browser, "geometry?engine=RV8-R&lsa=9000&i050=x");
        page.WaitForState(() => page.FindAll("#ignored li").Count == 2, Patience);
        Assert.Contains("lsa: Lobe separation must lie between 90 and 130 cam degrees.", page.Find("#ignored").TextContent);
        Assert.Contains("Lobe separation must lie between", page.Find("#lsa-problem").TextContent);
        Assert.Equal("RV8-R", page.Find("#engine-family").GetAttribute("value"));
    }

    /// <summary>On the largest base circle that cleans up, the grind that was answered is in the window, and little else.</summary>
    [Fact]
    public async Task The_window_closes_on_the_wanted_point_as_the_base_circle_grows()
    {
        await using var browser = Browser();
        var page = Open(browser, $"geometry?{Cam}");
        page.WaitForState(() => page.FindAll("#window-desc").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#smaller").InputAsync("0"));
        page.WaitForState(() => page.Find("section figcaption").TextContent.Length > 0 && page.Markup.Contains("1.181 in (intake)", StringComparison.Ordinal), Patience);
        Assert.Contains("The wanted point lies inside the window.", page.Find("#window-desc").TextContent);
    }

    private BunitContext Browser()
    {
        var browser = shop.Browser("nobody");
        browser.Renderer.SetRendererInfo(new RendererInfo("Server", isInteractive: true));
        return browser;
    }

    private static IRenderedComponent<Geometry> Open(BunitContext browser, string address)
    {
        browser.Services.GetRequiredService<NavigationManager>().NavigateTo(address);
        return browser.Render<Geometry>();
    }
}
