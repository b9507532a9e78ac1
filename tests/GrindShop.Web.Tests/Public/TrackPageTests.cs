using System.Globalization;
using Bunit;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Public;
using GrindShop.Web.Tests.Desk;
using GrindShop.Web.Tests.Settings;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Public;

public sealed class TrackPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task A_shipped_order_shows_every_stage_and_its_spec_card_and_nobody_of_the_staff()
    {
        await using var browser = shop.Browser("nobody");
        var order = await shop.Get<OrderDesk>().FindAsync(StaffShop.Shipped);
        var page = Open(browser, order!.TrackingCode);
        Assert.All(page.FindAll(".way li"), step => Assert.Contains("done", step.ClassList));
        Assert.Equal($"/papers/spec-card/{order.TrackingCode}.pdf", page.Find("a.go").GetAttribute("href"));
        Assert.All(order.History.Select(line => line.By).Where(by => by != "customer").Distinct(), name => Assert.DoesNotContain(name, page.Markup));
    }

    [Fact]
    public async Task A_cam_in_work_has_one_step_that_is_now()
    {
        await using var browser = shop.Browser("nobody");
        var order = await shop.Get<OrderDesk>().FindAsync(StaffShop.InWork);
        var page = Open(browser, order!.TrackingCode);
        Assert.Single(page.FindAll(".way li[aria-current=step]"));
        Assert.Empty(page.FindAll("a.go"));
    }

    [Fact]
    public async Task A_decline_appears_on_the_open_page_with_its_reason()
    {
        await using var browser = shop.Browser("nobody");
        var listener = browser.Services.GetRequiredService<ChangeListener>();
        await listener.StartAsync(default);
        await shop.IsListeningAsync();
        var order = await FileAsync();
        var page = Open(browser, order.TrackingCode);
        await shop.Get<OrderDesk>().DeclineAsync(order.Number, order.Version, "No blank has the metal for it.", "Imka Tolland");
        page.WaitForState(() => page.Markup.Contains("No blank has the metal for it.", StringComparison.Ordinal), Patience);
        Assert.DoesNotContain("Imka Tolland", page.Markup);
        await listener.StopAsync(default);
    }

    [Fact]
    public async Task A_quote_that_was_made_days_ago_says_the_day_that_a_yes_of_today_is_promised_for()
    {
        await using var browser = shop.Browser("nobody");
        var order = await shop.Get<OrderDesk>().FindAsync(StaffShop.Quoted);
        await HoldBackAsync(order!.First.QuotedPartNumber!);
        var page = Open(browser, order.TrackingCode);
        page.WaitForState(() => page.FindAll("#accepted-today").Count == 1, Patience);
        var said = page.Find("#accepted-today").TextContent;

        await page.InvokeAsync(() => page.Find("#signs").ChangeAsync("Una Thornquist"));
        await page.InvokeAsync(() => page.Find("#agrees").ChangeAsync(true));
        await page.InvokeAsync(() => page.Find("#accept-quote").ClickAsync());
        page.WaitForState(() => page.FindAll("#accept-quote").Count == 0, Patience);

        var accepted = await shop.Get<OrderDesk>().FindAsync(StaffShop.Quoted);
        Assert.True(accepted!.PromisedOn > order.CurrentQuote!.ShipOn);
        Assert.Contains($"promised for {Day(accepted.PromisedOn)}. That is later than the {Day(order.CurrentQuote.ShipOn)} of the quote", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_no_of_the_customers_is_not_told_as_the_shops()
    {
        await using var browser = shop.Browser("nobody");
        var order = await FileAsync();
        Assert.Null((await shop.Get<OrderDesk>().TakeNoAsync(order.Number, order.Version, "Sold the boat.", "Imka Tolland")).Refusal);
        var page = Open(browser, order.TrackingCode);
        Assert.Contains("You said no to this order", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("cannot make", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("Imka Tolland", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unknown_code_is_answered_calmly()
    {
        await using var browser = shop.Browser("nobody");
        var page = browser.Render<Track>(parts => parts.Add(track => track.Code, "nope"));
        page.WaitForState(() => page.FindAll("h1").Count == 1, Patience);
        page.WaitForAssertion(() => Assert.Equal("No order has this code", page.Find("h1").TextContent), TimeSpan.FromSeconds(20));
        Assert.Single(page.FindAll("#tracking-code"));
    }

    private static string Day(DateOnly? day) => day!.Value.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    private async Task<Order> FileAsync() => (await shop.Get<SpecIntake>().SubmitAsync(Some.Enquiry, "customer")).Order!;

    /// <summary>Nothing of the part may be taken any more.</summary>
    private async Task HoldBackAsync(string part)
    {
        await using var db = await shop.Get<IDbContextFactory<ShopDb>>().CreateDbContextAsync();
        foreach (var lot in await db.BlankLots.Where(lot => lot.BlankPart.PartNumber == part && lot.QuarantineReason == null).ToListAsync())
            lot.Quarantine("Not to be counted on.", "Owner", DateTimeOffset.UtcNow);
        await db.SaveChangesAsync();
    }

    private static IRenderedComponent<Track> Open(BunitContext browser, string code)
    {
        var page = browser.Render<Track>(parts => parts.Add(track => track.Code, code));
        page.WaitForState(() => page.FindAll(".way li").Count > 0, Patience);
        return page;
    }
}
