using Microsoft.Playwright;

namespace GrindShop.Browser.Tests;

/// <summary>Axe finds nothing on pages that something was done on, at three widths, light and dark.</summary>
public sealed class AccessibilityTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Axe_finds_what_is_wrong()
    {
        var page = await browser.VisitAsync();
        await page.OpenAsync("/learn");
        await page.EvaluateAsync("document.querySelector('main').insertAdjacentHTML('beforeend', '<img src=x.png><p style=\"color:#ccc;background:#fff\">pale</p><button></button>')");
        var found = string.Join(' ', await page.ViolationsAsync());
        Assert.All(["image-alt", "color-contrast", "button-name"], rule => Assert.Contains(rule, found, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_price_in_the_making_and_on_the_customers_page_of_a_quote()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/orders/C1190");
        await page.ClickAsync("#price-again summary");
        await page.ClickAsync("#add-line");
        await page.ClickAsync("#line-0-strike");
        await page.ClickAsync("#deposit-form summary");
        await page.SelectOptionAsync("#kind", "Regrind");
        await Assertions.Expect(page.Locator("#measured")).ToBeVisibleAsync();
        await page.LookAsync("/desk-price light");
        await page.SelectOptionAsync("#kind", "GearReplacement");
        await Assertions.Expect(page.Locator("#gears")).ToBeVisibleAsync();
        await page.LookAsync("/desk-gear light");
        await page.OpenAsync("/desk/call");
        await page.CheckAsync("#kind-GearReplacement");
        await Assertions.Expect(page.Locator("#gears")).ToBeVisibleAsync();
        await page.LookAsync("/desk-call-gear light");
        await page.OpenAsync("/desk/orders/C1190");
        await page.OpenAsync((await page.Locator("a[href^='/track/']").First.GetAttributeAsync("href"))!);
        await page.ClickAsync(".answer summary");
        await page.LookAsync("/track-quoted light");
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_map_that_is_drawn()
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(Person.Owner, dark: dark);
            await page.OpenAsync("/office/map?family=RV8-R");
            await page.WaitForSelectorAsync("#hole-list");
            await page.LookAsync($"/office/map-drawn {(dark ? "dark" : "light")}");
        }
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_shelf_that_was_worked_out()
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(Person.Owner, dark: dark);
            await page.OpenAsync("/office/shelf?family=RV8-R&months=12");
            await page.ClickAsync("#work-out");
            await Assertions.Expect(page.Locator("#bound")).ToContainTextAsync("Proven", new() { Timeout = 60_000 });
            await page.LookAsync($"/office/shelf-solved {(dark ? "dark" : "light")}");
        }
    }

    [Theory]
    [InlineData("RV8-R", "HydraulicRoller", ".335", "222", "112", "fits")]
    [InlineData("RV8-R", "HydraulicFlat", ".600", "260", "126", "does-not-fit")]
    public async Task Axe_finds_nothing_on_the_answered_form_and_its_tracking_page(string family, string lifter, string lift, string at050, string lsa, string name)
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(dark: dark);
            await page.OpenAsync("/spec");
            await page.SelectOptionAsync("#engine-family", family);
            await page.SelectOptionAsync("#lifter", lifter);
            await page.FillAsync("#intake-lobe-lift", lift);
            await page.FillAsync("#intake-duration-050", at050);
            await page.FillAsync("#lsa", lsa);
            await page.WaitForSelectorAsync("#answer svg[role=img]");
            await page.LookAsync($"/spec-{name} {(dark ? "dark" : "light")}");
            await page.ClickAsync("#send");
            await page.WaitForSelectorAsync("#contact-name-problem");
            await page.LookAsync($"/spec-{name}-wrong {(dark ? "dark" : "light")}");
            await page.FillAsync("#contact-name", "Axel Brandt");
            await page.FillAsync("#contact-phone", "555-0142-77");
            await page.ClickAsync("#send");
            await page.WaitForSelectorAsync("ol.way");
            await page.LookAsync($"/track-{name} {(dark ? "dark" : "light")}");
        }
    }
}
