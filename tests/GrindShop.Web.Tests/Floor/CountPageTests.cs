using Bunit;
using Bunit.TestDoubles;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using GrindShop.Web.Floor;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Floor;

public sealed class CountPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task A_blank_taken_while_one_counts_is_told_although_the_page_was_read_again_for_another_reason()
    {
        var lot = (await shop.Get<Receiving>().ReceiveAsync(new Receipt { PartNumber = "RV8R-516-08", Quantity = 5, Location = "A1", Key = "count" }, "Desk")).Value!;
        await using var browser = shop.Browser("Rolf Anstey", Policies.Floor);
        browser.Services.GetRequiredService<NavigationManager>().NavigateTo($"/floor/count?lot={lot.LotNumber}");
        var page = browser.Render<CountPage>();
        page.WaitForState(() => page.FindAll("#compare").Count == 1, Patience);
        await KeyAsync(page, "5");

        await shop.Get<StockRoom>().ScrapAsync(new(lot.LotNumber, null, "Piers Oakham", "taken"), 1, "cracked");
        var listener = browser.Services.GetRequiredService<ChangeListener>();
        await listener.StartAsync(default); // tells every open page to read again
        page.WaitForState(() => page.FindAll("#refusal").Count == 1, Patience);
        await listener.StopAsync(default);

        Assert.Contains("Piers Oakham", page.Find("#refusal").TextContent, StringComparison.Ordinal);
        Assert.Equal("–", page.Find("#counted").TextContent);
        await KeyAsync(page, "4");
        await ClickAsync(page, "#compare");
        page.WaitForState(() => page.FindAll("#post").Count == 1, Patience);
        await ClickAsync(page, "#post");
        page.WaitForState(() => page.FindAll("#result").Count == 1, Patience);
        var read = (await shop.Get<StockRoom>().FindAsync(lot.LotNumber))!;
        Assert.Equal((4, StockMovementKind.Count, 0), (read.OnHand, read.Movements[^1].Kind, read.Movements[^1].OnHandChange));
    }

    private static Task KeyAsync(IRenderedComponent<CountPage> page, string key) => page.InvokeAsync(() => page.FindAll(".key").Single(button => button.TextContent == key).ClickAsync());

    private static Task ClickAsync(IRenderedComponent<CountPage> page, string button) => page.InvokeAsync(() => page.Find(button).ClickAsync());
}
