using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The owner plans the shelf and looks for its holes.</summary>
public sealed partial class ShelfTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task The_owner_works_out_the_best_shelf_and_finds_its_holes_on_the_map()
    {
        var owner = await browser.VisitAsync(Person.Owner, 1440, 1000);
        await owner.OpenAsync("/office/shelf?family=RV8-R&months=12");
        await Expect(owner.Locator("#known")).ToContainTextAsync("asked for");
        await owner.ClickAsync("#work-out");
        await Expect(owner.Locator("#bound")).ToContainTextAsync("Proven", new() { Timeout = 60_000 });
        await Expect(owner.Locator("#curve tbody tr")).ToHaveCountAsync(20);
        Assert.True(await CostAsync(owner, "Best") <= await CostAsync(owner, "Today"));
        await owner.PictureAsync("shelf-1440");

        var proven = await owner.Locator("#beside tbody tr").Nth(1).InnerTextAsync();
        await owner.SelectOptionAsync("#size", "3");
        await Expect(owner.Locator("#beside tbody tr").Nth(1)).Not.ToHaveTextAsync(proven);
        var file = await owner.RunAndWaitForDownloadAsync(() => owner.ClickAsync("#csv"));
        Assert.StartsWith("part numbers,cost usd,bound usd,proven", await File.ReadAllTextAsync(await file.PathAsync()));

        await owner.ClickAsync("#assumed summary");
        await owner.FillAsync("#weight-lost", "none");
        await owner.ClickAsync("#work-out");
        await Expect(owner.Locator("#refusal")).ToContainTextAsync("not a number");

        await owner.OpenAsync("/office/map?family=RV8-R");
        await owner.Locator("a.blank").First.FocusAsync();
        await Expect(owner.Locator("#read-out")).ToContainTextAsync("in stock");
        await Expect(owner.Locator("#holes")).ToContainTextAsync("outside every region");
        await owner.PictureAsync("map-1440");
        await Expect(owner.Locator("#hole-list li").First).ToContainTextAsync("crank deg at .050");
        await owner.Locator("#wishes tbody th a").First.ClickAsync();
        await owner.WaitForURLAsync("**/desk/orders/C*");

        await owner.OpenAsync("/office/map?family=RV8-R");
        await owner.Locator("a.blank").First.FocusAsync();
        await owner.Keyboard.PressAsync("Enter");
        await owner.WaitForURLAsync("**/office/blanks/RV8R-*");
        await Expect(owner.Locator("#stock")).ToBeVisibleAsync();
    }

    private static async Task<int> CostAsync(IPage page, string shelf) =>
        int.Parse(Digits().Match(await page.Locator($"#beside tbody tr:has(th:text-is('{shelf}')) td").Nth(1).InnerTextAsync()).Value.Replace(",", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex("[0-9,]+")]
    private static partial Regex Digits();
}
