using Bunit;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using GrindShop.Web.Office;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Office;

/// <summary>The map shows what can be had: a replaced part only while some of it are left.</summary>
public sealed class MapPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    /// <summary>In the demo the newer one replaces the older one.</summary>
    private const string Old = "SI6F-516-07", New = "SI6F-516-08";

    [Fact]
    public async Task A_replaced_part_goes_with_its_last_blank_and_full_rounds_are_named()
    {
        await using (var db = await shop.Get<IDbContextFactory<ShopDb>>().CreateDbContextAsync())
        {
            foreach (var lot in await db.WholeLots().Where(lot => lot.BlankPart.PartNumber == Old && lot.QuarantineReason == null).ToListAsync())
                Assert.True(lot.Quarantine("held back", "Owner", DateTimeOffset.UtcNow).Succeeded);
            await db.SaveChangesAsync();
        }
        await using var browser = shop.Browser("Petra Vane", Policies.Office);
        browser.Renderer.SetRendererInfo(new RendererInfo("Server", isInteractive: true));
        browser.Services.GetRequiredService<NavigationManager>().NavigateTo("/office/map?family=SI6-F");
        var page = browser.Render<MapPage>();
        page.WaitForState(() => page.FindAll("#blanks").Count == 1, TimeSpan.FromSeconds(60));

        Assert.Single(page.FindAll($"#blank-{New}"));
        Assert.Empty(page.FindAll($"#blank-{Old}"));
        Assert.Contains("A full-round blank has no region", page.Markup, StringComparison.Ordinal);
    }
}
