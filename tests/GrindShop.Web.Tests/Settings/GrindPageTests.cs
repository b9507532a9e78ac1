using Bunit;
using GrindShop.Shop.Grinds;
using GrindShop.Web.Public;
using GrindShop.Web.Security;
using GrindShop.Web.Settings;
using GrindShop.Web.Tests.Desk;
using Xunit;

namespace GrindShop.Web.Tests.Settings;

public sealed class GrindPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private GrindBook Book => shop.Get<GrindBook>();

    [Fact]
    public async Task A_grind_is_changed_with_its_why_and_says_whether_a_blank_serves_it()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = Open(browser, "RV8-R-101");
        Assert.Contains("Can be ground", page.Find("#serving").TextContent);

        await TypeAsync(page, "#grind-name", "Brook");
        await TypeAsync(page, "#intake-lobe-lift", "0.600");
        page.WaitForState(() => page.Find("#serving").TextContent.Contains("Cannot be ground", StringComparison.Ordinal), Patience);
        await TypeAsync(page, "#intake-lobe-lift", "0.292");
        page.WaitForState(() => page.Find("#serving").TextContent.Contains("Can be ground", StringComparison.Ordinal), Patience);
        await TypeAsync(page, "#why", "asked for");
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());

        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);
        var grind = (await Book.FindAsync("RV8-R-101"))!;
        Assert.Equal(("Brook", .292), (grind.Entry.Name, grind.Entry.Spec.Intake.LobeLiftIn));
        Assert.Contains("asked for", page.Find("#grind-history").TextContent);
    }

    [Fact]
    public async Task The_second_to_save_is_told_and_keeps_what_was_typed()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = Open(browser, "RV8-R-102");
        await TypeAsync(page, "#grind-name", "Mine");
        var now = (await Book.FindAsync("RV8-R-102"))!;
        Assert.True((await Book.ChangeAsync(now.Code, now.Version, now.Entry with { Name = "Theirs" }, "sounds better", "Somebody Else")).Succeeded);

        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.FindAll("#refusal").Any(refusal => refusal.TextContent.Contains("Say why", StringComparison.Ordinal)), Patience);
        await TypeAsync(page, "#why", "better");
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.FindAll("#refusal").Any(refusal => refusal.TextContent.Contains("Somebody Else", StringComparison.Ordinal)), Patience);
        Assert.Equal("Mine", page.Find("#grind-name").GetAttribute("value"));
        Assert.Contains("Theirs", page.Find("#grind-history").TextContent);

        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);
        Assert.Equal("Mine", (await Book.FindAsync("RV8-R-102"))!.Entry.Name);
    }

    [Fact]
    public async Task A_retired_grind_leaves_the_customers_list_and_comes_back()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = Open(browser, "RV8-R-103");
        await TypeAsync(page, "#why", "nobody wants it");
        await page.InvokeAsync(() => page.Find("#retire").ClickAsync());
        page.WaitForState(() => page.FindAll("#retired").Count == 1, Patience);
        Assert.DoesNotContain(await Book.ListAsync(), grind => grind.Code == "RV8-R-103");

        await TypeAsync(page, "#why", "somebody does");
        await page.InvokeAsync(() => page.Find("#bring-back").ClickAsync());
        page.WaitForState(() => page.FindAll("#retired").Count == 0, Patience);
        Assert.Contains(await Book.ListAsync(), grind => grind.Code == "RV8-R-103");
    }

    [Fact]
    public async Task What_contradicts_itself_is_said_and_not_added()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var before = (await Book.ListAsync(retired: true)).Count;
        var page = Open(browser, GrindPage.New);
        await TypeAsync(page, "#grind-name", "Nothing yet");
        await TypeAsync(page, "#grind-summary", "For nobody.");
        await TypeAsync(page, "#why", "to see");
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());

        page.WaitForState(() => page.FindAll("#refusal").Count == 1, Patience);
        Assert.Contains("Choose the engine family", page.Find("#refusal").TextContent);
        Assert.Equal(before, (await Book.ListAsync(retired: true)).Count);
    }

    /// <summary>On the renderer's own thread, so that no answer that comes in meanwhile draws the field anew under the fingers.</summary>
    private static Task TypeAsync(IRenderedComponent<GrindPage> page, string field, string text) => page.InvokeAsync(() => page.Find(field).InputAsync(text));

    private static IRenderedComponent<GrindPage> Open(BunitContext browser, string code)
    {
        var page = browser.Render<GrindPage>(parameters => parameters.Add(grind => grind.Code, code));
        page.WaitForState(() => page.FindAll("#save").Count == 1, Patience);
        return page;
    }
}
