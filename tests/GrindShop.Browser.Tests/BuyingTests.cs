using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The owner buys what has run low: from the reorder point to blanks on the shelf.</summary>
public sealed class BuyingTests(Browser browser) : IClassFixture<Browser>
{
    private const string Part = "KV2N-55-01", Vendor = "TURNSTILE";

    [Fact]
    public async Task From_the_reorder_point_to_a_draft_a_sent_order_a_part_delivery_and_stock()
    {
        var owner = await browser.VisitAsync(Person.Owner);
        await owner.OpenAsync("/office/buying");
        var (onHand, onOrder) = (await FigureAsync(owner, "on-hand"), await FigureAsync(owner, "on-order"));
        await Expect(owner.Locator($"#need-{Part}")).ToContainTextAsync("probability");

        // One click makes the draft; it is settled and sent.
        await owner.ClickAsync($"#draft-{Vendor}");
        await owner.WaitForURLAsync("**/office/buying/PO-*");
        var number = new Uri(owner.Url).Segments[^1];
        await owner.SelectOptionAsync("#want-part", Part);
        await owner.FillAsync("#want-quantity", "7");
        await owner.ClickAsync("#want");
        await Expect(owner.Locator("#refusal")).ToContainTextAsync("multiples of 2");
        await Expect(owner.Locator("#want-quantity")).ToHaveValueAsync("7");
        await owner.FillAsync("#want-quantity", "8");
        await owner.ClickAsync("#want");
        await Expect(owner.Locator("#want-price-hint")).ToContainTextAsync("By the terms for 8:");
        await Expect(owner.Locator("#said")).ToContainTextAsync($"{Part} stands on the draft");
        await owner.ClickAsync("#send");
        await Expect(owner.Locator("#state")).ToHaveTextAsync("sent");

        var paper = await owner.PaperAsync($"/papers/purchase/{number}.pdf");
        foreach (var expected in new[] { number, Part, "Turnstile Cam Blanks", "Purchase order" })
            Assert.Contains(expected, paper, StringComparison.Ordinal);

        // Five of eight come in; the tenth is one too many without a reason.
        await owner.SelectOptionAsync("#receive-part", Part);
        await owner.FillAsync("#receive-quantity", "10");
        await owner.FillAsync("#receive-place", "B7-2");
        await owner.ClickAsync("#receive");
        await Expect(owner.Locator("#refusal")).ToContainTextAsync("more than ordered");
        await owner.FillAsync("#receive-quantity", "5");
        await owner.FillAsync("#receive-heat", "H 4711");
        await owner.ClickAsync("#receive");
        await Expect(owner.Locator("#state")).ToHaveTextAsync("partly received");
        await Expect(owner.Locator($"#line-{Part}")).ToContainTextAsync(new Regex(@"5 in L\d+"));
        await Expect(owner.Locator("#history")).ToContainTextAsync("3 to come");
        await owner.PictureAsync("purchase-partly-received");

        // Stock is up, the rest is on order, and nothing of it has to be bought again.
        await owner.OpenAsync("/office/buying?show=all");
        await Expect(owner.Locator($"#need-{Part} .on-hand")).ToHaveTextAsync($"{onHand + 5}");
        await Expect(owner.Locator($"#need-{Part} .on-order")).ToHaveTextAsync($"{onOrder + 3}");
        await Expect(owner.Locator($"#need-{Part}")).ToContainTextAsync("enough");
    }

    [Fact]
    public async Task A_mill_run_follows_what_is_typed()
    {
        var owner = await browser.VisitAsync(Person.Owner);
        await owner.OpenAsync("/office/millrun");
        await owner.SelectOptionAsync("#part", "RV8R-866-11");
        await Expect(owner.Locator("#verdict")).ToContainTextAsync("Do not mill");
        await owner.FillAsync("#demand", "60");
        await owner.FillAsync("#uncertainty", "10");
        await owner.PressAsync("#uncertainty", "Tab");
        await owner.UncheckAsync("#counts-RV8R-516-09");
        await Expect(owner.Locator("#verdict")).ToContainTextAsync(new Regex(@"^Mill \d+: \$\d+\.\d\d a cam against"));
        await Expect(owner.Locator("#run-desc")).ToContainTextAsync("The least run that pays is");
        await owner.PictureAsync("millrun-pays");

        await owner.FillAsync("#horizon", "many");
        await owner.PressAsync("#horizon", "Tab");
        await Expect(owner.Locator("#refusal")).ToContainTextAsync("horizon is not a number");
        await Expect(owner.Locator("#horizon")).ToHaveValueAsync("many");
    }

    private static async Task<int> FigureAsync(IPage page, string figure) =>
        int.Parse(await page.TextAsync($"#need-{Part} .{figure}"), System.Globalization.CultureInfo.InvariantCulture);
}
