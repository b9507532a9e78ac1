using AngleSharp.Dom;
using Bunit;
using GrindShop.Shop.Orders;
using GrindShop.Web.Public;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Public;

public sealed class SpecFormTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task An_empty_form_says_what_is_needed_at_each_field_and_in_one_list()
    {
        await using var browser = Browser();
        var page = Open(browser);
        await page.InvokeAsync(() => page.Find("form.asked").SubmitAsync());
        page.WaitForState(() => page.FindAll(".summary").Count == 1, Patience);
        page.WaitForState(() => browser.JSInterop.Invocations.Any(call => call.Identifier == "Blazor._internal.domWrapper.focus"), Patience);
        var leads = page.FindAll(".summary a").Select(link => link.GetAttribute("href")!.Split('#')[1]).ToList();
        Assert.Equal(["engine-family", "lifter", "intake-lobe-lift", "intake-duration-050", "contact-name", "contact-email"], leads);
        Assert.All(leads, id => Assert.Equal("true", page.Find("#" + id).GetAttribute("aria-invalid")));
    }

    [Fact]
    public async Task A_text_that_is_no_number_is_named_at_its_field_and_stays()
    {
        await using var browser = Browser();
        var page = Open(browser);
        await page.InvokeAsync(() => page.Find("#rocker-ratio").InputAsync("one and a half"));
        page.WaitForState(() => page.FindAll("#rocker-ratio-problem").Count == 1, Patience);
        Assert.Contains("Rocker ratio must lie between 0.8 and 2.5 to 1.", page.Find("#rocker-ratio-problem").TextContent);
        Assert.StartsWith("rocker-ratio-problem", page.Find("#rocker-ratio").GetAttribute("aria-describedby"));
        Assert.Equal("one and a half", page.Find("#rocker-ratio").GetAttribute("value"));
    }

    [Fact]
    public async Task The_answer_stands_beside_the_form_with_what_the_shop_filled()
    {
        await using var browser = Browser();
        var page = await DescribedAsync(browser);
        Assert.Contains("Can be ground from a blank in stock", page.Find(".verdict").TextContent);
        Assert.Equal("110", page.Find("#lsa").GetAttribute("placeholder"));
        Assert.Contains("The shop takes 110: the family's usual lobe separation.", page.Find("#lsa-filled").TextContent);
        Assert.Equal(["intake-drawing-desc", "exhaust-drawing-desc"], page.FindAll(".lobe desc").Select(text => text.Id));
        Assert.Contains("Intake opens 5.0 crank degrees before top dead centre", page.Find("#timing-desc").TextContent);
    }

    [Fact]
    public async Task Any_blank_of_the_list_can_be_drawn()
    {
        await using var browser = Browser();
        var page = await DescribedAsync(browser);
        var other = page.FindAll(".blanks button")[1];
        var part = other.QuerySelector(".part")!.TextContent;
        await other.ClickAsync();
        page.WaitForState(() => page.Find("#blank-shown").TextContent == $"Blank {part}", Patience);
        Assert.Equal(part, page.Find(".blanks button[aria-pressed=true] .part").TextContent);
    }

    [Fact]
    public async Task Only_what_can_be_answered_is_asked()
    {
        await using var browser = Browser();
        var page = await DescribedAsync(browser);
        Assert.Empty(page.FindAll("#intake-lash"));
        Assert.Empty(page.FindAll("#side"));
        await page.InvokeAsync(() => page.Find("#lifter").ChangeAsync("SolidRoller"));
        page.WaitForState(() => page.FindAll("#intake-lash").Count == 1, Patience);
    }

    [Fact]
    public async Task Words_typed_while_the_shop_looks_for_what_comes_close_do_not_end_the_search()
    {
        await using var browser = Browser();
        var page = await DescribedAsync(browser);
        await page.InvokeAsync(() => page.Find("#intake-lobe-lift").InputAsync(".600"));
        page.WaitForState(() => page.Find(".verdict").TextContent.Contains("Cannot be ground", StringComparison.Ordinal), Patience);
        await page.InvokeAsync(() => page.Find("#notes").InputAsync("for the hill climb"));
        page.WaitForState(() => page.FindAll(".nearest li").Count > 0, Patience);
    }

    [Fact]
    public async Task Sent_twice_it_is_one_order_with_one_tracking_page()
    {
        await using var browser = Browser();
        var page = await DescribedAsync(browser);
        await page.InvokeAsync(() => page.Find("#contact-name").InputAsync("Aldo Brenninck"));
        await page.InvokeAsync(() => page.Find("#contact-phone").InputAsync("555 010 7788"));
        var first = await SendAsync(browser, page);
        var second = await SendAsync(browser, page);
        Assert.Equal(first, second);
        Assert.Matches("/track/[2-9A-Z]{14}\\?new=1$", first);
        Assert.Single(await shop.Get<InboxBook>().OpenAsync(), row => row.Customer == "Aldo Brenninck");
    }

    private BunitContext Browser()
    {
        var browser = shop.Browser("nobody");
        browser.Renderer.SetRendererInfo(new RendererInfo("Server", isInteractive: true));
        return browser;
    }

    /// <summary>A form that lets a person type.</summary>
    private static IRenderedComponent<SpecForm> Open(BunitContext browser)
    {
        var page = browser.Render<SpecForm>();
        page.WaitForState(() => page.FindAll("form.asked > fieldset:not([disabled]) #engine-family option").Count > 1, Patience);
        return page;
    }

    private static async Task<IRenderedComponent<SpecForm>> DescribedAsync(BunitContext browser)
    {
        var page = Open(browser);
        await page.InvokeAsync(() => page.Find("#engine-family").ChangeAsync("RV8-R"));
        await page.InvokeAsync(() => page.Find("#lifter").ChangeAsync("HydraulicRoller"));
        await page.InvokeAsync(() => page.Find("#intake-duration-050").InputAsync("222"));
        await page.InvokeAsync(() => page.Find("#intake-lobe-lift").InputAsync(".335"));
        page.WaitForState(() => page.FindAll(".blank-card").Count == 1, Patience);
        return page;
    }

    private static async Task<string> SendAsync(BunitContext browser, IRenderedComponent<SpecForm> page)
    {
        var navigation = browser.Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo("/spec");
        await page.InvokeAsync(() => page.Find("form.asked").SubmitAsync());
        page.WaitForState(() => navigation.Uri.Contains("/track/", StringComparison.Ordinal), Patience);
        return navigation.Uri;
    }
}
