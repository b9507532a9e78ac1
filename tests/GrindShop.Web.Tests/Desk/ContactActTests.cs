using Bunit;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;
using GrindShop.Web.Public;
using GrindShop.Web.Security;

namespace GrindShop.Web.Tests.Desk;

/// <summary>The desk puts an address right, writes a message and takes a no, each from the order's page.</summary>
public sealed class ContactActTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Address_is_put_right_and_the_message_goes_there()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser, StaffShop.Accepted);
        await page.InvokeAsync(() => page.Find("#contact-email").ChangeAsync("right@heard.example"));
        await page.InvokeAsync(() => page.Find("#save-contact").ClickAsync());
        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);
        Assert.Equal("right@heard.example", (await FindAsync(StaffShop.Accepted)).Contact.Email);

        await page.InvokeAsync(() => page.Find("#message").ChangeAsync("Your old cam is at the counter."));
        await page.InvokeAsync(() => page.Find("#message-letter").ClickAsync());
        page.WaitForState(() => page.FindAll("#message-letter-text").Count == 1, Patience);
        Assert.Contains("to right@heard.example", page.Find("#message-letter-text").TextContent, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.Find("#send-message").ClickAsync());
        page.WaitForState(() => page.Find("#said").TextContent.Contains("on its way", StringComparison.Ordinal), Patience);

        var mail = (await shop.Get<Outbox>().OfOrderAsync(StaffShop.Accepted))[^1];
        Assert.Equal("right@heard.example", mail.To);
        Assert.Contains("Your old cam is at the counter.", mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Contact_that_two_correct_at_once_keeps_what_each_typed()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = Open(browser, StaffShop.Quoted);
        await page.InvokeAsync(() => page.Find("#contact-phone").ChangeAsync("555 0142 77"));
        var order = await FindAsync(StaffShop.Quoted);
        Assert.Null((await shop.Get<OrderDesk>().CorrectContactAsync(order.Number, order.Version, order.Contact with { Email = "right@heard.example" }, "Piers Oakham")).Refusal);

        await page.InvokeAsync(() => page.Find("#save-contact").ClickAsync());
        page.WaitForState(() => page.FindAll("#load-newer").Count == 1, Patience);
        await page.InvokeAsync(() => page.Find("#load-newer").ClickAsync());
        await page.InvokeAsync(() => page.Find("#save-contact").ClickAsync());
        page.WaitForState(() => page.FindAll("#load-newer").Count == 0, Patience);

        Assert.Equal(("right@heard.example", "555 0142 77"), (await FindAsync(StaffShop.Quoted)).Contact is var contact ? (contact.Email, contact.Phone) : default);
    }

    [Fact]
    public async Task Page_that_a_stranger_may_know_gets_another_link()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var old = (await FindAsync(StaffShop.InWork)).TrackingCode;
        var page = Open(browser, StaffShop.InWork);
        await page.InvokeAsync(() => page.Find("#new-page").ChangeAsync(true));
        await page.InvokeAsync(() => page.Find("#save-contact").ClickAsync());
        page.WaitForState(() => page.FindAll("#said").Count == 1, Patience);

        var now = (await FindAsync(StaffShop.InWork)).TrackingCode;
        Assert.NotEqual(old, now);
        Assert.Contains($"/track/{now}", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain(old, page.Markup, StringComparison.Ordinal);
        await using var visitor = shop.Browser("nobody");
        var gone = visitor.Render<Track>(parts => parts.Add(track => track.Code, old));
        gone.WaitForAssertion(() => Assert.Equal("No order has this code", gone.Find("h1").TextContent), Patience);
    }

    [Fact]
    public async Task No_of_the_customer_is_taken_without_a_letter()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var mails = (await shop.Get<Outbox>().OfOrderAsync(StaffShop.New)).Count;
        var page = Open(browser, StaffShop.New);
        await page.InvokeAsync(() => page.Find("#said-no").ClickAsync());
        page.WaitForState(() => page.FindAll("#said-no").Count == 0, Patience);

        Assert.True((await FindAsync(StaffShop.New)).IsDeclinedByCustomer);
        Assert.Equal(mails, (await shop.Get<Outbox>().OfOrderAsync(StaffShop.New)).Count);
    }

    private async Task<Order> FindAsync(string number) => (await shop.Get<OrderDesk>().FindAsync(number))!;

    private static IRenderedComponent<OrderPage> Open(BunitContext browser, string number)
    {
        var page = browser.Render<OrderPage>(parameters => parameters.Add(order => order.Number, number));
        page.WaitForState(() => page.FindAll("#next-title").Count == 1, Patience);
        return page;
    }
}
