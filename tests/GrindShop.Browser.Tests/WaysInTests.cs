using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>Both ways into the form, from the first key to the sent enquiry, without a mouse.</summary>
public sealed class WaysInTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Who_has_a_spec_fills_it_in_and_sends_it_by_keyboard_alone()
    {
        var page = await browser.VisitAsync();
        await page.OpenAsync("/spec");
        await ToAsync(page, "explain");
        await page.Keyboard.PressAsync("Space");
        await Expect(page.Locator("#lsa-help")).ToContainTextAsync("overlap");
        await ToAsync(page, "engine-family", "Ridge");
        await ToAsync(page, "lifter", "Hydraulic r");
        await ToAsync(page, "intake-duration-050", "222");
        await ToAsync(page, "intake-lobe-lift", ".600");
        await Expect(page.Locator(".verdict")).ToContainTextAsync("Cannot");
        await ToAsync(page, ".nearest button");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".verdict")).ToContainTextAsync("Can be ground");
        await Expect(page.Locator("#price-range")).ToContainTextAsync("$");
        await Expect(page.Locator("#ship-date")).ToContainTextAsync("by ");
        await ToAsync(page, ".gears button");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#distributor-gear")).Not.ToHaveValueAsync("");
        await SendAsync(page, "Kit Ambler");
    }

    [Fact]
    public async Task Who_knows_the_engine_is_led_to_a_cam_and_sends_it_by_keyboard_alone()
    {
        var page = await browser.VisitAsync();
        await page.OpenAsync("/spec");
        await ToAsync(page, "nav.ways a[href='/spec/guided']");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("h1")).ToHaveTextAsync("A cam for your engine");
        await ToAsync(page, "engine-family", "Ridge");
        await ToAsync(page, "start-displacement", "5.7");
        await ToAsync(page, "start-unit", "Lit");
        await ToAsync(page, "lifter", "Hydraulic r");
        await ToAsync(page, "start-use", "Everyday");
        await ToAsync(page, "start-idle", "Smooth");
        await ToAsync(page, "start-from", "1500");
        await ToAsync(page, "start-to", "5500");
        await Expect(page.Locator(".start")).ToContainTextAsync("not a promise");
        await Expect(page.Locator(".start")).ToContainTextAsync("for pulling up to 5500 rpm");
        await Expect(page.Locator(".verdict")).ToContainTextAsync("Can be ground");
        await ToAsync(page, "take-start");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#started")).ToContainTextAsync("starting point");
        await Expect(page.Locator("#intake-duration-050")).ToHaveValueAsync("217");
        await Expect(page.Locator("#intake-duration-050-started")).ToContainTextAsync("4 shorter for a smooth idle");
        await ToAsync(page, "intake-duration-050", "219");
        await Expect(page.Locator("#intake-duration-050-started")).ToHaveCountAsync(0);
        await Expect(page.Locator("#lsa-started")).ToHaveCountAsync(1);
        await SendAsync(page, "Nell Garrow");
    }

    [Fact]
    public async Task A_grind_of_the_shop_is_found_and_started_from()
    {
        var page = await browser.VisitAsync();
        await page.OpenAsync("/grinds");
        await ToAsync(page, "filter-engine", "Ridge");
        await ToAsync(page, "filter-lifter", "Solid f");
        await Expect(page.Locator(".grinds li")).ToHaveCountAsync(1);
        await ToAsync(page, ".grinds a");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#intake-duration-050")).ToHaveValueAsync("246");
        await Expect(page.Locator(".verdict")).ToContainTextAsync("Can be ground");
        await Expect(page.Locator("#use")).ToHaveValueAsync("From the shop's grind RV8-R-103 Undershot");
    }

    private static async Task SendAsync(IPage page, string name)
    {
        await ToAsync(page, "contact-name", name);
        await ToAsync(page, "contact-email", $"{name.Replace(' ', '.').ToLowerInvariant()}@example.org");
        await ToAsync(page, "send");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/track/*");
        await Expect(page.Locator("main")).ToContainTextAsync("We have it");
    }

    /// <summary>Tabs on until the element has the focus, then types into it.</summary>
    private static async Task ToAsync(IPage page, string target, string? text = null)
    {
        var selector = target.Contains(' ', StringComparison.Ordinal) || target.Contains('.', StringComparison.Ordinal) ? target : $"#{target}";
        await Expect(page.Locator(selector).First).ToBeEnabledAsync();
        for (var presses = 0; !await page.Locator(selector).First.EvaluateAsync<bool>("field => field === document.activeElement"); presses++)
        {
            Assert.True(presses < 200, $"The keyboard does not reach {selector}.");
            await page.Keyboard.PressAsync("Tab");
        }
        if (text is null)
            return;
        if (await page.Locator(selector).EvaluateAsync<string>("field => field.tagName") != "SELECT")
            await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync(text);
    }
}
