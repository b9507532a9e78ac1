using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>Somebody at the desk who leaves no address gets a slip, and follows the order by its code.</summary>
public sealed class WalkInTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task A_visitor_without_phone_and_e_mail_is_handed_a_slip()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/call");
        await page.FillAsync("#line", "222/228 @.050 .335 110+4 hyd roller ridgetop");
        await page.FillAsync("#name", "Alma Brandvold");
        await page.SelectOptionAsync("#channel", "WalkIn");
        await Expect(page.Locator("#no-address")).ToBeVisibleAsync();
        await page.LookAsync("walk-in-call");
        await page.ClickAsync("#take");
        await page.WaitForURLAsync("**/desk/orders/C*");

        await Expect(page.Locator("#reach")).ToContainTextAsync("tell them by word");
        await page.ClickAsync("#quote");
        await Expect(page.Locator("#state")).ToHaveTextAsync("quoted");
        await page.ClickAsync("#to-tell summary");
        await Expect(page.Locator("#to-tell")).ToContainTextAsync("this is our price for your camshaft");
        await page.LookAsync("walk-in-order");
        var slip = await page.PaperAsync((await page.Locator("#slip").GetAttributeAsync("href"))!);
        Assert.Contains("Alma Brandvold", slip, StringComparison.Ordinal);

        var customer = await browser.VisitAsync();
        await customer.OpenAsync((await page.Locator("a[href^='/track/']").First.GetAttributeAsync("href"))!);
        await customer.FillAsync("#signs", "Alma Brandvold");
        await customer.CheckAsync("#agrees");
        await customer.ClickAsync("#accept-quote");
        await Expect(page.Locator("#state")).ToHaveTextAsync("accepted, waiting for its blank");
    }
}
