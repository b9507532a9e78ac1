using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>A three-piece cam that is to get a new gear: from the first word at the desk to the traveler, with the keyboard alone.</summary>
public sealed partial class RepairTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task A_new_gear_is_taken_in_priced_promised_and_put_to_work_by_keyboard_alone()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/call");
        await Expect(page.Locator("#line")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Alt+5");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(page.Locator("#gears")).ToBeVisibleAsync();
        await page.TabToAsync("line");
        await page.Keyboard.TypeAsync("ridgetop, bronze distributor gear");
        await Expect(page.Locator("#g-advice")).ToContainTextAsync("The distributor gear runs with it.");
        await page.TabToAsync("condition");
        await page.Keyboard.TypeAsync("three teeth worn to points, lobes good");
        await page.TabToAsync("g-marks");
        await page.Keyboard.TypeAsync("M-14 52");
        await page.TabToAsync("name");
        await Expect(page.Locator("#nothing-to-ask")).ToBeVisibleAsync();
        await page.Keyboard.TypeAsync("Petra Lindenau");
        await page.TabToAsync("phone");
        await page.Keyboard.TypeAsync("555-555-0177");
        await page.LookAsync("repair-call");
        await page.Keyboard.PressAsync("Control+Enter");
        await page.WaitForURLAsync("**/desk/orders/C*");

        await Expect(page.Locator("#edit-lines")).ToContainTextAsync("New gear pressed on your cam");
        await page.TabToAsync("adder-RUSH");
        await page.Keyboard.PressAsync("Space");
        await Expect(page.Locator("#edit-lines")).ToContainTextAsync("Rush");
        await page.LookAsync("repair-order");
        await page.TabToAsync("quote");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#state")).ToHaveTextAsync("quoted");
        await Expect(page.Locator(".price-lines tfoot .sum")).ToHaveTextAsync("$255.00");
        await Expect(page.Locator(".notice").First).ToBeFocusedAsync();
        await page.TabToAsync("accept");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#promised")).Not.ToHaveTextAsync("no date yet");
        await Expect(page.Locator(".notice").First).ToBeFocusedAsync();
        await page.TabToAsync("came");
        await page.Keyboard.TypeAsync("three teeth gone, lobe 5 scuffed");
        await Expect(page.Locator("#came")).ToHaveValueAsync("three teeth gone, lobe 5 scuffed");
        await page.LookAsync("repair-came");
        await page.TabToAsync("start");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.Locator("#traveler")).ToBeVisibleAsync();
        var paper = await page.PaperAsync((await page.Locator("#traveler").GetAttributeAsync("href"))!);
        Assert.Matches(Traveler(), string.Join(' ', paper.Split()));
        await page.OpenAsync((await page.Locator("a[href^='/track/']").First.GetAttributeAsync("href"))!);
        await Expect(page.Locator("main")).ToContainTextAsync("New gear pressed on");
        await page.LookAsync("repair-track");
    }

    [GeneratedRegex("three teeth gone.*M-14 52.*Press on.*pressed-on iron gear.*Press gear")]
    private static partial Regex Traveler();
}
