using Bunit;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Desk;

public sealed class InboxTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Open_orders_are_listed_and_found_while_typing()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser);
        Assert.Equal([StaffShop.InWork, StaffShop.Quoted, StaffShop.Accepted], Numbers(page).Take(3));
        Assert.DoesNotContain(StaffShop.Shipped, Numbers(page));
        await page.Find("#find").InputAsync("c1004");
        page.WaitForState(() => page.FindAll("#results a.order").Count > 0, Patience);
        Assert.Equal(StaffShop.Accepted, page.Find("#results a.order").TextContent);
        Assert.Empty(Numbers(page));
        await page.Find("#find").InputAsync("no such thing");
        page.WaitForState(() => page.FindAll("#empty").Count > 0, Patience);
        Assert.Contains("no such thing", page.Find("#empty").TextContent);
        await page.Find("#find").InputAsync("");
        Assert.NotEmpty(Numbers(page));
    }

    [Fact]
    public async Task A_change_by_somebody_else_appears_by_itself()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var listener = browser.Services.GetRequiredService<ChangeListener>();
        await listener.StartAsync(default);
        await shop.IsListeningAsync();
        var page = Open(browser);
        var desk = shop.Get<OrderDesk>();
        var order = (await desk.FindAsync(StaffShop.New))!;
        Assert.True((await desk.DeclineAsync(order.Number, order.Version, "no such gear", "Piers Oakham")).Succeeded);
        page.WaitForState(() => !Numbers(page).Contains(StaffShop.New), Patience);
        await listener.StopAsync(default);
    }

    private static List<string> Numbers(IRenderedComponent<Inbox> page) => [.. page.FindAll("#inbox a.order").Select(link => link.TextContent)];

    private static IRenderedComponent<Inbox> Open(BunitContext browser)
    {
        var page = browser.Render<Inbox>();
        page.WaitForState(() => page.FindAll("#inbox").Count == 1, Patience);
        return page;
    }
}
