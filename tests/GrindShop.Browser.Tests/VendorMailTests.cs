using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The owner looks at the letter and mails a purchase order; what became of it stands on its page.</summary>
public sealed class VendorMailTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly string? Pictures = Environment.GetEnvironmentVariable("GRINDSHOP_PICTURES");

    [Fact]
    public async Task Purchase_order_goes_out_with_its_paper()
    {
        var page = await browser.VisitAsync(Person.Owner, dark: true);
        await page.OpenAsync("/office/buying/PO-1052");
        await page.ClickAsync("#vendor-letter");
        await Expect(page.Locator("#vendor-letter-text")).ToContainTextAsync("RV8R-HI-02");
        await page.ClickAsync("#mail-vendor");
        await Expect(page.Locator("#vendor-mails")).ToContainTextAsync("in the folder", new() { Timeout = 60_000 });
        await Expect(page.Locator("#history")).ToContainTextAsync("Mailed to orders@claybed.example.com.");
        var message = Assert.Single(Directory.GetFiles(browser.App.MailFolder, "*.eml").Select(file => MimeKit.MimeMessage.Load(file)), one => one.Subject?.StartsWith("Purchase order PO-1052", StringComparison.Ordinal) == true);
        Assert.Equal("PO-1052.pdf", Assert.Single(message.Attachments).ContentDisposition?.FileName);
        foreach (var width in new[] { 390, 1024, 1440 })
        {
            await page.SetViewportSizeAsync(width, 900);
            if (Pictures is not null)
                await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, $"vendor-mail-{width}.png"), FullPage = true });
            var violations = (await page.RunAxe()).Violations;
            Assert.True(violations.Length == 0, $"{width}: {string.Join("; ", violations.Select(found => $"{found.Id}: {found.Nodes[0].Html}"))}");
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth") <= 0, $"{width} px is too narrow for the page.");
        }
    }
}
