using System.Text;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Mail;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Npgsql;

namespace GrindShop.Shop.Tests.Buying;

/// <summary>A purchase order goes to its vendor by mail, once for each time somebody says so.</summary>
public sealed class VendorMailTests : IAsyncLifetime
{
    private readonly MailHost _host = new();
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    private Purchasing Purchasing => _shop.Purchasing;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        await _host.StartAsync();
        _shop = new TestShop(_database, "one", services => services
            .AddSingleton<IMailCarrier>(new SmtpCarrier(_host.Server))
            .AddSingleton<PrintPapers>((paper, number, _) => Task.FromResult<IReadOnlyList<PrintedPaper>>([new PrintedPaper($"{number}.pdf", Encoding.ASCII.GetBytes(paper))])));
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _host.DisposeAsync();
        await _database.DisposeAsync();
    }

    private const string To = "orders@vendor.example.com";

    [Fact]
    public async Task It_goes_out_with_its_paper_and_a_repeated_click_sends_nothing()
    {
        var order = await AddressedAsync();

        Assert.True((await Purchasing.MailAsync(order.Number, order.Version, To, "Owner")).Succeeded);
        Assert.Equal("stale", (await Purchasing.MailAsync(order.Number, order.Version, To, "Owner")).Refusal!.Code);
        await _shop.Postman.SendDueAsync();
        await _shop.Postman.SendDueAsync();

        var message = Assert.Single(_host.Taken);
        Assert.Equal((To, $"{order.Number}.pdf"), (Assert.Single(message.To.Mailboxes).Address, Assert.Single(message.Attachments).ContentDisposition!.FileName));
        Assert.Contains(order.Lines[0].BlankPart.PartNumber, message.TextBody, StringComparison.Ordinal);
        Assert.All(order.Lines, line => Assert.Contains($"{line.BlankPart.PartNumber}, your number {order.VendorsNumber(line)}, expected", message.TextBody, StringComparison.Ordinal));
        Assert.All(order.Lines, line => Assert.NotEmpty(order.VendorsNumber(line)));
        Assert.Equal((MailState.Sent, order.Number, null), Assert.Single(await _shop.Outbox.OfPurchaseAsync(order.Number)) is var mail ? (mail.State, mail.PurchaseNumber!, mail.OrderNumber) : default);
    }

    /// <summary>The demo's part has another usual supplier, which calls it something else.</summary>
    [Fact]
    public async Task A_vendor_that_is_not_the_usual_one_reads_its_own_number()
    {
        var draft = await Purchasing.DraftAsync("TURNSTILE", new Dictionary<string, PurchaseWish> { ["RV8R-516-08"] = new(6, 166.5m, 0, DateOnly.FromDateTime(TestShop.Now.UtcDateTime).AddDays(60)) }, "other", "By hand.", "Owner");

        var letter = (await Purchasing.LetterAsync(draft.Value!.Number)).Value!;

        Assert.Contains("6 blanks RV8R-516-08, your number TS-5183, expected", letter.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_decided_on_another_address_is_not_mailed()
    {
        var (order, other) = (await AddressedAsync(), await OpenAsync());
        Assert.Equal(order.Vendor.Code, other.Vendor.Code);
        await Purchasing.WriteToAsync(other.Number, other.Version, "elsewhere@vendor.example.com", "Somebody Else");

        var refusal = (await Purchasing.MailAsync(order.Number, order.Version, To, "Owner")).Refusal!;

        Assert.True(refusal.IsStale);
        Assert.Contains("elsewhere@vendor.example.com", refusal.Reason, StringComparison.Ordinal);
        Assert.Empty(await _shop.Outbox.OfPurchaseAsync(order.Number));
    }

    [Fact]
    public async Task Five_clicks_at_once_send_one()
    {
        var order = await AddressedAsync();

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 5).Select(_ => Task.Run(() => Purchasing.MailAsync(order.Number, order.Version, To, "Owner"))));

        Assert.Single(outcomes, outcome => outcome.Succeeded);
        Assert.Single(await _shop.Outbox.OfPurchaseAsync(order.Number));
    }

    [Fact]
    public async Task Mailing_it_again_is_written_down_as_such()
    {
        var order = await AddressedAsync();
        await Purchasing.MailAsync(order.Number, order.Version, To, "Owner");
        order = await FindAsync(order.Number);

        Assert.True((await Purchasing.MailAsync(order.Number, order.Version, To, "Owner")).Succeeded);

        Assert.Equal(2, (await _shop.Outbox.OfPurchaseAsync(order.Number)).Count);
        Assert.Equal("Mailed again to orders@vendor.example.com.", (await FindAsync(order.Number)).History[^1].What);
    }

    [Fact]
    public async Task Without_an_address_or_with_a_wrong_one_nothing_is_mailed()
    {
        var order = await OpenAsync();
        Assert.Equal("badAddress", (await Purchasing.WriteToAsync(order.Number, order.Version, "a@example.com, b@example.com", "Owner")).Refusal!.Code);
        await Purchasing.WriteToAsync(order.Number, order.Version, " ", "Owner");
        order = await FindAsync(order.Number);

        Assert.Equal("noAddress", (await Purchasing.MailAsync(order.Number, order.Version, To, "Owner")).Refusal!.Code);
    }

    [Fact]
    public async Task A_vendors_answer_makes_no_order()
    {
        var order = await AddressedAsync();
        await Purchasing.MailAsync(order.Number, order.Version, To, "Owner");
        var sent = Assert.Single(await _shop.Outbox.OfPurchaseAsync(order.Number));

        var answer = await TakeAsync(SomeMail.Text("confirmed", "Other desk <other@vendor.example.net>", headers: $"In-Reply-To: <{sent.MessageId}>"));
        var news = await TakeAsync(SomeMail.Text("our new price list", "Vendor <Orders@Vendor.example.com>", id: "news@vendor.example.com"));

        Assert.Equal((MailFate.PutAside, $"It answers the mail about purchase order {order.Number}."), (answer.Fate, answer.Reason));
        Assert.Equal((MailFate.PutAside, $"It comes from the vendor {order.Vendor.Name}."), (news.Fate, news.Reason));
    }

    [Fact]
    public async Task Database_refuses_a_mail_about_nothing()
    {
        await using var db = _shop.Db();

        var refused = await Assert.ThrowsAsync<PostgresException>(() => db.Database.ExecuteSqlAsync($"""
            INSERT INTO outgoing_mails (event_key, "to", subject, text, papers, message_id, state, written_at, attempts, next_attempt_at)
            VALUES ('x', 'a@example.com', 's', 't', ARRAY[]::text[], 'x@example.com', 'Waiting', now(), 0, now())
            """));

        Assert.Equal("ck_outgoing_mails_about", refused.ConstraintName);
    }

    private Task<IncomingMail> TakeAsync(string text) => _shop.Of<MailIntake>().TakeAsync(MailReader.Read(Guid.NewGuid().ToString(), Encoding.UTF8.GetBytes(text)));

    private async Task<PurchaseOrder> OpenAsync() => (await Purchasing.ListAsync(false)).First(order => order.IsOpen);

    private async Task<PurchaseOrder> AddressedAsync()
    {
        var order = await OpenAsync();
        Assert.True((await Purchasing.WriteToAsync(order.Number, order.Version, To, "Owner")).Succeeded);
        return await FindAsync(order.Number);
    }

    private async Task<PurchaseOrder> FindAsync(string number) => (await Purchasing.FindAsync(number))!;
}
