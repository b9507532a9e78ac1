using Bunit;
using GrindShop.Shop.Allocating;
using GrindShop.Shop.Buying;
using GrindShop.Web.Office;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;

namespace GrindShop.Web.Tests.Office;

/// <summary>A delivery on a purchase order becomes a lot that can be opened and labelled, and names who has waited for it.</summary>
public sealed class DeliveryTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task What_came_in_has_its_lot_its_label_and_those_who_waited_for_it()
    {
        var piece = Assert.Single(await shop.Get<BatchAllocation>().WaitingAsync());
        var part = piece.Ranked.First(blank => blank.Option.Fit.Usable).Option.Part;
        var number = await SentAsync(part.Supplier.Code, part.PartNumber, part.Cost);
        await using var browser = shop.Browser("Hollis", Policies.Office, Policies.Desk);
        var page = browser.Render<BuyingOrderPage>(parameters => parameters.Add(page => page.Number, number));
        page.WaitForState(() => page.FindAll("#receive").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#receive-place").ChangeAsync("B1-4"));

        await page.InvokeAsync(() => page.Find("#receive").ClickAsync());

        page.WaitForState(() => page.FindAll("#waiting-for li").Count > 0, Patience);
        var lot = page.Find("#lot-number").TextContent;
        Assert.Equal($"/papers/label/{lot}.pdf", page.Find("#label").GetAttribute("href"));
        Assert.Equal($"/lots/{lot}", page.Find("#lines .lot a").GetAttribute("href"));
        Assert.Contains($"/desk/orders/{piece.Order.Number}", page.Find("#waiting-for").InnerHtml, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#receive"));
    }

    private async Task<string> SentAsync(string vendor, string part, decimal cost)
    {
        var purchasing = shop.Get<Purchasing>();
        var draft = (await purchasing.DraftAsync(vendor, new Dictionary<string, PurchaseWish>(), "delivery", "By hand.", "Hollis")).Value!;
        var wanted = await purchasing.WantAsync(draft.Number, draft.Version, part, new PurchaseWish(40, cost, 0, DateOnly.FromDateTime(DateTime.UtcNow).AddDays(40), "A test of the counter."), "Hollis");
        Assert.True((await purchasing.SendAsync(draft.Number, wanted.Value!.Version, "Hollis")).Succeeded);
        return draft.Number;
    }
}
