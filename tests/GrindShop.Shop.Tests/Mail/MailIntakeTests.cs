using System.Text;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Shop.Tests.Mail;

/// <summary>Where a mail goes that came in.</summary>
public sealed class MailIntakeTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    private MailIntake Intake => _shop.Of<MailIntake>();

    private MailSorting Sorting => _shop.Of<MailSorting>();

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task A_mail_becomes_an_order_with_what_was_understood_and_the_rest_as_notes()
    {
        var mail = await TakeAsync(SomeMail.Text("RV8-R please\n230/236 @.050 .355 112+4 hyd roller\nBlue paint on the box, Tuesday delivery\n-- \nUna"));

        var order = await OrderAsync(mail);
        var spec = order.First.Spec;
        Assert.Equal((MailFate.NewOrder, OrderChannel.Email, OrderState.New, "Una Thornquist", "una@example.com"), (mail.Fate, order.Channel, order.State, order.Contact.Name, order.Contact.Email));
        Assert.Equal(("RV8-R", LifterType.HydraulicRoller, 230.0, 236.0, .355, 112.0), (spec.EngineFamily, spec.Lifter, spec.Intake.DurationAt050CrankDeg, spec.Exhaust.DurationAt050CrankDeg, spec.Intake.LobeLiftIn, spec.LobeSeparationCamDeg));
        Assert.Contains("Blue paint", spec.Notes, StringComparison.Ordinal);
        Assert.DoesNotContain("-- ", spec.Notes, StringComparison.Ordinal);
        Assert.EndsWith("Una", mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Search_finds_an_order_by_the_words_of_its_mails()
    {
        var mail = await TakeAsync(SomeMail.Text("230/236 for the zanzibar racer"));

        var found = await _shop.Of<OrderSearch>().FindAsync("zanzibar");

        Assert.Equal(mail.OrderNumber, Assert.Single(found.Orders).Number);
    }

    [Fact]
    public async Task The_answer_goes_below_the_customers_mail()
    {
        var mail = await TakeAsync(SomeMail.Text("230/236"));

        var letter = Assert.Single(await _shop.Outbox.OfOrderAsync(mail.OrderNumber!));
        Assert.Equal(("one@mail.example.com", "una@example.com"), (letter.InReplyTo, letter.To));
    }

    [Fact]
    public async Task Same_mail_again_from_another_place_of_the_mailbox_is_the_same()
    {
        var first = await TakeAsync(SomeMail.Text("230/236"), "imap:1");
        var second = await TakeAsync(SomeMail.Text("230/236"), "imap:2");

        Assert.Equal(first.Id, second.Id);
        Assert.Single(await _shop.Outbox.OfOrderAsync(first.OrderNumber!));
    }

    [Fact]
    public async Task Message_id_of_another_mail_hides_nothing()
    {
        var forged = await TakeAsync(SomeMail.Text("nothing", "Other <other@example.net>"), "imap:1");
        var real = await TakeAsync(SomeMail.Text("230/236"), "imap:2");

        Assert.NotEqual(forged.OrderNumber, real.OrderNumber);
    }

    [Fact]
    public async Task Two_nodes_with_the_same_mail_make_one_order()
    {
        await using var other = new TestShop(_database, "other");
        var taken = await Task.WhenAll(Enumerable.Range(0, 6).Select(i => Task.Run(() => (i % 2 == 0 ? _shop : other).Of<MailIntake>().TakeAsync(Arrived(SomeMail.Text("230/236"), "imap:1")))));

        Assert.Single(taken.Select(mail => mail.Id).Distinct());
        await using var db = _shop.Db();
        Assert.Single(await db.Orders.Where(order => order.Customer.Email == "una@example.com").Select(order => order.Number).ToListAsync());
    }

    [Fact]
    public async Task Answer_to_a_letter_goes_to_its_order_answers_the_only_question_and_wakes_it()
    {
        var order = await AskedAsync("Which rocker ratio?");
        var letter = (await _shop.Outbox.OfOrderAsync(order.Number))[^1];

        var mail = await TakeAsync(SomeMail.Text("It is 1.6.\n> Which rocker ratio?", subject: "no number here", headers: $"In-Reply-To: <{letter.MessageId}>"));

        order = await OrderAsync(mail);
        Assert.Equal((MailFate.Added, OrderState.New, OrderEventKind.Answered), (mail.Fate, order.State, order.History[^1].Kind));
        Assert.Equal(("It is 1.6.", "Una Thornquist"), (Assert.Single(order.Questions).LastReply!.Words, order.History[^1].By));
    }

    [Fact]
    public async Task With_several_questions_open_a_person_reads_which_is_answered()
    {
        var order = await AskedAsync("Which rocker ratio?", "Which gear?");

        await TakeAsync(SomeMail.Text("1.6, iron", subject: $"Re: Order {order.Number}: 2 questions"));

        order = (await _shop.Desk.FindAsync(order.Number))!;
        Assert.Equal(OrderState.New, order.State);
        Assert.All(order.Questions, question => Assert.Null(question.LastReply));
    }

    [Theory]
    [InlineData("Re: Order {0}: a question")]
    [InlineData("AW: {0}")]
    public async Task Forged_number_is_shown_as_from_another_address_and_changes_nothing(string subject)
    {
        var order = await AskedAsync("Which rocker ratio?");

        var mail = await TakeAsync(SomeMail.Text("Ship it to me instead", "Una Thornquist <una@example.net>", string.Format(null, subject, order.Number.ToLowerInvariant())));

        order = await OrderAsync(mail);
        Assert.Equal((MailFate.FromAnother, OrderState.WaitingForCustomer), (mail.Fate, order.State));
        Assert.Null(order.Questions[0].LastReply);
        Assert.Contains("not the customer's address", order.History[^1].What, StringComparison.Ordinal);
        Assert.DoesNotContain(await _shop.Outbox.OfOrderAsync(order.Number), letter => letter.To.EndsWith("example.net", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Letter_passed_on_to_somebody_else_does_not_make_them_the_customer()
    {
        var order = await AskedAsync("Which rocker ratio?");
        var letter = (await _shop.Outbox.OfOrderAsync(order.Number))[^1];

        var mail = await TakeAsync(SomeMail.Text("1.6", "Mechanic <mech@example.net>", headers: $"References: <{letter.MessageId}>"));
        Assert.Equal((MailFate.FromAnother, order.Number), (mail.Fate, mail.OrderNumber));

        Assert.Equal(MailFate.Added, (await Sorting.IsCustomersAsync(mail.Id, "Petra")).Value!.Fate);
        Assert.Equal(OrderState.New, (await OrderAsync(mail)).State);
        Assert.Equal("settled", (await Sorting.IsCustomersAsync(mail.Id, "Petra")).Refusal!.Code);
    }

    [Theory]
    [InlineData("Auto-Submitted: auto-replied", SomeMail.Una)]
    [InlineData("Precedence: auto_reply", SomeMail.Una)]
    [InlineData("X-Plain: yes", "Mail <mailer-daemon@example.com>")]
    public async Task Machines_open_no_orders_and_get_no_answer(string header, string from)
    {
        var mail = await TakeAsync(SomeMail.Text("I am away", from, headers: header));

        Assert.Equal((MailFate.Automatic, null), (mail.Fate, mail.OrderNumber));
        Assert.DoesNotContain(await _shop.Outbox.NewestAsync(100), letter => letter.To == mail.From);
    }

    [Fact]
    public async Task Absence_note_about_an_order_lies_with_it_and_does_not_wake_it()
    {
        var order = await AskedAsync("Which rocker ratio?");

        var mail = await TakeAsync(SomeMail.Text("I am away", subject: $"Re: Order {order.Number}", headers: "Auto-Submitted: auto-replied"));

        Assert.Equal((MailFate.Automatic, OrderState.WaitingForCustomer), (mail.Fate, (await OrderAsync(mail)).State));
    }

    [Fact]
    public async Task Mail_of_the_shops_own_address_is_not_answered()
    {
        var own = (await _shop.Catalog.ContentAsync()).Rules.Settings.Email;

        Assert.Equal(MailFate.Automatic, (await TakeAsync(SomeMail.Text("230/236", $"Shop <{own.ToUpperInvariant()}>"))).Fate);
    }

    [Fact]
    public async Task Shop_that_sends_under_another_address_knows_both_as_its_own()
    {
        await using var shop = new TestShop(_database, "two", services => services.AddSingleton(new MailSettings { Sender = "mailer@grindshop.example" }));
        var own = (await shop.Catalog.ContentAsync()).Rules.Settings.Email;

        foreach (var from in new[] { own, "Mailer@grindshop.example" })
            Assert.Equal(MailFate.Automatic, (await shop.Of<MailIntake>().TakeAsync(MailReader.Read(from, Encoding.UTF8.GetBytes(SomeMail.Text("230/236", from, id: from))))).Fate);
    }

    [Fact]
    public async Task New_order_keeps_what_was_passed_on_below_its_subject()
    {
        var mail = await TakeAsync(SomeMail.Text("-----Original Message-----\nFrom: a friend\n230/236 @.050", subject: "His cam"));

        Assert.Equal(230, (await OrderAsync(mail)).First.Spec.Intake.DurationAt050CrankDeg);
    }

    [Fact]
    public async Task Mails_that_wait_for_a_person_are_counted_until_they_are_settled()
    {
        var order = await OrderAsync(await TakeAsync(SomeMail.Text("230/236")));
        await using (var db = _shop.Db())
        {
            db.Add(OutgoingMail.Write("a try", order.Number, "no address", new Letter("About", "words"), "example.com", TestShop.Now));
            await db.SaveChangesAsync();
        }
        var tray = _shop.Of<MailTray>();
        Assert.Equal((0, 1), (await tray.WaitingCountAsync(), await _shop.Outbox.StuckCountAsync()));

        var foreign = await TakeAsync(SomeMail.Text("It is 1.6", "mech@example.net", $"Re: {order.Number}", "two@example.net"), "test:2");
        Assert.Equal(1, await tray.WaitingCountAsync());
        await Sorting.LeaveAsync(foreign.Id, "Imka");

        Assert.Equal(0, await tray.WaitingCountAsync());
    }

    [Fact]
    public async Task Machines_that_do_not_say_so_are_answered_five_times_a_day()
    {
        for (var i = 0; i < MailIntake.MostOrdersADay; i++)
            Assert.Equal(MailFate.NewOrder, (await TakeAsync(SomeMail.Text($"thank you for your mail {i}", id: $"{i}@example.com"), $"imap:{i}")).Fate);

        var mail = await TakeAsync(SomeMail.Text("thank you for your mail", id: "six@example.com"), "imap:6");
        Assert.Equal(MailFate.PutAside, mail.Fate);
        Assert.Equal(mail.Id, (await _shop.Of<MailTray>().NewestAsync(1))[0].Id);

        Assert.NotNull((await Sorting.AsNewOrderAsync(mail.Id, "Petra")).Value!.OrderNumber);
        Assert.Equal("settled", (await Sorting.AsNewOrderAsync(mail.Id, "Petra")).Refusal!.Code);
    }

    [Fact]
    public async Task Two_who_decide_on_one_mail_at_once_make_one_order()
    {
        var order = await AskedAsync("Which rocker ratio?");
        var foreign = await TakeAsync(SomeMail.Text("I want one like it", "mech@example.net", $"Re: {order.Number}", "two@example.net"), "test:2");
        var before = await OrdersAsync();

        var outcomes = await Task.WhenAll(Task.Run(() => Sorting.AsNewOrderAsync(foreign.Id, "Petra")), Task.Run(() => Sorting.LeaveAsync(foreign.Id, "Imka")), Task.Run(() => Sorting.AsNewOrderAsync(foreign.Id, "Anna")));

        var settled = Assert.Single(outcomes, outcome => outcome.Succeeded).Value!;
        Assert.Equal(before + (settled.Fate == MailFate.NewOrder ? 1 : 0), await OrdersAsync());
        Assert.All(outcomes.Where(outcome => !outcome.Succeeded), outcome => Assert.Equal("settled", outcome.Refusal!.Code));
    }

    [Theory]
    [InlineData("From: \"nobody\" <>\n\n230/236")]
    [InlineData("Subject: x\n\n230/236")]
    [InlineData("From: una@localhost\n\n230/236")]
    public async Task Nobody_to_answer_is_put_aside_for_a_person(string text)
    {
        var mail = await TakeAsync(text);

        Assert.Equal(MailFate.PutAside, mail.Fate);
        Assert.NotNull(mail.Reason);
        Assert.True((await Sorting.LeaveAsync(mail.Id, "Petra")).Succeeded);
        Assert.False((await _shop.Of<MailTray>().NewestAsync(1))[0].NeedsPerson);
    }

    [Fact]
    public async Task Whole_mail_is_kept_as_received()
    {
        var text = SomeMail.Text("230/236\0").ReplaceLineEndings("\r\n");

        var mail = await TakeAsync(text);

        Assert.Equal(Encoding.UTF8.GetBytes(text), await _shop.Of<MailTray>().OriginalAsync(mail.Id));
    }

    [Fact]
    public async Task Very_long_mail_with_letters_no_paper_prints_is_taken_in()
    {
        var mail = await TakeAsync(SomeMail.Text(string.Concat(Enumerable.Repeat("230/236 \uFFFD\u0007 and so on ", 5_000)), "\uFFFD <una@example.com>", "\uFFFD"));

        Assert.Equal((MailFate.NewOrder, null), (mail.Fate, mail.Reason));
        Assert.InRange((await OrderAsync(mail)).First.Spec.Notes!.Length, 1_000, SpecCheck.LongestNote);
    }

    private Task<IncomingMail> TakeAsync(string text, string source = "imap:1") => Intake.TakeAsync(Arrived(text, source));

    private static ArrivedMail Arrived(string text, string source) => MailReader.Read(source, Encoding.UTF8.GetBytes(text));

    private async Task<Order> OrderAsync(IncomingMail mail) => (await _shop.Desk.FindAsync(mail.OrderNumber!))!;

    private async Task<int> OrdersAsync()
    {
        await using var db = _shop.Db();
        return await db.Orders.CountAsync();
    }

    private async Task<Order> AskedAsync(params string[] questions)
    {
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;
        return (await _shop.Desk.AskAsync(order.Number, order.Version, [.. questions.Select(text => new QuestionEntry(1, null, text))], "ask", "Petra")).Value!;
    }
}
