using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>A visitor moves the figures of an explanation by the keyboard; the drawing follows and the link keeps them.</summary>
public sealed class LearnTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Arrow_keys_move_a_figure_and_the_link_shows_the_same_to_somebody_else()
    {
        var page = await browser.VisitAsync();
        await page.OpenAsync("/learn/separation");
        await page.FocusAsync("#slide-separation");
        await page.Keyboard.PressAsync("Home");
        await Expect(page.Locator("main p[role=status]")).ToContainTextAsync("Outside");
        await Expect(page.Locator("output[for=slide-separation]")).ToHaveTextAsync("102.0 cam deg");
        var link = await page.GetAttributeAsync("#link", "href");

        var other = await browser.VisitAsync();
        await other.OpenAsync(link!);
        await Expect(other.Locator("output[for=slide-separation]")).ToHaveTextAsync("102.0 cam deg");
        await Expect(other.Locator("main p[role=status]")).ToHaveTextAsync(await page.TextAsync("main p[role=status]"));
    }
}
