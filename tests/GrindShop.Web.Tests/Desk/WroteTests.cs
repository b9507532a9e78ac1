using Bunit;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;

namespace GrindShop.Web.Tests.Desk;

/// <summary>What a customer wrote about an order that nobody waits with, from the inbox to the button that says it was read.</summary>
public sealed class WroteTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Mail_about_a_shipped_order_is_marked_in_the_inbox_and_read_on_its_page()
    {
        var order = (await shop.Get<OrderDesk>().FindAsync(StaffShop.Shipped))!;
        var mail = await TakeAsync(order.Contact.Email!, "It ticks at idle.\n> earlier words");
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var inbox = browser.Render<Inbox>();
        inbox.WaitForState(() => inbox.FindAll("#inbox").Count == 1, Patience);
        Assert.Equal(StaffShop.Shipped, inbox.Find("#inbox a.order").TextContent);
        Assert.Equal("wrote just now", inbox.Find("#inbox .wrote").TextContent);
        Assert.Contains("Shipped 1", inbox.Find("#states").TextContent, StringComparison.Ordinal);

        var page = browser.Render<OrderPage>(given => given.Add(it => it.Number, StaffShop.Shipped));
        page.WaitForState(() => page.FindAll("#seen").Count == 1, Patience);
        Assert.Equal("It ticks at idle.", page.Find($"#words-{mail.Id}").TextContent);
        await page.InvokeAsync(() => page.Find("#seen").ClickAsync());

        page.WaitForState(() => page.FindAll("#wrote").Count == 0, Patience);
        Assert.Equal((OrderEventKind.Seen, "Imka Tolland"), (await shop.Get<OrderDesk>().FindAsync(StaffShop.Shipped))!.History[^1] is var line ? (line.Kind, line.By) : default);
        Assert.DoesNotContain(await shop.Get<InboxBook>().OpenAsync(), row => row.Number == StaffShop.Shipped);
    }

    [Fact]
    public async Task Link_to_the_mails_counts_those_that_need_a_person()
    {
        await TakeAsync("mech@example.net", "It is 1.6");
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);

        var inbox = browser.Render<Inbox>();
        inbox.WaitForState(() => inbox.FindAll("#inbox").Count == 1, Patience);

        Assert.Equal(("Mail, 1 needs you", "Mail 1"), (inbox.Find("#mail").GetAttribute("aria-label"), inbox.Find("#mail").TextContent));
    }

    [Fact]
    public void Stuck_mail_to_a_vendor_is_asked_about_with_the_vendor()
    {
        var mail = OutgoingMail.ToVendor("key", "P1", "vendor@example.com", new Letter("Order P1", "words"), "example.com", DateTimeOffset.UnixEpoch);
        typeof(OutgoingMail).GetProperty(nameof(OutgoingMail.State))!.SetValue(mail, MailState.Unsure);

        Assert.Contains("Ask the vendor", mail.Advice("soon"), StringComparison.Ordinal);
    }

    private Task<IncomingMail> TakeAsync(string from, string text) => shop.Get<MailIntake>().TakeAsync(
        new ArrivedMail(Guid.NewGuid().ToString(), new ReadMail { From = from, FromName = "", Subject = $"Re: Order {StaffShop.Shipped}", Text = text }));
}
