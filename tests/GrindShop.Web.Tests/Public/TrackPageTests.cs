using Bunit;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Public;
using GrindShop.Web.Tests.Desk;
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
        var order = await shop.Get<OrderDesk>().FindAsync(StaffShop.New);
        var page = Open(browser, order!.TrackingCode);
        await shop.Get<OrderDesk>().DeclineAsync(order.Number, order.Version, "No blank has the metal for it.", "Imka Tolland");
        page.WaitForState(() => page.Markup.Contains("No blank has the metal for it.", StringComparison.Ordinal), Patience);
        Assert.DoesNotContain("Imka Tolland", page.Markup);
        await listener.StopAsync(default);
    }

    [Fact]
    public async Task A_no_of_the_customers_is_not_told_as_the_shops()
    {
        await using var browser = shop.Browser("nobody");
        var order = await shop.Get<OrderDesk>().FindAsync(StaffShop.Quoted);
        Assert.Null((await shop.Get<OrderDesk>().TakeNoAsync(order!.Number, order.Version, "Sold the boat.", "Imka Tolland")).Refusal);
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

    private static IRenderedComponent<Track> Open(BunitContext browser, string code)
    {
        var page = browser.Render<Track>(parts => parts.Add(track => track.Code, code));
        page.WaitForState(() => page.FindAll(".way li").Count > 0, Patience);
        return page;
    }
}
