using Bunit;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Desk;

public sealed class FindPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Closed_order_is_found_from_the_address_with_its_hit_marked()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        browser.Services.GetRequiredService<NavigationManager>().NavigateTo($"/desk/find?q={StaffShop.Shipped}");

        var page = browser.Render<FindPage>();
        page.WaitForState(() => page.FindAll("#results a.order").Count > 0, Patience);

        Assert.Equal(StaffShop.Shipped, page.Find("#results a.order").TextContent);
        Assert.Equal(StaffShop.Shipped, page.Find("#results mark").TextContent);
        Assert.StartsWith("order", page.Find("#results ul li").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Enter_opens_the_best_order_of_what_stands_in_the_box_now()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<FindPage>();
        page.WaitForState(() => page.FindAll("#find").Count == 1, Patience);

        var typed = page.Find("#find").InputAsync(StaffShop.Quoted.ToLowerInvariant());
        await page.Find("#find").KeyDownAsync(new KeyboardEventArgs { Key = "Enter" });

        Assert.EndsWith($"/desk/orders/{StaffShop.Quoted}", browser.Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        await typed;
    }

    [Fact]
    public async Task Nothing_found_says_what_to_do()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<FindPage>();
        page.WaitForState(() => page.FindAll("#how").Count == 1, Patience);

        await page.InvokeAsync(() => page.Find("#find").InputAsync("no such thing at all"));

        page.WaitForState(() => page.FindAll("#empty").Count == 1, Patience);
        Assert.Contains("another spelling", page.Find("#empty").TextContent, StringComparison.Ordinal);
    }
}
