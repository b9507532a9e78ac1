using Bunit;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;
using GrindShop.Web.Office;
using GrindShop.Web.Security;

namespace GrindShop.Web.Tests.Desk;

/// <summary>Letters are read before they go out: to customers and to vendors.</summary>
public sealed class LetterLookTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Cancelling_shows_its_letter_first_and_tells_the_words_for_the_customer()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<OrderPage>(given => given.Add(it => it.Number, StaffShop.InWork));
        page.WaitForState(() => page.FindAll("#cancel-order").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#cancel-letter").ClickAsync());
        page.WaitForState(() => page.FindAll("#cancel-title ~ .problem").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#cancel-why").ChangeAsync("Sold the car."));
        await page.InvokeAsync(() => page.Find("#cancel-told").ChangeAsync("As agreed on the phone."));
        await page.InvokeAsync(() => page.Find("#cancel-letter").ClickAsync());
        page.WaitForState(() => page.FindAll("#cancel-letter-text").Count == 1, Patience);
        Assert.Contains("As agreed on the phone.", page.Find("#cancel-letter-text").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Sold the car", page.Find("#cancel-letter-text").TextContent, StringComparison.Ordinal);

        await page.InvokeAsync(() => page.Find("#cancel-order").ClickAsync());
        page.WaitForState(() => page.Find("#state").TextContent == "cancelled", Patience);

        var order = (await shop.Get<OrderDesk>().FindAsync(StaffShop.InWork))!;
        Assert.Contains("The customer is told: As agreed on the phone.", page.Find("#history").TextContent, StringComparison.Ordinal);
        await using var customer = shop.Browser("nobody");
        var settings = (await shop.Get<GrindShop.Shop.Feasibility.Catalog>().ContentAsync()).Rules.Settings;
        var track = customer.Render<GrindShop.Web.Public.TrackedOrder>(given => given.Add(it => it.Order, order).Add(it => it.Jobs, []).Add(it => it.Settings, settings));
        Assert.Contains("As agreed on the phone.", track.Find("#cancel-told").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Sold the car", track.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Purchase_order_is_mailed_and_says_what_became_of_it()
    {
        var number = (await shop.Get<Purchasing>().ListAsync(false)).First(order => order.IsOpen).Number;
        await using var browser = shop.Browser("Hollis Verne", Policies.Office);
        var page = browser.Render<BuyingOrderPage>(given => given.Add(it => it.Number, number));
        page.WaitForState(() => page.FindAll("#save-vendor-email").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#vendor-email").ChangeAsync("orders@vendor.example.com"));
        await page.InvokeAsync(() => page.Find("#save-vendor-email").ClickAsync());
        page.WaitForState(() => page.FindAll("#mail-vendor.go").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#vendor-letter").ClickAsync());
        page.WaitForState(() => page.FindAll("#vendor-letter-text").Count == 1, Patience);
        Assert.Empty(await shop.Get<Outbox>().OfPurchaseAsync(number));

        await page.InvokeAsync(() => page.Find("#mail-vendor").ClickAsync());
        page.WaitForState(() => page.FindAll("#vendor-mails li").Count == 1, Patience);

        Assert.Equal("Mail it again", page.Find("#mail-vendor").TextContent);
        Assert.Contains("Mailed to orders@vendor.example.com.", page.Find("#history").TextContent, StringComparison.Ordinal);
    }
}
