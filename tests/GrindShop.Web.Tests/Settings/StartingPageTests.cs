using Bunit;
using GrindShop.Shop.Starting;
using GrindShop.Web.Public;
using GrindShop.Web.Security;
using GrindShop.Web.Settings;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Settings;

public sealed class StartingPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private StartRuleBook Book => shop.Get<StartRuleBook>();

    [Fact]
    public async Task A_figure_is_saved_with_its_why_counts_and_stands_in_the_history()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = Open(browser);
        var before = (await Book.HistoryAsync()).Count;
        var (path, value) = Figure(page);

        await TypeAsync(page, path, NumberText.Write(value + 1));
        await TypeAsync(page, "why", "engines pull harder now");
        await page.InvokeAsync(() => page.Find("#save-rules").ClickAsync(new()));

        page.WaitForState(() => page.Find("#rules-saved").TextContent.Contains("Saved", StringComparison.Ordinal), Patience);
        var history = await Book.HistoryAsync();
        Assert.Equal((before + 1, "engines pull harder now", "Hollis Verne"), (history.Count, history[0].Why, history[0].By));
        Assert.Contains("engines pull harder now", page.Find("#rules-history").TextContent);
        Assert.Equal(value + 1, RuleCell.Of(history[0].Rules).Single(cell => cell.Path == path).Get(history[0].Rules));
    }

    [Fact]
    public async Task What_is_no_number_is_said_and_nothing_is_saved()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var page = Open(browser);
        var before = (await Book.HistoryAsync()).Count;
        var (path, _) = Figure(page);

        await TypeAsync(page, path, "a lot");
        await TypeAsync(page, "why", "try");
        await page.InvokeAsync(() => page.Find("#save-rules").ClickAsync(new()));

        page.WaitForState(() => page.FindAll("#rules-problem").Count == 1, Patience);
        Assert.Equal("a lot", page.Find($"[data-path='{path}']").GetAttribute("value"));
        Assert.Equal(before, (await Book.HistoryAsync()).Count);
    }

    [Fact]
    public async Task Who_saves_after_somebody_else_is_told_and_keeps_what_was_typed()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Settings);
        var (mine, theirs) = (Open(browser), Open(browser));
        var (path, value) = Figure(mine);
        foreach (var (page, more) in new[] { (theirs, 2), (mine, 3) })
        {
            await TypeAsync(page, path, NumberText.Write(value + more));
            await TypeAsync(page, "why", $"by {more}");
            await page.InvokeAsync(() => page.Find("#save-rules").ClickAsync(new()));
        }

        mine.WaitForState(() => mine.FindAll("#rules-problem").Count == 1, Patience);
        Assert.Equal(NumberText.Write(value + 3), mine.Find($"[data-path='{path}']").GetAttribute("value"));
        Assert.Equal("by 2", (await Book.HistoryAsync())[0].Why);
    }

    /// <summary>The first figure of the page and what stands there.</summary>
    private static (string Path, double Value) Figure(IRenderedComponent<StartingPage> page)
    {
        var input = page.Find("[data-path^='uses.']");
        Assert.True(NumberText.TryRead(input.GetAttribute("value") ?? "", out var value));
        return (input.GetAttribute("data-path")!, value!.Value);
    }

    private static Task TypeAsync(IRenderedComponent<StartingPage> page, string path, string text) => page.InvokeAsync(() => page.Find($"[data-path='{path}']").InputAsync(text));

    private static IRenderedComponent<StartingPage> Open(BunitContext browser)
    {
        var page = browser.Render<StartingPage>();
        page.WaitForState(() => page.FindAll("#save-rules").Count == 1, Patience);
        return page;
    }
}
