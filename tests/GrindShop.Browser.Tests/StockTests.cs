using System.Text.RegularExpressions;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>Blanks come in, get their label, and are counted on the tablet.</summary>
public sealed class StockTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task What_is_received_has_a_label_and_is_counted()
    {
        var desk = await browser.VisitAsync(Person.Desk);
        await desk.OpenAsync("/office/receive");
        await desk.FillAsync("#part", "RV8R-516-08");
        await desk.FillAsync("#quantity", "5");
        await desk.FillAsync("#place", "A9-1");
        await desk.FillAsync("#heat", "H7788");
        await desk.ClickAsync("#receive");
        await Expect(desk.Locator("#lot-number")).ToHaveTextAsync(new Regex(@"^L\d+$"));
        var lot = await desk.TextAsync("#lot-number");
        var label = await desk.APIRequest.GetAsync($"/papers/label/{lot}.pdf");
        Assert.Equal((200, "application/pdf"), (label.Status, label.Headers["content-type"]));

        var tablet = await browser.VisitAsync(Person.Floor, 1024, 768);
        await tablet.OpenAsync("/floor/count");
        await tablet.FillAsync("#scan", $"http://shop/lots/{lot}");
        await tablet.ClickAsync("#open-lot");
        await Expect(tablet.Locator("#lot-title")).ToContainTextAsync("RV8R-516-08");
        await tablet.ClickAsync(".key >> text=4");
        await tablet.ClickAsync("#compare");
        await Expect(tablet.Locator("#difference")).ToContainTextAsync("the book says 5");
        await tablet.FillAsync("#why", "one was cracked");
        await tablet.ClickAsync("#post");
        await Expect(tablet.Locator("#result")).ToContainTextAsync($"{lot}: 4");

        await desk.OpenAsync($"/lots/{lot}");
        await Expect(desk.Locator("#stock")).ToContainTextAsync("= 5 received − 1 by counts and corrections");
        await Expect(desk.Locator("#available")).ToHaveTextAsync("4");
        await Expect(desk.Locator("#book")).ToContainTextAsync("one was cracked");

        var owner = await browser.VisitAsync(Person.Owner);
        await owner.OpenAsync("/office/blanks/RV8R-516-08");
        await Expect(owner.Locator("#book tbody tr").First).ToContainTextAsync("one was cracked");
        var (onHand, then) = (await owner.TextAsync("#on-hand"), await owner.Locator("#book tbody tr td.num strong").First.InnerTextAsync());
        Assert.Equal(onHand, then);
        await owner.ClickAsync($"#book tbody tr:first-child a[href='/lots/{lot}']");
        await Expect(owner.Locator("h1")).ToContainTextAsync(lot);
    }
}
