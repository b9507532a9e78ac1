using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>An accepted order is changed by two people, and then cancelled.</summary>
public sealed class RevisionTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Two_revise_at_once_the_second_keeps_what_was_typed_and_cancelling_gives_the_blank_back()
    {
        var (one, two) = (await browser.VisitAsync(Person.Desk), await browser.VisitAsync(Person.OtherDesk));
        foreach (var page in new[] { one, two })
        {
            await page.OpenAsync("/desk/orders/C1180");
            await page.ClickAsync("#revise");
        }
        await two.FillAsync("#notes", "Ship to the track.");
        await two.FillAsync("#revise-why", "moved");
        await AgreeAsync(one, "#revise-pieces", "2", "#revise-price", "25", "#revise-price-why", "rush", "#revise-why", "wants it sooner");
        await Expect(one.Locator("#revision-1")).ToContainTextAsync("goes on with blank");
        await Expect(one.Locator("#revision-1")).ToContainTextAsync("2 pieces are wanted now instead of 1; 1 of them waits for a blank.");
        await one.PictureAsync("order-revised");

        await Expect(two.Locator("#newer")).ToContainTextAsync("Revision 1");
        await two.ClickAsync("#load-newer");
        await Expect(two.Locator("#notes")).ToHaveValueAsync("Ship to the track.");
        await Expect(two.Locator("#revise-pieces")).ToHaveValueAsync("2");
        await two.ClickAsync("#look");
        await two.PictureAsync("revision-form");
        await two.ClickAsync("#agree");
        await Expect(two.Locator("#revision-2")).ToContainTextAsync("Ship to the track.");

        await one.FillAsync("#cancel-why", "The engine is sold.");
        await one.ClickAsync("#cancel-order");
        await Expect(one.Locator("#state")).ToHaveTextAsync("cancelled");
        await Expect(one.Locator("#history li").First).ToContainTextAsync("goes back to lot");
        var floor = await browser.VisitAsync(Person.Floor, 1024, 768);
        await floor.OpenAsync("/floor/jobs/J1180");
        await Expect(floor.Locator("#step-title")).ToContainTextAsync("ancelled");
    }

    [Fact]
    public async Task A_further_cam_is_drawn_up_looked_at_and_agreed()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/orders/C1189");
        await page.ClickAsync("#add-cam");
        await Expect(page.Locator("#cam-2")).ToContainTextAsync("not agreed yet");
        await page.LookAsync("cam-drawn-up");
        await page.ClickAsync("#revise");
        await Expect(page.Locator("#spec-title")).ToHaveTextAsync("Agree on cam 2");
        await page.FillAsync("#revise-price", "180");
        await page.FillAsync("#revise-price-why", "a second cam");
        await page.FillAsync("#revise-why", "wants a spare");
        await page.ClickAsync("#look");
        await Expect(page.Locator("#effect")).ToContainTextAsync("1 of them waits for a blank.");
        await page.LookAsync("cam-to-agree");
        await page.ClickAsync("#agree");
        await Expect(page.Locator("#revision-1")).ToContainTextAsync("a second cam");
        await Expect(page.Locator("#cam-2")).Not.ToContainTextAsync("not agreed yet");
    }

    private static async Task AgreeAsync(IPage page, params string[] fieldsAndTexts)
    {
        foreach (var pair in fieldsAndTexts.Chunk(2))
            await page.FillAsync(pair[0], pair[1]);
        await page.ClickAsync("#look");
        await page.ClickAsync("#agree");
    }
}
