using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>What a person may do wrong, or twice, in the form.</summary>
public sealed class SpecFormTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly string[] Numbers =
    [
        "follower-diameter", "rocker-ratio", "base-circle-limit", "lsa", "icl", "advance",
        "intake-duration-050", "intake-lobe-lift", "intake-valve-lift", "intake-advertised", "intake-advertised-at",
        "exhaust-duration-050", "exhaust-lobe-lift", "exhaust-valve-lift", "exhaust-advertised", "exhaust-advertised-at",
    ];

    public static TheoryData<string> Wrong => ["NaN", "1e308", "-99", "222 mm", "<script>alert(1)</script>", "1,2,3", "∞"];

    [Theory]
    [MemberData(nameof(Wrong))]
    public async Task Every_number_put_wrong_names_its_range_and_keeps_what_was_typed(string wrong)
    {
        var page = await FormAsync();
        foreach (var id in Numbers)
        {
            await page.FillAsync($"#{id}", wrong);
            await Expect(page.Locator($"#{id}-problem")).ToContainTextAsync("between");
            await Expect(page.Locator($"#{id}")).ToHaveValueAsync(wrong);
            await page.FillAsync($"#{id}", "");
            await Expect(page.Locator($"#{id}-problem")).ToHaveCountAsync(0);
        }
    }

    [Fact]
    public async Task Contradictions_are_told_as_they_are_typed()
    {
        var page = await FormAsync();
        await page.FillAsync("#intake-lobe-lift", ".335");
        await page.FillAsync("#intake-duration-050", "222");
        await page.FillAsync("#intake-advertised", "210");
        await Expect(page.Locator("#intake-advertised-problem")).ToContainTextAsync("longer than the duration at .050");
        await page.FillAsync("#intake-advertised", "");
        await page.FillAsync("#intake-valve-lift", ".600");
        await Expect(page.Locator("#intake-valve-lift-problem")).ToContainTextAsync("disagree");
    }

    [Fact]
    public async Task A_cam_that_no_blank_can_become_is_offered_what_comes_close_and_one_click_takes_it()
    {
        var page = await FormAsync();
        await page.FillAsync("#intake-lobe-lift", ".500");
        await page.FillAsync("#intake-duration-050", "222");
        await page.FillAsync("#intake-advertised", "272");
        await page.FillAsync("#lsa", "112");
        await Expect(page.Locator(".verdict")).ToContainTextAsync("Cannot", new() { IgnoreCase = true });
        await page.Locator(".nearest button").First.ClickAsync();
        await Expect(page.Locator(".verdict")).ToContainTextAsync("stock");
        await Expect(page.Locator(".nearest")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Sending_by_keyboard_alone_twice_in_a_hurry_is_one_order()
    {
        var page = await FormAsync();
        await page.FocusAsync("#intake-duration-050");
        await page.Keyboard.TypeAsync("222");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync(".335");
        await page.FocusAsync("#contact-name");
        await page.Keyboard.TypeAsync("Keyed Twice");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("keyed.twice@example.org");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/track/*");

        var desk = await browser.VisitAsync(Person.Desk);
        await desk.OpenAsync("/desk");
        await desk.FillAsync("#find", "Keyed Twice");
        await Expect(desk.Locator("#results > li")).ToHaveCountAsync(1);
    }

    private async Task<IPage> FormAsync()
    {
        var page = await browser.VisitAsync();
        await page.OpenAsync("/spec");
        await page.SelectOptionAsync("#engine-family", "RV8-R");
        await page.SelectOptionAsync("#lifter", "HydraulicRoller");
        return page;
    }
}
