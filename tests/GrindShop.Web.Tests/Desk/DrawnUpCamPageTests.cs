using Bunit;
using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;
using GrindShop.Web.Public;
using GrindShop.Web.Security;

namespace GrindShop.Web.Tests.Desk;

/// <summary>A further cam in an accepted order, from the order's page.</summary>
public sealed class DrawnUpCamPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task A_further_cam_is_drawn_up_and_then_agreed()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<OrderPage>(parts => parts.Add(order => order.Number, StaffShop.Accepted));
        page.WaitForState(() => page.FindAll("#add-cam").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#add-cam").ClickAsync());
        page.WaitForState(() => page.FindAll("#cam-2[aria-pressed=true]").Count == 1, Patience);
        Assert.Contains("not agreed yet", page.Find("#cam-2").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#pieces"));
        Assert.DoesNotContain("cam 2", await TrackedAsync(), StringComparison.OrdinalIgnoreCase);

        await page.InvokeAsync(() => page.Find("#revise").ClickAsync());
        page.WaitForState(() => page.FindAll("#look").Count == 1, Patience);
        Assert.Equal(("Agree on cam 2", "1"), (page.Find("#spec-title").TextContent, page.Find("#revise-pieces").GetAttribute("value")));
        foreach (var (field, value) in new[] { ("price", "200"), ("price-why", "a second cam"), ("why", "He wants a spare.") })
            await page.InvokeAsync(() => page.Find($"#revise-{field}").ChangeAsync(value));
        await page.InvokeAsync(() => page.Find("#look").ClickAsync());
        page.WaitForState(() => page.FindAll("#effect").Count == 1, Patience);
        Assert.Contains("1 of them waits for a blank", page.Find("#effect").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.Find("#agree").ClickAsync());
        page.WaitForState(() => page.FindAll("#agree").Count == 0, Patience);

        Assert.Equal(1, (await OrderAsync()).Cam(2)!.Quantity);
        Assert.DoesNotContain("not agreed yet", page.Find("#cam-2").TextContent, StringComparison.Ordinal);
        Assert.Contains("cam 2", await TrackedAsync(), StringComparison.OrdinalIgnoreCase);
    }

    private async Task<Order> OrderAsync() => (await shop.Get<OrderDesk>().FindAsync(StaffShop.Accepted))!;

    /// <summary>What the customer sees.</summary>
    private async Task<string> TrackedAsync()
    {
        await using var browser = shop.Browser("nobody");
        var code = (await OrderAsync()).TrackingCode;
        var page = browser.Render<Track>(parts => parts.Add(track => track.Code, code));
        page.WaitForState(() => page.FindAll(".way li").Count > 0, Patience);
        return page.Markup;
    }
}
