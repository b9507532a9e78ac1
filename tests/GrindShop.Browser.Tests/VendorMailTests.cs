using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The owner looks at the letter and mails a purchase order; what became of it stands on its page.</summary>
public sealed class VendorMailTests(Browser browser) : IClassFixture<Browser>
{
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
        await page.LookAsync("vendor-mail");
    }
}
