using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The owner keeps the catalog: pictures and drawings, files in and out, and one part changed by two.</summary>
public sealed class BlankTests(Browser browser) : IClassFixture<Browser>
{
    private const string Part = "/office/blanks/RV8R-516-09";

    /// <summary>One dark pixel.</summary>
    private static readonly byte[] Picture = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    [Fact]
    public async Task A_picture_and_a_drawing_are_added_on_the_page_and_what_is_neither_is_refused()
    {
        var owner = await browser.VisitAsync(Person.Owner);
        await owner.OpenAsync(Part);
        await owner.ChooseFileAsync("#file", File("front.png", "image/png", Picture));
        await Expect(owner.Locator("#files img[alt*='front.png']")).ToBeVisibleAsync();
        await owner.ChooseFileAsync("#file", File("nose.pdf", "application/pdf", "%PDF-1.7 a drawing"u8.ToArray()));
        await Expect(owner.Locator("#files")).ToContainTextAsync("nose.pdf");
        await owner.ChooseFileAsync("#file", File("nose.png", "image/png", "MZ"u8.ToArray()));
        await Expect(owner.Locator("#file-problem")).ToContainTextAsync("Only PNG, JPEG, PDF and SVG");
        await Expect(owner.Locator("#history li")).ToHaveCountAsync(2);

        var kept = await owner.APIRequest.GetAsync((await owner.Locator("#files a").First.GetAttributeAsync("href"))!);
        Assert.Equal((200, "image/png"), (kept.Status, kept.Headers["content-type"]));
        Assert.Equal(Picture, await kept.BodyAsync());
    }

    [Fact]
    public async Task A_file_names_its_bad_rows_and_writes_nothing_until_what_it_would_do_was_seen()
    {
        var owner = await browser.VisitAsync(Person.Owner);
        await owner.OpenAsync("/office/blanks/import");
        var rows = (await (await owner.APIRequest.GetAsync((await owner.GetAttributeAsync("#export", "href"))!)).TextAsync()).TrimStart('\uFEFF').Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var (header, row) = (rows[0], rows.Single(one => one.StartsWith("UV6O-HI-01,", StringComparison.Ordinal)));

        await owner.ChooseFileAsync("#csv", Csv(header, row.Replace("toTheBarrel", "everywhere", StringComparison.Ordinal), rows[1], row.Replace("UV6O-HI-01", "UV6O NEW", StringComparison.Ordinal)));
        await Expect(owner.Locator("#wrong tbody tr", new() { HasText = "everywhere" })).ToContainTextAsync("Line 2");
        await Expect(owner.Locator("#wrong tbody tr", new() { HasText = "Line 4" })).ToContainTextAsync("partNumber");
        await owner.LookAsync("import-wrong");
        await Expect(owner.Locator("#apply")).ToHaveCountAsync(0);

        await owner.ChooseFileAsync("#csv", Csv(header, row.Replace(",48.05,", ",49.5,", StringComparison.Ordinal), rows[1], row.Replace("UV6O-HI-01", "UV6O-HI-91", StringComparison.Ordinal)));
        await Expect(owner.Locator("#sum")).ToHaveTextAsync("1 added, 1 changed, 1 unchanged, 0 wrong.");
        await Expect(owner.Locator("#changes")).ToContainTextAsync("costUsd: 48.05 → 49.5");
        await Expect(owner.Locator("#changes")).ToContainTextAsync("new part");
        await owner.ClickAsync("#apply");
        await Expect(owner.Locator("#refusal")).ToContainTextAsync("Say why");
        await owner.FillAsync("#why", "new price list");
        await owner.ClickAsync("#apply");
        await Expect(owner.Locator("#done")).ToContainTextAsync("2 parts written.");

        await owner.OpenAsync("/office/blanks/UV6O-HI-01");
        await Expect(owner.Locator("#suppliers")).ToContainTextAsync("49.50");
        await Expect(owner.Locator("#history")).ToContainTextAsync("new price list");
        await owner.OpenAsync("/office/blanks/UV6O-HI-91");
        await Expect(owner.Locator("#book-empty")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_second_of_two_at_a_part_is_told_keeps_what_was_typed_and_undoes_nothing()
    {
        var (one, two) = (await browser.VisitAsync(Person.Owner), await browser.VisitAsync(Person.Owner));
        foreach (var page in new[] { one, two })
            await page.OpenAsync("/office/blanks/RV8R-516-10/edit");
        await one.FillAsync("#costUsd", "181.5");
        await one.ClickAsync("#source-add");
        await one.SelectOptionAsync("#source-1", "LONGBAR");
        await one.FillAsync("#source-1-part", "LB-77");
        await one.FillAsync("#source-1-cost", "190");
        await one.FillAsync("#source-1-days", "20");
        await one.FillAsync("#source-1-least", "2");
        await one.FillAsync("#why", "two prices asked for");
        await one.ClickAsync("#save");
        await Expect(one.Locator("#suppliers")).ToContainTextAsync("LB-77");

        await two.FillAsync("#driveEnd", "dowel at 12 o'clock");
        await two.FillAsync("#leastQuantity", "0");
        await two.FillAsync("#why", "measured one");
        await two.ClickAsync("#save");
        await Expect(two.Locator("#leastQuantity-problem")).ToContainTextAsync("between 1 and 100,000");
        await two.FillAsync("#leastQuantity", "3");
        await two.ClickAsync("#save");
        await Expect(two.Locator("#refusal")).ToContainTextAsync("costUsd from 174 to 181.5");
        await Expect(two.Locator("#driveEnd")).ToHaveValueAsync("dowel at 12 o'clock");
        await two.ClickAsync("#refusal button");
        await Expect(two.Locator("#costUsd")).ToHaveValueAsync("181.5");
        await Expect(two.Locator("#source-1-part")).ToHaveValueAsync("LB-77");
        await two.ClickAsync("#save");

        await Expect(two.Locator("#facts")).ToContainTextAsync("dowel at 12 o'clock");
        await Expect(two.Locator("#suppliers tbody tr").First).ToContainTextAsync("181.50");
        await Expect(two.Locator("#suppliers tbody tr").First.Locator("td").Last).ToHaveTextAsync("3");
        await two.ClickAsync("details summary >> text=Buy it from another");
        await two.SelectOptionAsync("#usual", "LONGBAR");
        await two.FillAsync("#usual-why", "here sooner");
        await two.ClickAsync("#usual-save");
        await Expect(two.Locator("#suppliers tbody tr").First).ToContainTextAsync("LB-77");
        await Expect(two.Locator("#history")).ToContainTextAsync("here sooner");
    }

    private static FilePayload Csv(params string[] rows) => File("blanks.csv", "text/csv", Encoding.UTF8.GetBytes(string.Join("\r\n", rows)));

    private static FilePayload File(string name, string type, byte[] content) => new() { Name = name, MimeType = type, Buffer = content };
}
