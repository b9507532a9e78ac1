using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>An order is taken, put to rest and called about with the keyboard alone.</summary>
public sealed class CareTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Taken_snoozed_and_called_back_by_keyboard()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk?view=nobody");
        await Expect(page.Locator("#inbox a.order").First).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        var number = await page.EvaluateAsync<string>("document.activeElement.textContent");
        await page.Keyboard.PressAsync("t");
        await Expect(page.Locator("#said")).ToContainTextAsync($"{number} is yours");
        await page.OpenAsync("/desk?view=mine");
        await page.Locator("#inbox a.order").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#care")).ToContainTextAsync("You have this order");

        await PlanCallAsync(page, "his distributor gear");
        await SnoozeAsync(page);
        await page.LookAsync("care-order");
        await page.OpenAsync("/desk?view=snoozed");
        await Expect(page.Locator("#inbox")).ToContainTextAsync("waits for his engine");
        await page.LookAsync("care-snoozed");

        await page.OpenAsync("/desk?view=calls");
        await Expect(page.Locator("#calls")).ToContainTextAsync("his distributor gear");
        await page.LookAsync("care-calls");
        await page.Locator("#calls a.order").First.FocusAsync();
        await page.Keyboard.PressAsync("n");
        await Expect(page.Locator("#calls")).ToContainTextAsync("no answer once");
        await page.Locator("#calls a.order").First.FocusAsync();
        await page.Keyboard.PressAsync("d");
        await Expect(page.Locator("#empty")).ToContainTextAsync("Nobody waits for a call");
        await page.OpenAsync($"/desk/orders/{number}");
        await Expect(page.Locator("#history")).ToContainTextAsync("no answer (first try): his distributor gear");
        await page.OpenAsync("/desk?view=closed");
        await page.LookAsync("care-closed");
        await page.OpenAsync("/desk?view=mine");
        await page.LookAsync("care-mine");
    }

    private static async Task PlanCallAsync(IPage page, string about)
    {
        await page.Locator("#call-form summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("#call-number").FocusAsync();
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("555-555-0177");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync(about);
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#owed")).ToContainTextAsync(about);
        await Expect(page.Locator(".notice")).ToBeFocusedAsync();
    }

    private static async Task SnoozeAsync(IPage page)
    {
        await page.Locator("#snooze-form summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#snooze-until")).Not.ToHaveValueAsync("");
        await page.Locator("#snooze-why").FocusAsync();
        await page.Keyboard.TypeAsync("waits for his engine");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#snoozed")).ToContainTextAsync("waits for his engine");
    }
}
