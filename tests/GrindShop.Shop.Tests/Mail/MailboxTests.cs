using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>The mailbox against an IMAP server on a socket.</summary>
public sealed class MailboxTests : IAsyncLifetime
{
    private readonly ImapHost _host = new();
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
    public async Task Unread_mails_come_in_and_are_marked()
    {
        _host.Put(SomeMail.Text("old and read", id: "old@example.com"), seen: true);
        _host.Put(SomeMail.Text("RV8-R 230/236 @.050"));
        var shop = Shop();

        await VisitAsync(shop);

        var mail = Assert.Single(await NewestAsync(shop));
        Assert.Equal((MailFate.NewOrder, "one@mail.example.com"), (mail.Fate, mail.MessageId));
        Assert.True(_host.Mails[1].Seen);
        Assert.Null((await MarkAsync(shop)).Problem);
        Assert.Equal(TestShop.Now, (await MarkAsync(shop)).LookedAt);
        Assert.Contains("LOGOUT", _host.Heard);
    }

    [Fact]
    public async Task What_came_later_is_taken_in_even_where_somebody_has_read_it_already()
    {
        _host.Put(SomeMail.Text("first"));
        var shop = Shop();
        await VisitAsync(shop);
        _host.Put(SomeMail.Text("second", id: "two@example.com"), seen: true);

        await VisitAsync(shop);
        await VisitAsync(shop);

        Assert.Equal(2, (await NewestAsync(shop)).Count);
    }

    [Fact]
    public async Task Nothing_is_taken_in_twice_where_it_may_not_be_marked()
    {
        _host.IsReadOnly = true;
        _host.Put(SomeMail.Text("first"));
        var shop = Shop();

        await VisitAsync(shop);
        await VisitAsync(shop);

        Assert.Single(await NewestAsync(shop));
        Assert.Single(_host.Heard, said => said.Contains("BODY.PEEK[]", StringComparison.Ordinal));
    }

    [Fact]
    public async Task After_a_crash_between_keeping_and_noting_it_stays_one()
    {
        _host.Put(SomeMail.Text("first"));
        var shop = Shop();
        await VisitAsync(shop);
        await using (var db = shop.Db())
            await db.MailboxMarks.ExecuteDeleteAsync();
        _host.Mails[0].Seen = false;

        await VisitAsync(shop);

        Assert.Single(await NewestAsync(shop));
    }

    [Fact]
    public async Task Mailbox_that_numbers_its_mails_anew_brings_none_twice()
    {
        _host.Put(SomeMail.Text("first"));
        var shop = Shop();
        await VisitAsync(shop);
        (_host.Validity, _host.Mails[0].Seen) = (8, false);
        _host.Put(SomeMail.Text("second", id: "two@example.com"));

        await VisitAsync(shop);

        Assert.Equal(2, (await NewestAsync(shop)).Count);
    }

    [Fact]
    public async Task Line_that_breaks_in_the_middle_of_a_mail_is_said_and_the_mail_comes_at_the_next_visit()
    {
        _host.Put(SomeMail.Text(new string('x', 50_000))).Breaks = 1;
        var shop = Shop();

        await VisitAsync(shop);
        Assert.Empty(await NewestAsync(shop));
        Assert.NotNull((await MarkAsync(shop)).Problem);

        await VisitAsync(shop);
        Assert.Single(await NewestAsync(shop));
        Assert.Null((await MarkAsync(shop)).Problem);
    }

    [Fact]
    public async Task Mail_that_breaks_the_line_every_time_does_not_keep_the_next_one_out()
    {
        _host.Put(SomeMail.Text("broken", id: "broken@example.com")).Breaks = int.MaxValue;
        _host.Put(SomeMail.Text("good"));
        var shop = Shop();

        for (var visit = 0; visit <= MailboxMark.MostTries; visit++)
            await VisitAsync(shop);

        Assert.Equal([MailFate.PutAside, MailFate.NewOrder], (await NewestAsync(shop)).Select(mail => mail.Fate));
    }

    [Fact]
    public async Task Too_large_a_mail_is_put_aside_without_fetching_it()
    {
        _host.Put(SomeMail.Text("large")).Claims = Mailbox.LargestBytes + 1;
        var shop = Shop();

        await VisitAsync(shop);

        Assert.Contains("larger than 10 MB", Assert.Single(await NewestAsync(shop)).Reason, StringComparison.Ordinal);
        Assert.DoesNotContain(_host.Heard, said => said.Contains("BODY.PEEK[]", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Wrong_password_is_said_plainly()
    {
        var shop = Shop(server: _host.Server with { Password = "wrong" });

        await VisitAsync(shop);

        Assert.StartsWith("the server refused the user or the password", (await MarkAsync(shop)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_server_is_said_too()
    {
        var shop = Shop(server: _host.Server with { Port = MailHost.FreePort() });

        await VisitAsync(shop);

        Assert.NotNull((await MarkAsync(shop)).Problem);
    }

    [Fact]
    public async Task One_node_at_a_time_looks_into_it()
    {
        _host.Put(SomeMail.Text("first"));
        _host.Hold = new TaskCompletionSource();
        var (one, two) = (Shop("one"), Shop("two"));

        var first = VisitAsync(one);
        await _host.SignedIn.Task;
        await VisitAsync(two);
        Assert.Equal(1, _host.Visits);
        _host.Hold.SetResult();
        await first;
        await VisitAsync(two);

        Assert.Equal(2, _host.Visits);
        Assert.Single(await NewestAsync(one));
    }

    private TestShop Shop(string node = "one", MailServer? server = null)
    {
        var shop = new TestShop(_database, node, services => services.AddSingleton(new MailSettings { Imap = server ?? _host.Server }));
        _shops.Add(shop);
        return shop;
    }

    private static Task VisitAsync(TestShop shop) => shop.Of<MailboxWorker>().VisitAsync();

    private static Task<IReadOnlyList<IncomingMail>> NewestAsync(TestShop shop) => shop.Of<MailTray>().NewestAsync(100);

    private static async Task<MailboxMark> MarkAsync(TestShop shop) => (await shop.Of<MailTray>().MarkAsync())!;
}
