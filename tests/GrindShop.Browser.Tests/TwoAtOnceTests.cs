using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>Two people on one order or one job, in two browsers.</summary>
public sealed class TwoAtOnceTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task The_second_desk_person_is_told_what_changed_and_keeps_what_was_typed()
    {
        var (one, two) = (await browser.VisitAsync(Person.Desk), await browser.VisitAsync(Person.OtherDesk));
        foreach (var page in new[] { one, two })
        {
            await page.OpenAsync("/desk/orders/C1200");
            await page.ClickAsync("#correct");
        }
        await one.FillAsync("#lsa", "111");
        await one.FillAsync("#correct-why", "asked on the phone");
        await two.FillAsync("#notes", "wants it before the weekend");
        await one.ClickAsync("#save-spec");
        await Expect(one.Locator("#history")).ToContainTextAsync("asked on the phone");

        await two.ClickAsync("#save-spec");

        await Expect(two.Locator("main")).ToContainTextAsync("asked on the phone");
        await Expect(two.Locator("#notes")).ToHaveValueAsync("wants it before the weekend");
    }

    [Fact]
    public async Task What_became_of_an_act_is_shown_to_who_waits_and_not_to_who_types_elsewhere()
    {
        var page = await browser.VisitAsync(Person.Desk);
        await page.OpenAsync("/desk/orders/C1201");
        await page.FocusAsync("#decline-why");
        await page.EvaluateAsync("shop.show(document.querySelector('.notice'))");
        await Expect(page.Locator("#decline-why")).ToBeFocusedAsync();

        await page.FocusAsync("#decline");
        await page.EvaluateAsync("shop.show(document.querySelector('.notice'))");
        await Expect(page.Locator(".notice").First).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Two_tablets_at_one_step_leave_one_line_of_history()
    {
        var (one, two) = (await browser.VisitAsync(Person.Floor, 1024, 768), await browser.VisitAsync(Person.Floor, 1024, 768));
        foreach (var page in new[] { one, two })
            await page.OpenAsync("/floor/jobs/J1180");
        await Expect(one.Locator("#done")).ToHaveTextAsync("Done: grind");
        await Task.WhenAll(one.ClickAsync("#done"), two.DispatchEventAsync("#done", "click"));

        await Expect(one.Locator("#done")).ToHaveTextAsync("Done: finish");
        await Expect(two.Locator("#done")).ToHaveTextAsync("Done: finish");
        await one.OpenAsync("/floor/jobs/J1180");
        await Expect(one.Locator("#history li")).ToHaveCountAsync(2);
    }
}
