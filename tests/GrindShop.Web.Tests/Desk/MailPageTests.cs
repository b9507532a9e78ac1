using System.Text;
using Bunit;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;
using GrindShop.Web.Security;
using MailKit.Security;

namespace GrindShop.Web.Tests.Desk;

public sealed class MailPageTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Mail_is_shown_as_text_with_its_files_and_its_order()
    {
        var mail = await TakeAsync("""
            From: Una <una@example.com>
            Subject: <b>bold</b>
            MIME-Version: 1.0
            Content-Type: multipart/mixed; boundary=b

            --b
            Content-Type: text/plain

            <script>alert(1)</script> 230/236
            --b
            Content-Type: text/csv
            Content-Disposition: attachment; filename="lobe.csv"

            0,0.1
            --b--
            """);
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<MailPage>();
        page.WaitForState(() => page.FindAll($"#in-{mail.Id}").Count == 1, Patience);

        var line = page.Find($"#in-{mail.Id}");
        Assert.Contains("<script>alert(1)</script> 230/236", line.QuerySelector("pre")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("script, b"));
        Assert.Contains("lobe.csv (5 bytes)", line.TextContent, StringComparison.Ordinal);
        Assert.Contains($"/desk/orders/{mail.OrderNumber}", line.InnerHtml, StringComparison.Ordinal);
        Assert.Equal($"/desk/mail/{mail.Id}.eml", line.QuerySelector("a[download]")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Mail_from_another_address_counts_once_somebody_says_so()
    {
        var mail = await TakeAsync($"From: mech@example.net\nSubject: Re: Order {StaffShop.New}\n\nIt is 1.6");
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var page = browser.Render<MailPage>();
        page.WaitForState(() => page.FindAll($"#theirs-{mail.Id}").Count == 1, Patience);
        Assert.Contains("from another address", page.Find($"#in-{mail.Id}").TextContent, StringComparison.Ordinal);

        await page.InvokeAsync(() => page.Find($"#theirs-{mail.Id}").ClickAsync());

        Assert.Equal((MailFate.Added, "Imka Tolland"), (await shop.Get<MailTray>().OfOrderAsync(StaffShop.New))[^1] is var now ? (now.Fate, now.SettledBy) : default);
        Assert.Contains((await shop.Get<OrderDesk>().FindAsync(StaffShop.New))!.History, line => line.What.StartsWith("Wrote an e-mail: Re: Order", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Mailbox_says_when_it_was_read_and_why_not()
    {
        await using var browser = shop.Browser("Imka Tolland", Policies.Desk);
        var content = await shop.Get<Catalog>().ContentAsync();
        var settings = new MailSettings { Imap = new MailServer("mail.example.com", 993, SecureSocketOptions.SslOnConnect, "desk", "secret") };
        var facts = browser.Render<MailboxFacts>(given => given.Add(it => it.Settings, settings).Add(it => it.Mark, new MailboxMark("x")).Add(it => it.Shop, content.Rules.Settings));

        Assert.Equal("The mailbox at mail.example.com:993 has not been read yet.", facts.Find("#mailbox").TextContent);
        Assert.DoesNotContain("secret", facts.Markup, StringComparison.Ordinal);
    }

    private Task<IncomingMail> TakeAsync(string text) => shop.Get<MailIntake>().TakeAsync(MailReader.Read(Guid.NewGuid().ToString(), Encoding.UTF8.GetBytes(text)));
}
