using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The job from end to end as its people do it: a customer's specification becomes a shipped cam.</summary>
public sealed class NineStepsTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly string[] Hardened = ["grind", "finish", "inspect", "ship"];
    private static readonly string[] Soft = ["rough grind", "send to heat treat", "receive from heat treat", "straighten", "finish grind", "finish", "inspect", "ship"];

    [Fact]
    public Task From_a_hardened_blank() => ShipsAsync(new Wish("RV8-R", "HydraulicRoller", ".335", "222", "272", "112", "108", "Iron"), blank: null, Hardened);

    [Fact]
    public Task From_a_soft_blank_by_way_of_the_heat_treater() => ShipsAsync(new Wish("LI5-H", "SolidRoller", ".315", "244", "278", "109", "108", null), "LI5H-862-05", Soft);

    private sealed record Wish(string Family, string Lifter, string Lift, string At050, string Advertised, string Lsa, string Icl, string? Gear);

    private async Task ShipsAsync(Wish wish, string? blank, string[] route)
    {
        // 1, 2: the customer describes the cam and is answered while typing.
        var customer = await browser.VisitAsync();
        await customer.OpenAsync("/spec");
        await FillAsync(customer, wish);
        await Expect(customer.Locator("#answer")).ToContainTextAsync("stock", new() { IgnoreCase = true });
        await Expect(customer.Locator("#answer svg[role=img]").First).ToBeVisibleAsync();

        // 3: sending gives a tracking address.
        await customer.FillAsync("#contact-name", "Wanda Ferris");
        await customer.FillAsync("#contact-email", "wanda.ferris@example.org");
        await customer.ClickAsync("#send");
        await customer.WaitForURLAsync("**/track/*");
        var tracking = new Uri(customer.Url).AbsolutePath;
        await Expect(customer.Locator("main")).ToContainTextAsync("We have it");

        // 4: the desk finds it, prices it and accepts it with a promised date.
        var desk = await browser.VisitAsync(Person.Desk);
        await desk.OpenAsync("/desk");
        await desk.FillAsync("#find", "Wanda Ferris");
        await desk.Locator("#results a", new() { HasTextRegex = new("C\\d+") }).First.ClickAsync();
        if (blank is not null)
            await desk.CheckAsync($"#blank-{blank}");
        await desk.ClickAsync("#quote");
        await desk.ClickAsync("#accept");

        // 5: a real blank is taken, the job is open with the route of its blank.
        await desk.ClickAsync("#start");
        var number = new Uri(desk.Url).Segments[^1];
        var code = "J" + number[1..];
        await Expect(desk.Locator("#traveler")).ToBeVisibleAsync();

        // 6: the traveler.
        var traveler = await desk.PaperAsync($"/papers/traveler/{code}.pdf");
        foreach (var expected in new[] { code, "Wanda Ferris", "Lot", "Base circle" })
            Assert.Contains(expected, traveler, StringComparison.OrdinalIgnoreCase);
        Assert.All(route, stage => Assert.Contains(stage, traveler, StringComparison.OrdinalIgnoreCase));

        // 7: the floor types the code and does each step; a step is one row of history.
        var floor = await browser.VisitAsync(Person.Floor, 1024, 768);
        await floor.OpenAsync("/floor");
        await floor.FillAsync("#scan", code.ToLowerInvariant());
        await floor.PressAsync("#scan", "Enter");
        foreach (var stage in route)
        {
            await Expect(floor.Locator("#done")).ToHaveTextAsync($"Done: {stage}");
            await floor.ClickAsync("#done");
        }
        await Expect(floor.Locator("#step-title")).ToHaveTextAsync("Shipped");

        // 8: the spec card, and the customer sees every stage without reloading.
        var card = await floor.PaperAsync(await floor.Locator("#spec-card").GetAttributeAsync("href") ?? "");
        Assert.Contains("Wanda Ferris", card);
        Assert.Contains(wish.Lift.TrimStart('0'), card);
        await Expect(customer.Locator("main")).ToContainTextAsync("has left the shop");
        await Expect(customer.Locator("ol.way li.done")).ToHaveCountAsync(4 + route.Length);
        await Expect(customer.Locator("ol.way li:not(.done)")).ToHaveCountAsync(0);
        Assert.Contains("Wanda Ferris", await customer.PaperAsync($"/papers/spec-card/{tracking.Split('/')[^1]}.pdf"));

        // 9: it has left the owner's backlog.
        var owner = await browser.VisitAsync(Person.Owner);
        await owner.OpenAsync("/office");
        await Expect(owner.Locator("#backlog")).ToBeVisibleAsync();
        await Expect(owner.Locator("#backlog")).Not.ToContainTextAsync(code);
    }

    private static async Task FillAsync(IPage page, Wish wish)
    {
        await page.SelectOptionAsync("#engine-family", wish.Family);
        await page.SelectOptionAsync("#lifter", wish.Lifter);
        await page.FillAsync("#intake-lobe-lift", wish.Lift);
        await page.FillAsync("#intake-duration-050", wish.At050);
        await page.FillAsync("#intake-advertised", wish.Advertised);
        await page.FillAsync("#lsa", wish.Lsa);
        await page.FillAsync("#icl", wish.Icl);
        if (wish.Gear is not null)
            await page.SelectOptionAsync("#distributor-gear", wish.Gear);
    }
}
