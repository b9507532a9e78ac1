using Bunit;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Security;
using GrindShop.Web.Settings;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Settings;

public sealed class PricePageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task A_price_is_changed_with_its_why()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = Open(browser, "base/RV8-R/solidRoller");
        await page.InvokeAsync(() => page.Find("#amount").InputAsync("$245.50"));
        await page.InvokeAsync(() => page.Find("#why").InputAsync("wheels cost more"));
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());

        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);
        Assert.Contains("$245.50", page.Find("#now").TextContent);
        Assert.Contains("wheels cost more", page.Find(".history").TextContent);
    }

    [Fact]
    public async Task What_is_no_figure_is_said_and_stays()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = Open(browser, "break/4");
        await page.InvokeAsync(() => page.Find("#amount").InputAsync("a lot"));
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());

        page.WaitForState(() => page.FindAll("#refusal").Count == 1, Patience);
        Assert.Equal("a lot", page.Find("#amount").GetAttribute("value"));
    }

    [Fact]
    public async Task The_list_shows_every_figure()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = browser.Render<PricesPage>();
        page.WaitForState(() => page.FindAll("table").Count == 3, Patience);
        var links = page.FindAll("td a").Select(link => link.GetAttribute("href")!["/settings/prices/".Length..]).ToList();
        Assert.Subset(links.ToHashSet(), (await shop.Get<PriceBook>().AllAsync()).Select(entry => entry.Key).ToHashSet());
        Assert.Contains("repair/FV8-F/gearReplacement", links);
    }

    [Fact]
    public async Task The_shops_settings_name_the_wrong_field_and_save_the_right_ones()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = browser.Render<ShopPage>();
        page.WaitForState(() => page.FindAll("#timeZone").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#timeZone").InputAsync("Somewhere/Else"));
        await page.InvokeAsync(() => page.Find("#why").InputAsync("moved"));
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.Find("#timeZone").GetAttribute("aria-invalid") == "true", Patience);

        await page.InvokeAsync(() => page.Find("#timeZone").InputAsync("America/Denver"));
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);
        Assert.Equal("America/Denver", (await shop.Get<ShopSettingsBook>().ReadAsync()).Settings.TimeZone);
    }

    private static IRenderedComponent<PricePage> Open(BunitContext browser, string key)
    {
        var page = browser.Render<PricePage>(parameters => parameters.Add(price => price.Key, key));
        page.WaitForState(() => page.FindAll("#save").Count == 1, Patience);
        return page;
    }
}
