using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace GrindShop.Browser.Tests;

/// <summary>How a page looks on a phone, a tablet and a desk. Where GRINDSHOP_PICTURES names a folder, each look is also kept there as a picture.</summary>
internal static class Looks
{
    /// <summary>
    /// axe-core in the page itself. The ready-made call for Playwright opens a tab for every run and describes also what is right:
    /// four to six seconds a run where this takes half a one, with the same rules.
    /// </summary>
    private const string Run = """
        async () => {
            const found = await axe.run(document, { resultTypes: ['violations'] });
            return found.violations.map(violation => `${violation.id} (${violation.nodes.length}): ${violation.nodes[0].html}`);
        }
        """;

    private static readonly (int Width, int Height)[] Sizes = [(390, 844), (1024, 768), (1440, 900)];

    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    private static readonly string? Pictures = Environment.GetEnvironmentVariable("GRINDSHOP_PICTURES");

    /// <summary>Axe finds nothing and nothing is wider than the screen, at three sizes.</summary>
    public static async Task LookAsync(this IPage page, string name)
    {
        var before = page.ViewportSize!;
        foreach (var (width, height) in Sizes)
        {
            await page.SetViewportSizeAsync(width, height);
            await page.PictureAsync($"{name}-{width}");
            var found = await page.ViolationsAsync();
            Assert.True(found.Length == 0, $"{name} at {width}: {string.Join("; ", found)}");
            var overflow = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Assert.True(overflow <= 0, $"{name} at {width} is {overflow} px wider than the screen.");
        }
        await page.SetViewportSizeAsync(before.Width, before.Height);
    }

    /// <summary>A look at the page as it stands.</summary>
    public static async Task PictureAsync(this IPage page, string name)
    {
        if (Pictures is { Length: > 0 })
            await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, $"{string.Concat(name.Trim('/').Select(sign => "/ ?&".Contains(sign) ? '_' : sign))}.png"), FullPage = true });
    }

    /// <summary>What breaks a rule on the page as it stands; empty when nothing does.</summary>
    public static async Task<string[]> ViolationsAsync(this IPage page)
    {
        if (await page.EvaluateAsync<bool>("typeof axe === 'undefined'"))
            await page.EvaluateAsync(Script);
        return await page.EvaluateAsync<string[]>(Run);
    }
}
