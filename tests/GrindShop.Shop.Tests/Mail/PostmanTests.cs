using GrindShop.Shop.Mail;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MimeKit;
using SmtpServer.Protocol;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>The outbox against a real SMTP server on a socket.</summary>
public sealed class PostmanTests : IAsyncLifetime
{
    private readonly MailHost _host = new();
    private readonly List<TestShop> _shops = [];
    private TestDatabase _database = null!;

    public async Task InitializeAsync() => _database = await ShopTemplates.Scenario.CopyAsync();

    public async Task DisposeAsync()
    {
        foreach (var shop in _shops)
            await shop.DisposeAsync();
        await _host.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Two_nodes_send_every_mail_once()
    {
        await _host.StartAsync();
        var (one, two) = (Shop("one"), Shop("two"));
        for (var i = 0; i < 12; i++)
            await one.Intake.SubmitAsync(SomeOrders.Enquiry($"key-{i}"), "Una");

        await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Run(() => (i % 2 == 0 ? one : two).Postman.SendDueAsync())));

        Assert.Equal(12, _host.Taken.Count);
        Assert.Equal(12, _host.Taken.Select(message => message.MessageId).Distinct().Count());
        Assert.All(await one.Outbox.NewestAsync(100), mail => Assert.Equal((MailState.Sent, 1), (mail.State, mail.Attempts)));
    }

    [Fact]
    public async Task Server_that_is_down_gets_the_mail_when_it_is_up_again()
    {
        var shop = Shop();
        var order = await SubmitAsync(shop);
        await shop.Postman.SendDueAsync();
        var waiting = await MailAsync(shop, order);
        Assert.Equal((MailState.Waiting, 1), (waiting.State, waiting.Attempts));
        Assert.NotNull(waiting.LastError);

        await _host.StartAsync();
        await shop.Postman.SendDueAsync();
        Assert.Empty(_host.Taken);
        shop.Clock.SetUtcNow(waiting.NextAttemptAt);
        await shop.Postman.SendDueAsync();

        Assert.Equal(MailState.Sent, (await MailAsync(shop, order)).State);
        Assert.Equal(waiting.MessageId, Assert.Single(_host.Taken).MessageId);
    }

    [Theory]
    [InlineData(451, MailState.Waiting)]
    [InlineData(452, MailState.Waiting)]
    [InlineData(552, MailState.Failed)]
    [InlineData(554, MailState.Failed)]
    public async Task Refused_text_is_tried_again_only_where_that_may_help(int code, MailState then)
    {
        await _host.StartAsync();
        _host.AnswerToText = new SmtpResponse((SmtpReplyCode)code, "not this one");
        var shop = Shop();
        var order = await SubmitAsync(shop);

        await shop.Postman.SendDueAsync();

        var mail = await MailAsync(shop, order);
        Assert.Equal(then, mail.State);
        Assert.Contains($"{code} not this one", mail.LastError, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unknown_recipient_fails_at_once_and_goes_out_when_somebody_tries_again()
    {
        await _host.StartAsync();
        _host.AnswerToRecipient = new SmtpResponse(SmtpReplyCode.MailboxUnavailable, "no such mailbox");
        var shop = Shop();
        var order = await SubmitAsync(shop);
        await shop.Postman.SendDueAsync();
        var failed = await MailAsync(shop, order);
        Assert.Equal((MailState.Failed, 1), (failed.State, failed.Attempts));

        _host.AnswerToRecipient = null;
        Assert.True((await shop.Outbox.SendAgainAsync(failed.Id)).Succeeded);
        await shop.Postman.SendDueAsync();

        Assert.Single(_host.Taken);
        Assert.Equal("notStuck", (await shop.Outbox.SendAgainAsync(failed.Id)).Refusal!.Code);
    }

    [Fact]
    public async Task Server_that_never_comes_back_is_given_up()
    {
        var shop = Shop();
        var order = await SubmitAsync(shop);
        for (var i = 0; i < RetryRule.MostAttempts; i++)
        {
            await shop.Postman.SendDueAsync();
            shop.Clock.SetUtcNow((await MailAsync(shop, order)).NextAttemptAt);
        }

        var mail = await MailAsync(shop, order);
        Assert.Equal((MailState.Failed, RetryRule.MostAttempts), (mail.State, mail.Attempts));
    }

    [Fact]
    public async Task Node_that_dies_between_sending_and_marking_does_not_make_another_send_it_twice()
    {
        await _host.StartAsync();
        var (dying, other) = (Shop("dying", new DiesAfterwards(new SmtpCarrier(_host.Server))), Shop("other"));
        var order = await SubmitAsync(dying);
        await Assert.ThrowsAsync<DiesAfterwards.PowerCut>(() => dying.Postman.SendDueAsync());
        await other.Postman.SendDueAsync();
        Assert.Equal(MailState.Sending, (await MailAsync(other, order)).State);

        other.Clock.Advance(TimeSpan.FromMinutes(11));
        await other.Postman.SendDueAsync();

        var unsure = await MailAsync(other, order);
        Assert.Equal(MailState.Unsure, unsure.State);
        Assert.Single(_host.Taken);
        await other.Outbox.SendAgainAsync(unsure.Id);
        await other.Postman.SendDueAsync();
        Assert.Equal(2, _host.Taken.Count);
        Assert.Single(_host.Taken.Select(message => message.MessageId).Distinct());
    }

    [Fact]
    public async Task Paper_that_cannot_be_printed_is_tried_again_because_nothing_has_gone_out()
    {
        await _host.StartAsync();
        var shop = new TestShop(_database, "one", services => services.AddSingleton<IMailCarrier>(new SmtpCarrier(_host.Server)).AddSingleton<PrintPapers>(_ => (_, _, _) => throw new InvalidOperationException("no ink")));
        _shops.Add(shop);
        var order = (await shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
        Assert.True((await shop.Desk.QuoteAsync(order.Number, order.Version, order.First.Answer!.Best!.PartNumber, SomeOrders.Lines, "Petra")).Succeeded);

        await shop.Postman.SendDueAsync();

        var quote = (await shop.Outbox.OfOrderAsync(order.Number))[^1];
        Assert.Equal(MailState.Waiting, quote.State);
        Assert.Contains("no ink", quote.LastError, StringComparison.Ordinal);
        Assert.Single(_host.Taken);
    }

    [Fact]
    public async Task Server_that_wants_a_user_has_not_taken_the_mail()
    {
        _host.AsksForSignIn = true;
        await _host.StartAsync();
        var shop = Shop();
        var order = await SubmitAsync(shop);

        await shop.Postman.SendDueAsync();

        var mail = await MailAsync(shop, order);
        Assert.Equal((MailState.Waiting, 1), (mail.State, mail.Attempts));
        Assert.NotNull(mail.LastError);
        Assert.Empty(_host.Taken);
    }

    [Fact]
    public async Task Line_that_breaks_after_the_text_leaves_the_decision_to_a_person()
    {
        using var host = new BreakingHost();
        var shop = Shop("one", new SmtpCarrier(host.Server));
        var order = await SubmitAsync(shop);

        await shop.Postman.SendDueAsync();
        await host.Served;

        Assert.Equal(MailState.Unsure, (await MailAsync(shop, order)).State);
    }

    [Fact]
    public async Task Without_a_server_it_lies_in_the_folder()
    {
        using var folder = TestFolder.Make();
        var shop = Shop("one", new FolderCarrier(folder.Path));
        var order = await SubmitAsync(shop);

        await shop.Postman.SendDueAsync();

        var (mail, message) = (await MailAsync(shop, order), await MimeMessage.LoadAsync(Assert.Single(Directory.GetFiles(folder.Path, "*.eml"))));
        Assert.Equal(MailState.Filed, mail.State);
        Assert.Equal((mail.MessageId, mail.Subject), (message.MessageId, message.Subject));
        Assert.Equal("una@example.com", Assert.Single(message.To.Mailboxes).Address);
        Assert.Equal("auto-generated", message.Headers[HeaderId.AutoSubmitted]);
    }

    private TestShop Shop(string node = "one", IMailCarrier? carrier = null)
    {
        var shop = new TestShop(_database, node, services => services.AddSingleton(carrier ?? new SmtpCarrier(_host.Server)));
        _shops.Add(shop);
        return shop;
    }

    private static async Task<string> SubmitAsync(TestShop shop) => (await shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!.Number;

    private static async Task<OutgoingMail> MailAsync(TestShop shop, string order) => Assert.Single(await shop.Outbox.OfOrderAsync(order));

    /// <summary>The power fails after the server took the mail and before the shop wrote that down.</summary>
    private sealed class DiesAfterwards(IMailCarrier carrier) : IMailCarrier
    {
        public MailState WhenDone => carrier.WhenDone;

        public string Via => carrier.Via;

        public async Task<CarryResult> CarryAsync(MimeMessage message, CancellationToken cancel)
        {
            await carrier.CarryAsync(message, cancel);
            throw new PowerCut();
        }

        public sealed class PowerCut : Exception;
    }
}
