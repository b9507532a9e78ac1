using Bunit;
using GrindShop.Web.Office;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Office;

public sealed class BacklogPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task A_number_shows_its_own_rows()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Office);
        var page = browser.Render<BacklogPage>();
        page.WaitForState(() => page.FindAll("#backlog").Count == 1, Patience);
        Assert.Equal([StaffShop.Accepted, StaffShop.InWork], Orders(page).Order().Reverse());

        browser.Services.GetRequiredService<NavigationManager>().NavigateTo("/office?show=blank");
        page.WaitForState(() => Orders(page).Count == 1, Patience);
        Assert.Equal([StaffShop.Accepted], Orders(page));
        Assert.StartsWith("1", page.Find("#number-blank").TextContent);
    }

    [Fact]
    public async Task The_drawing_says_in_words_what_it_shows()
    {
        await using var browser = shop.Browser("Hollis Verne", Policies.Office);
        var page = browser.Render<BacklogPage>();
        page.WaitForState(() => page.FindAll("#bars-text").Count == 1, Patience);
        Assert.Equal("Waiting for a blank: 1, 0 late; Grind: 1, 0 late", page.Find("#bars-text").TextContent);
    }

    private static List<string> Orders(IRenderedComponent<BacklogPage> page) => [.. page.FindAll("#backlog tbody th").Select(cell => cell.TextContent)];
}
