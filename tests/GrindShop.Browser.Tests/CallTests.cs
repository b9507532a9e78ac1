using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>A call is taken with the keyboard alone, from the sign-in to the order.</summary>
public sealed class CallTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Call_is_taken_by_keyboard_alone()
    {
        var page = await browser.VisitAsync();
        await page.GotoAsync("/sign-in");
        await page.TabToAsync("user");
        await page.Keyboard.TypeAsync(Person.Desk.User);
        await page.TabToAsync("password");
        await page.Keyboard.TypeAsync(Person.Desk.Password);
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync("**/desk");
        await page.WaitForSelectorAsync("html[data-live]", new() { State = WaitForSelectorState.Attached });
        await page.TabToAsync("take-call");
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
        await Expect(page.Locator(".them").First).ToHaveTextAsync("It is Corin Orlowe");
        await page.Keyboard.PressAsync("Alt+4");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#phone")).Not.ToHaveValueAsync("");
        await page.Keyboard.PressAsync("Alt+3");
        await page.Keyboard.TypeAsync("call back after five");
        await page.LookAsync("call");

        await page.KeptInTabAsync("call back after five");
        await page.ReloadAsync();
        await Expect(page.Locator("#line")).ToHaveValueAsync("222/228 @.050 .335 110+4 hyd roller for his tow rig, ridgetop");
        await Expect(page.Locator("#name")).ToHaveValueAsync("Corin Orlowe");
        await Expect(page.Locator("#line")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Control+Enter");
        await page.WaitForURLAsync("**/desk/orders/C*");
        await Expect(page.Locator("main")).ToContainTextAsync("As said: 222/228 @.050 .335 110+4 hyd roller for his tow rig, ridgetop");
        await Expect(page.Locator("main")).ToContainTextAsync("call back after five");
    }
}
