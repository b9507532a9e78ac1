using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace GrindShop.Browser.Tests;

/// <summary>Axe finds nothing on any page, at three widths, light and dark. With GRINDSHOP_PICTURES each page is also kept as a picture in that folder.</summary>
public sealed class AccessibilityTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly (int Width, int Height)[] Sizes = [(390, 844), (1024, 768), (1440, 900)];

    /// <summary>A page that says so ("Reading the orders…") does not show yet what it is for.</summary>
    private static readonly Regex StillReading = new(@"…\s*$");

    private static readonly string? Pictures = Environment.GetEnvironmentVariable("GRINDSHOP_PICTURES");

    public static TheoryData<string, string> Everything => new()
    {
        { "", "/" }, { "", "/spec" }, { "", "/spec/guided" }, { "", "/spec/resume/NOSUCHDRAFT234567890" }, { "", "/grinds" },
        { "", "/spec?engine=RV8-R&lifter=HydraulicRoller&i050=222&ilift=.335&order=1-2-3" }, { "", "/spec?grind=RV8-R-101" }, { "", "/api" }, { "", "/geometry" }, { "", "/geometry?engine=RV8-R&lifter=HydraulicRoller&i050=222&ilift=.335" },
        { "", "/learn" }, { "", "/learn/blanks" }, { "", "/learn/case" }, { "", "/learn/base-circle" }, { "", "/learn/separation" }, { "", "/learn/gears" },
        { "", "/track" }, { "", "/track/NOSUCHCODE2345" }, { "", "/sign-in" }, { "", "/not-found" }, { "", "/not-allowed" }, { "", "/error" },
        { "Desk", "/desk" }, { "Desk", "/desk/orders/C1201" }, { "Desk", "/desk/orders/C1190" }, { "Desk", "/desk/orders/C1001" }, { "Desk", "/desk/orders/C9" }, { "Desk", "/desk/blanks" }, { "Desk", "/desk/mail" }, { "Desk", "/desk/mail/paste" }, { "Desk", "/desk/call" }, { "Desk", "/desk/find?q=orlowe" }, { "Desk", "/desk/find?q=zzzz" }, { "Desk", "/desk/find" }, { "Desk", "/desk?view=mine" }, { "Desk", "/desk?view=nobody&show=New" }, { "Desk", "/desk?view=snoozed" }, { "Desk", "/desk?view=calls" }, { "Desk", "/desk?view=closed" },
        { "Floor", "/floor" }, { "Floor", "/floor/jobs/J1180" }, { "Floor", "/floor/jobs/J1001" }, { "Floor", "/floor/jobs/J9" },
        { "Owner", "/settings" }, { "Owner", "/settings/starting" }, { "Owner", "/settings/rules" }, { "Owner", "/settings/rules/gear/rear/steel/iron" }, { "Owner", "/settings/rules/no/such" }, { "Owner", "/settings/history" },
        { "Owner", "/settings/prices" }, { "Owner", "/settings/prices/adder/RUSH" }, { "Owner", "/settings/prices/no/such" }, { "Owner", "/settings/shop" }, { "Owner", "/settings/people" },
        { "Owner", "/settings/people/nobody" }, { "Owner", "/settings/grinds" }, { "Owner", "/settings/grinds/RV8-R-101" }, { "Owner", "/settings/grinds/new" }, { "Owner", "/settings/grinds/no" },
        { "Owner", "/office" }, { "Owner", "/office/buying" }, { "Owner", "/office/buying?show=all&part=RV8R-516-10" }, { "Owner", "/office/buying?show=closed" }, { "Owner", "/office/buying/new" },
        { "Owner", "/office/buying/PO-1052" }, { "Owner", "/office/buying/PO-1061" }, { "Owner", "/office/buying/PO-1001" }, { "Owner", "/office/buying/PO-9" },
        { "Owner", "/office/blanks" }, { "Owner", "/office/blanks/RV8R-516-08" }, { "Owner", "/office/blanks/SI6F-516-07" }, { "Owner", "/office/blanks/NO-SUCH" }, { "Owner", "/office/blanks/new" },
        { "Owner", "/office/blanks/RV8R-516-08/edit" }, { "Owner", "/office/blanks/import" }, { "Owner", "/office/receive" }, { "Owner", "/lots/L466" }, { "Desk", "/lots/L503" }, { "Floor", "/lots/L9" },
        { "Floor", "/floor/count" }, { "Floor", "/floor/count?lot=L466" },
        { "Owner", "/office/shelf" }, { "Owner", "/office/map" }, { "Owner", "/office/map?lifter=flat" }, { "Owner", "/office/millrun" }, { "Owner", "/office/millrun?part=RV8R-516-10" },
    };

    [Theory]
    [MemberData(nameof(Everything))]
    public async Task Axe_finds_nothing(string person, string address)
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(Who(person), dark: dark);
            await OpenAsync(page, address);
            await CheckAsync(page, $"{address} {(dark ? "dark" : "light")}");
        }
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_price_in_the_making_and_on_the_customers_page_of_a_quote()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/orders/C1190");
        await page.ClickAsync("#price-again summary");
        await page.ClickAsync("#add-line");
        await page.ClickAsync("#line-0-strike");
        await page.ClickAsync("#deposit-form summary");
        await page.SelectOptionAsync("#kind", "Regrind");
        await Assertions.Expect(page.Locator("#measured")).ToBeVisibleAsync();
        await CheckAsync(page, "/desk-price light");
        await page.SelectOptionAsync("#kind", "GearReplacement");
        await Assertions.Expect(page.Locator("#gears")).ToBeVisibleAsync();
        await CheckAsync(page, "/desk-gear light");
        await page.OpenAsync("/desk/call");
        await page.CheckAsync("#kind-GearReplacement");
        await Assertions.Expect(page.Locator("#gears")).ToBeVisibleAsync();
        await CheckAsync(page, "/desk-call-gear light");
        await page.OpenAsync("/desk/orders/C1190");
        await page.OpenAsync((await page.Locator("a[href^='/track/']").First.GetAttributeAsync("href"))!);
        await page.ClickAsync(".answer summary");
        await CheckAsync(page, "/track-quoted light");
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_map_that_is_drawn()
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(Person.Owner, dark: dark);
            await page.OpenAsync("/office/map?family=RV8-R");
            await page.WaitForSelectorAsync("#hole-list");
            await CheckAsync(page, $"/office/map-drawn {(dark ? "dark" : "light")}");
        }
    }

    [Fact]
    public async Task Axe_finds_nothing_on_a_shelf_that_was_worked_out()
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(Person.Owner, dark: dark);
            await page.OpenAsync("/office/shelf?family=RV8-R&months=12");
            await page.ClickAsync("#work-out");
            await Assertions.Expect(page.Locator("#bound")).ToContainTextAsync("Proven", new() { Timeout = 60_000 });
            await CheckAsync(page, $"/office/shelf-solved {(dark ? "dark" : "light")}");
        }
    }

    [Theory]
    [InlineData("RV8-R", "HydraulicRoller", ".335", "222", "112", "fits")]
    [InlineData("RV8-R", "HydraulicFlat", ".600", "260", "126", "does-not-fit")]
    public async Task Axe_finds_nothing_on_the_answered_form_and_its_tracking_page(string family, string lifter, string lift, string at050, string lsa, string name)
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(dark: dark);
            await page.OpenAsync("/spec");
            await page.SelectOptionAsync("#engine-family", family);
            await page.SelectOptionAsync("#lifter", lifter);
            await page.FillAsync("#intake-lobe-lift", lift);
            await page.FillAsync("#intake-duration-050", at050);
            await page.FillAsync("#lsa", lsa);
            await page.WaitForSelectorAsync("#answer svg[role=img]");
            await CheckAsync(page, $"/spec-{name} {(dark ? "dark" : "light")}");
            await page.ClickAsync("#send");
            await page.WaitForSelectorAsync("#contact-name-problem");
            await CheckAsync(page, $"/spec-{name}-wrong {(dark ? "dark" : "light")}");
            await page.FillAsync("#contact-name", "Axel Brandt");
            await page.FillAsync("#contact-phone", "555-0142-77");
            await page.ClickAsync("#send");
            await page.WaitForSelectorAsync("ol.way");
            await CheckAsync(page, $"/track-{name} {(dark ? "dark" : "light")}");
        }
    }

    private static async Task OpenAsync(IPage page, string address)
    {
        if (address is "/sign-in" or "/error")
            await page.GotoAsync(address);
        else
            await page.OpenAsync(address);
        await page.WaitForSelectorAsync("h1");
        await Assertions.Expect(page.Locator("main [role=status]").Filter(new() { HasTextRegex = StillReading })).ToHaveCountAsync(0, new() { Timeout = 60_000 });
    }

    private static async Task CheckAsync(IPage page, string name)
    {
        foreach (var (width, height) in Sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            var result = await page.RunAxe();
            Assert.True(result.Violations.Length == 0, $"{name} at {width}: {string.Join("; ", result.Violations.Select(Words))}");
            var overflow = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Assert.True(overflow <= 0, $"{name} at {width} is {overflow} px wider than the screen.");
            if (Pictures is not null)
                await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, $"{name.Trim('/').Replace('/', '_').Replace(' ', '-').Replace('?', '_').Replace('&', '_')}-{width}.png"), FullPage = true });
        }
    }

    private static string Words(AxeResultItem violation) => $"{violation.Id} ({violation.Nodes.Length}): {violation.Nodes[0].Html}";

    private static Person? Who(string role) => role switch
    {
        "Desk" => Person.Desk,
        "Floor" => Person.Floor,
        "Owner" => Person.Owner,
        _ => null,
    };
}
