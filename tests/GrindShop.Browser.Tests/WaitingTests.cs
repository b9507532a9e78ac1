using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The desk gives out blanks: one by one click with its reason, the rest as one proposal; the floor scraps one and gets the next best.</summary>
public sealed class WaitingTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Blanks_are_proposed_looked_at_and_taken_and_a_spoilt_cam_takes_the_next_best()
    {
        var desk = await browser.VisitAsync(Person.Desk);
        await desk.OpenAsync("/desk/blanks");
        var first = desk.Locator("section.piece").Filter(new() { HasText = "on the shelf" }).First;
        var order = (await first.Locator("h2 a").InnerTextAsync()).Trim();
        await desk.OpenAsync($"/desk/orders/{order}");
        await desk.ClickAsync("#ranked summary");
        await Expect(desk.Locator("#ranked tbody tr").First).ToContainTextAsync("First: it fits as it is");
        await desk.Locator("#ranked tbody button").First.ClickAsync();
        await Expect(desk.Locator("#state")).ToHaveTextAsync("in work");

        await desk.OpenAsync("/desk/blanks");
        await desk.ClickAsync("#propose");
        await Expect(desk.Locator("#proposal tbody tr").First).ToBeVisibleAsync();
        var takes = await desk.Locator("#proposal tbody tr").CountAsync();
        Assert.True(takes > 0);
        await desk.ClickAsync("#take-all");
        await Expect(desk.Locator("#said")).ToContainTextAsync($"{takes} blank");
        var job = (await desk.TextAsync("#said")).Split(": ")[1].Split(',')[0].TrimEnd('.');

        var floor = await browser.VisitAsync(Person.Floor, 1024, 768);
        await floor.OpenAsync($"/floor/jobs/{job}");
        await floor.ClickAsync("#scrap summary");
        await floor.FillAsync("#scrap-why", "Nose burnt");
        await floor.ClickAsync("#scrap-go");
        await Expect(floor.Locator("#result")).ToContainTextAsync($"{job} is scrapped.");
        await Expect(floor.Locator("#step-title")).ToHaveTextAsync("Scrapped");
    }
}
