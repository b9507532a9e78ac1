using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The desk finds an order from the inbox by keyboard alone.</summary>
public sealed class FindTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Order_is_found_by_the_end_of_a_phone_number_and_opened_without_the_mouse()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk");
        await Expect(page.Locator("#inbox a.order").First).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("/");
        await Expect(page.Locator("#find")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("0128");
        await Expect(page.Locator("#results mark").First).ToHaveTextAsync("0128");
        await Expect(page.Locator("#inbox")).ToHaveCountAsync(0);
        await page.PictureAsync("find-in-inbox");
        var second = await page.Locator("#results a.order").Nth(1).InnerTextAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#order-title")).ToContainTextAsync(second);

        await page.OpenAsync("/desk/find?q=hydraulic+roller");
        await page.ClickAsync("#pages a[rel=next]");
        await Expect(page.Locator("#found")).ToContainTextAsync("page 2 of");
        await page.Keyboard.PressAsync("/");
        await page.FillAsync("#find", "rushborne");
        await Expect(page.Locator("#results mark").First).ToHaveTextAsync("Rushbourne");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("main")).ToContainTextAsync("Lena Rushbourne");
    }
}
