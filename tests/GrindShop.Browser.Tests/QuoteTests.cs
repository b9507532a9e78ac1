using System.Text.RegularExpressions;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>A price from the desk to the customer's yes.</summary>
public sealed partial class QuoteTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task The_desk_quotes_two_cams_with_a_reason_and_the_customer_accepts_on_the_tracking_page()
    {
        var desk = await browser.VisitAsync(Person.Desk);
        await desk.OpenAsync("/desk/orders/C1198");
        await desk.ClickAsync("#add-cam");
        await Expect(desk.Locator("#cam-2")).ToHaveAttributeAsync("aria-pressed", "true");
        await desk.FillAsync("#line-0-amount", "150");
        await desk.Locator("#line-0-amount").BlurAsync();
        await desk.ClickAsync("#quote");
        await Expect(desk.Locator("#refusal")).ToContainTextAsync("Say why");
        await desk.FillAsync("#line-0-reason", "two at once");
        await desk.Locator("#line-0-reason").BlurAsync();
        await desk.ClickAsync("#quote");
        await Expect(desk.Locator("#state")).ToHaveTextAsync("quoted");
        var sum = await desk.TextAsync(".price-lines tfoot .sum");
        await desk.PictureAsync("order-quoted");

        var customer = await browser.VisitAsync(width: 390, height: 844);
        await customer.OpenAsync((await desk.Locator("a[href^='/track/']").First.GetAttributeAsync("href"))!);
        await Expect(customer.Locator("#quote-lines tfoot")).ToContainTextAsync(sum);
        await customer.ClickAsync("#accept-quote");
        await Expect(customer.Locator("#answer-problem")).ToContainTextAsync("Type your name");
        await customer.FillAsync("#signs", "Una Thornquist");
        await customer.CheckAsync("#agrees");
        await customer.PictureAsync("track-quote");
        await customer.ClickAsync("#accept-quote");
        await Expect(customer.Locator(".stand .state")).ToContainTextAsync("Accepted");
        await Expect(customer.Locator("#accept-quote")).ToHaveCountAsync(0);

        await Expect(desk.Locator("#state")).ToHaveTextAsync("accepted, waiting for its blank");
        await Expect(desk.Locator("#history")).ToContainTextAsync(SignedOnline());
        var paper = await customer.APIRequest.GetAsync((await customer.Locator("a[href^='/papers/quote/']").GetAttributeAsync("href"))!);
        Assert.Equal("application/pdf", paper.Headers["content-type"]);
    }

    [Fact]
    public async Task The_second_at_one_price_keeps_the_typed_amount_and_sees_the_firsts()
    {
        var (one, two) = (await browser.VisitAsync(Person.Desk), await browser.VisitAsync(Person.OtherDesk));
        foreach (var page in new[] { one, two })
        {
            await page.OpenAsync("/desk/orders/C1200");
            await Expect(page.Locator("#quote")).ToBeVisibleAsync();
        }
        await two.FillAsync("#line-0-amount", "199");
        await two.Locator("#line-0-amount").BlurAsync();
        await two.FillAsync("#line-0-reason", "promised on the phone");
        await two.Locator("#line-0-reason").BlurAsync();
        await one.ClickAsync("#quote");
        await Expect(one.Locator("#state")).ToHaveTextAsync("quoted");

        await Expect(two.Locator("#notice")).ToContainTextAsync("Priced at");
        await Expect(two.Locator("#notice")).ToContainTextAsync("Quote: nothing → Q1200-1");
        await two.Locator("#price-again summary").ClickAsync();
        await Expect(two.Locator("#price-again #line-0-amount")).ToHaveValueAsync("199.00");
        await Expect(two.Locator("#price-again #line-0-reason")).ToHaveValueAsync("promised on the phone");
    }

    [GeneratedRegex("accepted by Una Thornquist on the tracking page")]
    private static partial Regex SignedOnline();
}
