using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace GrindShop.Browser.Tests;

/// <summary>Axe finds nothing on any page, as it opens and with all that is folded away opened, at three widths, light and dark.</summary>
public abstract class EveryPage(Browser browser) : IClassFixture<Browser>
{
    /// <summary>Opens whatever is folded away; false where nothing is.</summary>
    private const string Unfold = "() => { const folded = document.querySelectorAll('main details:not([open])'); folded.forEach(one => one.open = true); return folded.length > 0; }";

    /// <summary>A page that says so ("Reading the orders…") does not show yet what it is for.</summary>
    private static readonly Regex StillReading = new(@"…\s*$");

    protected async Task LookAsync(Person? person, string address)
    {
        foreach (var dark in new[] { false, true })
        {
            var page = await browser.VisitAsync(person, dark: dark);
            await OpenAsync(page, address);
            await page.LookAsync($"{address} {(dark ? "dark" : "light")}");
            if (await page.EvaluateAsync<bool>(Unfold))
                await page.LookAsync($"{address} {(dark ? "dark" : "light")} unfolded");
            await page.Context.CloseAsync();
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
}

public sealed class CustomerPagesTests(Browser browser) : EveryPage(browser)
{
    [Theory]
    [InlineData("/")]
    [InlineData("/spec")]
    [InlineData("/spec/guided")]
    [InlineData("/spec/resume/NOSUCHDRAFT234567890")]
    [InlineData("/grinds")]
    [InlineData("/spec?engine=RV8-R&lifter=HydraulicRoller&i050=222&ilift=.335&order=1-2-3")]
    [InlineData("/spec?grind=RV8-R-101")]
    [InlineData("/api")]
    [InlineData("/geometry")]
    [InlineData("/geometry?engine=RV8-R&lifter=HydraulicRoller&i050=222&ilift=.335")]
    [InlineData("/learn")]
    [InlineData("/learn/blanks")]
    [InlineData("/learn/case")]
    [InlineData("/learn/base-circle")]
    [InlineData("/learn/separation")]
    [InlineData("/learn/gears")]
    [InlineData("/track")]
    [InlineData("/track/NOSUCHCODE2345")]
    [InlineData("/sign-in")]
    [InlineData("/not-found")]
    [InlineData("/not-allowed")]
    [InlineData("/error")]
    public Task Axe_finds_nothing(string address) => LookAsync(null, address);
}

public sealed class DeskPagesTests(Browser browser) : EveryPage(browser)
{
    [Theory]
    [InlineData("/desk")]
    [InlineData("/desk/orders/C1201")]
    [InlineData("/desk/orders/C1190")]
    [InlineData("/desk/orders/C1001")]
    [InlineData("/desk/orders/C9")]
    [InlineData("/desk/blanks")]
    [InlineData("/desk/mail")]
    [InlineData("/desk/mail/paste")]
    [InlineData("/desk/call")]
    [InlineData("/desk/find?q=orlowe")]
    [InlineData("/desk/find?q=zzzz")]
    [InlineData("/desk/find")]
    [InlineData("/desk?view=mine")]
    [InlineData("/desk?view=nobody&show=New")]
    [InlineData("/desk?view=snoozed")]
    [InlineData("/desk?view=calls")]
    [InlineData("/desk?view=closed")]
    [InlineData("/lots/L503")]
    public Task Axe_finds_nothing(string address) => LookAsync(Person.Desk, address);
}

public sealed class FloorPagesTests(Browser browser) : EveryPage(browser)
{
    [Theory]
    [InlineData("/floor")]
    [InlineData("/floor/jobs/J1180")]
    [InlineData("/floor/jobs/J1001")]
    [InlineData("/floor/jobs/J9")]
    [InlineData("/lots/L9")]
    [InlineData("/floor/count")]
    [InlineData("/floor/count?lot=L466")]
    public Task Axe_finds_nothing(string address) => LookAsync(Person.Floor, address);
}

public sealed class SettingsPagesTests(Browser browser) : EveryPage(browser)
{
    [Theory]
    [InlineData("/settings")]
    [InlineData("/settings/starting")]
    [InlineData("/settings/rules")]
    [InlineData("/settings/rules/gear/rear/steel/iron")]
    [InlineData("/settings/rules/no/such")]
    [InlineData("/settings/history")]
    [InlineData("/settings/prices")]
    [InlineData("/settings/prices/adder/RUSH")]
    [InlineData("/settings/prices/no/such")]
    [InlineData("/settings/shop")]
    [InlineData("/settings/people")]
    [InlineData("/settings/people/nobody")]
    [InlineData("/settings/grinds")]
    [InlineData("/settings/grinds/RV8-R-101")]
    [InlineData("/settings/grinds/new")]
    [InlineData("/settings/grinds/no")]
    public Task Axe_finds_nothing(string address) => LookAsync(Person.Owner, address);
}

public sealed class OfficePagesTests(Browser browser) : EveryPage(browser)
{
    [Theory]
    [InlineData("/office")]
    [InlineData("/office/buying")]
    [InlineData("/office/buying?show=all&part=RV8R-516-10")]
    [InlineData("/office/buying?show=closed")]
    [InlineData("/office/buying/new")]
    [InlineData("/office/buying/PO-1052")]
    [InlineData("/office/buying/PO-1061")]
    [InlineData("/office/buying/PO-1001")]
    [InlineData("/office/buying/PO-9")]
    [InlineData("/office/blanks")]
    [InlineData("/office/blanks/RV8R-516-08")]
    [InlineData("/office/blanks/SI6F-516-07")]
    [InlineData("/office/blanks/NO-SUCH")]
    [InlineData("/office/blanks/new")]
    [InlineData("/office/blanks/RV8R-516-08/edit")]
    [InlineData("/office/blanks/import")]
    [InlineData("/office/receive")]
    [InlineData("/lots/L466")]
    [InlineData("/office/shelf")]
    [InlineData("/office/map")]
    [InlineData("/office/map?lifter=flat")]
    [InlineData("/office/millrun")]
    [InlineData("/office/millrun?part=RV8R-516-10")]
    public Task Axe_finds_nothing(string address) => LookAsync(Person.Owner, address);
}
