using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>A mail is pasted in with the keyboard alone; a second one goes to the same order.</summary>
public sealed class PasteTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Mail_is_pasted_in_by_keyboard_and_its_answer_goes_to_its_order()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/mail");
        await page.FocusAsync("#paste");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#text")).ToBeFocusedAsync();
        await page.Keyboard.InsertTextAsync("From: Corin Orlowe <corin.orlowe@example.com>\nSubject: cam for the tow rig\n\n222/228 @.050 .335 110+4 hyd roller\nneeds to idle smooth\n");
        await Expect(page.Locator("#email")).ToHaveValueAsync("corin.orlowe@example.com");
        await Expect(page.Locator("#heard")).ToContainTextAsync("intake 222 crank degrees, exhaust 228 crank degrees");
        await Expect(page.Locator("#rest")).ToContainTextAsync("idle smooth");
        await Expect(page.Locator("#ask li").First).ToContainTextAsync("Which engine");
        await Expect(page.Locator("#caller-title ~ ul a").First).ToBeVisibleAsync();
        await Expect(page.Locator("#goes-to")).ToContainTextAsync("becomes a new order");
        await page.LookAsync("paste");
        await page.KeptInTabAsync("cam for the tow rig");
        await page.ReloadAsync();
        await Expect(page.Locator("#subject")).ToHaveValueAsync("cam for the tow rig");
        await page.Keyboard.PressAsync("Control+Enter");
        await page.WaitForURLAsync("**/desk/orders/C*");
        await Expect(page.Locator("#mails")).ToContainTextAsync("cam for the tow rig");
        var number = new Uri(page.Url).Segments[^1];
        await page.LookAsync("paste-order");

        await page.OpenAsync("/desk/mail/paste");
        await Expect(page.Locator("#text")).ToBeFocusedAsync();
        await page.Keyboard.InsertTextAsync("It is the ridgetop");
        await page.Keyboard.PressAsync("Alt+2");
        await page.Keyboard.TypeAsync("somebody@example.org");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync($"Re: Order {number}");
        await Expect(page.Locator("#goes-to")).ToContainTextAsync("from another address");
        await page.FillAsync("#email", "");
        await page.Keyboard.PressAsync("Control+Enter");
        await Expect(page.Locator("#problem")).ToBeVisibleAsync();
        await page.FillAsync("#email", "corin.orlowe@example.com");
        await Expect(page.Locator("#goes-to")).ToContainTextAsync("as the customer's words");
        await page.LookAsync("paste-answer");
        await page.Keyboard.PressAsync("Control+Enter");
        await page.WaitForURLAsync($"**/desk/orders/{number}");
        await Expect(page.Locator("#history")).ToContainTextAsync($"Wrote an e-mail: Re: Order {number}");
        await Expect(page.Locator("#wrote .words")).ToHaveTextAsync("It is the ridgetop");
        await page.LookAsync("wrote");
        await page.OpenAsync("/desk");
        await Expect(page.Locator("#inbox tbody tr").First).ToContainTextAsync("wrote");
        await page.LookAsync("wrote-desk");
        await page.ClickAsync($"#inbox a.order >> text={number}");
        await page.ClickAsync("#seen");
        await Expect(page.Locator("#wrote")).ToHaveCountAsync(0);
        await page.OpenAsync("/desk/mail");
        await Expect(page.Locator("#incoming li", new() { HasTextRegex = new Regex("orlowe", RegexOptions.IgnoreCase) })).ToHaveCountAsync(2);
        await page.LookAsync("mail-in");
    }

    [Fact]
    public async Task A_mail_as_long_as_the_field_takes_is_pasted_whole()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/mail/paste");
        var longest = int.Parse((await page.GetAttributeAsync("#text", "maxlength"))!, CultureInfo.InvariantCulture);
        const string head = "From: Lorne Avery <lorne.avery@example.com>\nSubject: long story\n\n", end = " the last word";
        await page.FillAsync("#text", $"{head}{new string('a', longest - head.Length - end.Length)}{end}");
        await Expect(page.Locator("#subject")).ToHaveValueAsync("long story");
        await Expect(page.Locator("#text")).ToHaveValueAsync(new Regex($"{end}$"));
        await page.ClickAsync("#take");
        await page.WaitForURLAsync("**/desk/orders/C*");
        await Expect(page.Locator("#mails")).ToContainTextAsync("long story");
    }
}
