using Bunit;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;
using Microsoft.AspNetCore.Components;
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
        Assert.Contains(StaffShop.Shipped, page.Find("#results mark").TextContent, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Nothing_found_says_what_to_do()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<FindPage>();
        page.WaitForState(() => page.FindAll("#q").Count == 1, Patience);

        await page.Find("#q").InputAsync("no such thing at all");

        page.WaitForState(() => page.Find("#found").TextContent.Contains("another spelling", StringComparison.Ordinal), Patience);
    }
}
