using Bunit;
using GrindShop.Shop.Feasibility;
using GrindShop.Web.Security;
using GrindShop.Web.Settings;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Settings;

public sealed class RulePageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task A_rule_is_changed_with_its_why_and_the_change_stands_below()
    {
        await using var browser = shop.Browser("Petra Vane", Policies.Settings);
        var page = Open(browser, "gear/rear/steel/bronze");
        await page.InvokeAsync(() => page.Find("#verdict-caution").ChangeAsync(true));
        await page.InvokeAsync(() => page.Find("#reason").InputAsync("Bronze dust was found in two sumps: look at it after a hundred miles."));
        await page.InvokeAsync(() => page.Find("#why").InputAsync("Two returns"));
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());

        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);
        Assert.Contains("caution Bronze dust", Flat(page.Find("#now").TextContent));
        Assert.Contains("Petra Vane", page.Find(".history").TextContent);
        Assert.Contains("Why: Two returns", page.Find(".history").TextContent);
        Assert.Equal("", page.Find("#why").GetAttribute("value"));
    }

    [Fact]
    public async Task Without_a_why_nothing_is_saved()
    {
        await using var browser = shop.Browser("Petra Vane", Policies.Settings);
        var page = Open(browser, "gear/rear/steel/polymerComposite");
        await page.InvokeAsync(() => page.Find("#reason").InputAsync("Other words."));
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());

        page.WaitForState(() => page.FindAll("#refusal").Count == 1, Patience);
        Assert.Contains("Say why", page.Find("#refusal").TextContent);
        Assert.Equal("Other words.", page.Find("#reason").GetAttribute("value"));
    }

    [Fact]
    public async Task The_second_editor_sees_what_changed_keeps_the_words_and_may_save_again()
    {
        const string key = "lifter/steel1055/solidRoller";
        await using var browser = shop.Browser("Petra Vane", Policies.Settings);
        var page = Open(browser, key);
        await page.InvokeAsync(() => page.Find("#reason").InputAsync("Mine."));
        var book = shop.Get<RuleBook>();
        var seen = (await book.FindAsync(key))!.Value.Rule;
        Assert.True((await book.ChangeAsync(new RuleEdit(key, seen.Version, RuleVerdict.No, "Theirs.", "theirs"), "Other Owner")).Succeeded);

        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.FindAll("#refusal").Any(refusal => refusal.TextContent.Contains("Say why", StringComparison.Ordinal)), Patience);
        await page.InvokeAsync(() => page.Find("#why").InputAsync("mine"));
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.FindAll("#refusal").Any(refusal => refusal.TextContent.Contains("Other Owner", StringComparison.Ordinal)), Patience);
        Assert.Contains("Theirs.", page.Find("#now").TextContent);
        Assert.Equal("Mine.", page.Find("#reason").GetAttribute("value"));

        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);
        Assert.Equal("Mine.", (await book.FindAsync(key))!.Value.Rule.Reason);
    }

    [Fact]
    public async Task An_unknown_rule_is_said()
    {
        await using var browser = shop.Browser("Petra Vane", Policies.Settings);
        var page = browser.Render<RulePage>(parameters => parameters.Add(rule => rule.Key, "gear/middle"));
        page.WaitForState(() => page.Find("h1").TextContent.Contains("no such rule", StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task The_tables_show_every_rule_with_the_way_to_change_it()
    {
        await using var browser = shop.Browser("Petra Vane", Policies.Settings);
        var page = browser.Render<RulesPage>();
        page.WaitForState(() => page.FindAll("table").Count == 5, Patience);
        Assert.Equal(StartingRules.All().Select(rule => $"/settings/rules/{rule.Key}").Order(), page.FindAll("td a").Select(link => link.GetAttribute("href")!).Order());
    }

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace("△ ", "", StringComparison.Ordinal);

    private static IRenderedComponent<RulePage> Open(BunitContext browser, string key)
    {
        var page = browser.Render<RulePage>(parameters => parameters.Add(rule => rule.Key, key));
        page.WaitForState(() => page.FindAll("#save").Count == 1, Patience);
        return page;
    }
}
