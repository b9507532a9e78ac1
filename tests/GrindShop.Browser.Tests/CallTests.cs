using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>A call is taken with the keyboard alone, from the sign-in to the order.</summary>
public sealed class CallTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly string? Pictures = Environment.GetEnvironmentVariable("GRINDSHOP_PICTURES");

    [Fact]
    public async Task Call_is_taken_by_keyboard_alone()
    {
        var page = await browser.VisitAsync();
        await page.GotoAsync("/sign-in");
        await TabToAsync(page, "user");
        await page.Keyboard.TypeAsync(Person.Desk.User);
        await TabToAsync(page, "password");
        await page.Keyboard.TypeAsync(Person.Desk.Password);
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/desk");
        await page.WaitForSelectorAsync("html[data-live]", new() { State = WaitForSelectorState.Attached });
        await TabToAsync(page, "take-call");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.Locator("#line")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("222/228 @.050 .335 110+4 hyd roller for his tow rig");
        await Expect(page.Locator("#heard")).ToContainTextAsync("intake 222 crank degrees, exhaust 228 crank degrees");
        await Expect(page.Locator("#rest")).ToContainTextAsync("rig");
        await Expect(page.Locator("#ask li").First).ToContainTextAsync("Which engine");
        await page.Keyboard.TypeAsync(", ridgetop");
        await Expect(page.Locator("#verdict")).ToContainTextAsync("Can be ground");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("Corin Orlowe");
        await Expect(page.Locator("#caller-title ~ ul a").First).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^C1"));
        await page.Keyboard.PressAsync("Alt+4");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#phone")).Not.ToHaveValueAsync("");
        await page.Keyboard.PressAsync("Alt+3");
        await page.Keyboard.TypeAsync("call back after five");
        await PictureAsync(page);

        await page.ReloadAsync();
        await Expect(page.Locator("#line")).ToHaveValueAsync("222/228 @.050 .335 110+4 hyd roller for his tow rig, ridgetop");
        await Expect(page.Locator("#name")).ToHaveValueAsync("Corin Orlowe");
        await Expect(page.Locator("#line")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Control+Enter");
        await page.WaitForURLAsync("**/desk/orders/C*");
        await Expect(page.Locator("main")).ToContainTextAsync("As said: 222/228 @.050 .335 110+4 hyd roller for his tow rig, ridgetop");
        await Expect(page.Locator("main")).ToContainTextAsync("call back after five");
    }

    private static async Task TabToAsync(IPage page, string id)
    {
        for (var presses = 0; presses < 40; presses++)
        {
            if (await page.EvaluateAsync<string?>("document.activeElement.id") == id)
                return;
            await page.Keyboard.PressAsync("Tab");
        }
        Assert.Fail($"#{id} is not reached by Tab.");
    }

    private static async Task PictureAsync(IPage page)
    {
        if (Pictures is null)
            return;
        foreach (var (width, height) in new[] { (390, 844), (1024, 768), (1440, 900) })
        {
            await page.SetViewportSizeAsync(width, height);
            await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, $"call-{width}.png"), FullPage = true });
        }
    }
}
