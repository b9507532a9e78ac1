using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>A name or an address that was misheard is put right, and letters follow; the desk writes in words of its own.</summary>
public sealed class ContactTests : IAsyncLifetime
{
    private static readonly Contact Right = new() { Name = "Una Thornquist", Email = "una@thornquist.example" };

    private TestDatabase _database = null!;
    private TestShop _shop = null!;
    private Order _order = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
        _order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key", "una@misheard.example") with { Channel = OrderChannel.Phone }, "Petra")).Order!;
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Letters_from_then_on_and_those_not_out_yet_go_to_the_right_address()
    {
        Assert.Null((await CorrectAsync(Right)).Refusal);

        Assert.Equal(Right.Email, Assert.Single(await MailsAsync()).To);
        Assert.Null((await _shop.Desk.DeclineAsync(_order.Number, (await FindAsync()).Version, "No time.", "Petra")).Refusal);
        Assert.Equal(Right.Email, (await MailsAsync())[^1].To);
        var order = await FindAsync();
        Assert.Equal((Right.Email, "Petra"), (order.Customer.Email, order.History.Single(line => line.Kind == OrderEventKind.ContactCorrected).By));
        Assert.Contains(order.History, line => line.What == "Contact corrected: e-mail una@misheard.example -> una@thornquist.example.");
    }

    [Theory]
    [InlineData("Failed", true)]
    [InlineData("Unsure", true)]
    [InlineData("Sent", false)]
    public async Task Letter_that_is_stuck_is_sent_again_to_the_right_address_and_one_that_went_stays_as_it_went(string state, bool follows)
    {
        await Sql.RunAsync(_database.ConnectionString, $"UPDATE outgoing_mails SET state = '{state}'{(state == "Sent" ? ", sent_at = now(), via = 'mail.example'" : "")} WHERE order_number = '{_order.Number}'");
        var mail = Assert.Single(await MailsAsync());

        Assert.Null((await CorrectAsync(Right)).Refusal);

        Assert.Equal(follows ? Right.Email : "una@misheard.example", Assert.Single(await MailsAsync()).To);
        Assert.Equal(follows, (await _shop.Outbox.SendAgainAsync(mail.Id)).Succeeded);
    }

    [Fact]
    public async Task Link_that_a_stranger_may_have_opens_nothing_any_more_and_no_letter_tells_it()
    {
        Assert.Null((await _shop.Desk.CorrectContactAsync(_order.Number, (await FindAsync()).Version, Right, "Petra", newPage: true)).Refusal);

        var order = await FindAsync();
        Assert.NotEqual(_order.TrackingCode, order.TrackingCode);
        Assert.Null(await _shop.Desk.TrackAsync(_order.TrackingCode));
        Assert.Equal(order.Number, (await _shop.Desk.TrackAsync(order.TrackingCode))!.Number);
        var mail = Assert.Single(await MailsAsync());
        Assert.Equal(Right.Email, mail.To);
        Assert.Contains(order.TrackingCode, mail.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(_order.TrackingCode, mail.Text, StringComparison.Ordinal);
        Assert.Contains(order.History, line => line.What.EndsWith("the old one opens nothing any more.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Address_that_is_taken_out_gets_nothing_more()
    {
        Assert.Null((await CorrectAsync(Right with { Email = null, Phone = "555 0142 77" })).Refusal);

        var mail = Assert.Single(await MailsAsync());
        Assert.Equal(MailState.Failed, mail.State);
        Assert.Equal("badAddress", (await _shop.Outbox.SendAgainAsync(mail.Id)).Refusal!.Code);
        Assert.Null((await _shop.Desk.DeclineAsync(_order.Number, (await FindAsync()).Version, "No time.", "Petra")).Refusal);
        Assert.Single(await MailsAsync());
    }

    [Fact]
    public async Task Walk_in_who_gives_an_address_later_is_written_to()
    {
        var walkIn = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("walk", null) with { Channel = OrderChannel.WalkIn }, "Petra")).Order!;
        Assert.Empty(await _shop.Outbox.OfOrderAsync(walkIn.Number));
        Assert.Null((await _shop.Desk.CorrectContactAsync(walkIn.Number, (await _shop.Desk.FindAsync(walkIn.Number))!.Version, Right, "Petra")).Refusal);

        Assert.Null((await _shop.Desk.DeclineAsync(walkIn.Number, (await _shop.Desk.FindAsync(walkIn.Number))!.Version, "No time.", "Petra")).Refusal);

        Assert.Equal(Right.Email, Assert.Single(await _shop.Outbox.OfOrderAsync(walkIn.Number)).To);
    }

    [Fact]
    public async Task Right_address_of_somebody_known_makes_the_order_theirs_and_leaves_the_others_alone()
    {
        var known = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("known", Right.Email), "Una")).Order!;
        var neighbour = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("other", "una@misheard.example"), "Una")).Order!;

        Assert.Null((await CorrectAsync(Right)).Refusal);

        Assert.Equal((await _shop.Desk.FindAsync(known.Number))!.CustomerId, (await FindAsync()).CustomerId);
        Assert.Equal("una@misheard.example", (await _shop.Desk.FindAsync(neighbour.Number))!.Customer.Email);
    }

    [Fact]
    public async Task Address_of_a_stranger_with_orders_stays_the_strangers()
    {
        var stranger = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("other", "una@misheard.example"), "Stranger")).Order!;

        Assert.Null((await CorrectAsync(Right)).Refusal);

        Assert.NotEqual((await _shop.Desk.FindAsync(stranger.Number))!.CustomerId, (await FindAsync()).CustomerId);
        Assert.Equal(("una@misheard.example", Right.Email), ((await _shop.Desk.FindAsync(stranger.Number))!.Customer.Email, (await FindAsync()).Customer.Email));
    }

    [Fact]
    public async Task Wrong_stale_or_empty_corrections_change_nothing()
    {
        var version = (await FindAsync()).Version;
        Assert.Equal("badContact", (await CorrectAsync(Right with { Email = "nowhere" })).Refusal!.Code);
        Assert.Equal("badContact", (await CorrectAsync(Right with { Name = " " })).Refusal!.Code);
        Assert.Equal("noChange", (await CorrectAsync(_order.Contact)).Refusal!.Code);
        Assert.Equal("stale", (await _shop.Desk.CorrectContactAsync(_order.Number, version + 1, Right, "Petra")).Refusal!.Code);
        Assert.Equal((version, "una@misheard.example"), ((await FindAsync()).Version, Assert.Single(await MailsAsync()).To));
    }

    [Fact]
    public async Task Search_finds_the_order_by_the_right_address_and_no_more_by_the_wrong_one()
    {
        Assert.Null((await CorrectAsync(Right with { Name = "Oona Thornquist" })).Refusal);

        await using var db = _shop.Db();
        var words = await db.Database.SqlQueryRaw<string>("SELECT words AS \"Value\" FROM known_words WHERE place IN ('e-mail', 'customer')").ToListAsync();
        Assert.Contains(words, word => word.Contains("una@thornquist.example", StringComparison.Ordinal));
        Assert.Contains(words, word => word.Contains("Oona", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(words, word => word.Contains("misheard", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Desk_writes_in_its_own_words_in_any_state_below_the_customers_last_mail()
    {
        await _shop.Of<MailIntake>().TakeAsync(new ArrivedMail("one", new ReadMail { From = "una@misheard.example", FromName = "Una", Subject = $"Re: order {_order.Number}", Text = "Well?", MessageId = "asks@example.com" }));
        Assert.Null((await _shop.Desk.DeclineAsync(_order.Number, (await FindAsync()).Version, "No time.", "Petra")).Refusal);
        var looked = (await _shop.Desk.PreviewAsync(_order.Number, (copy, _, now) => copy.WriteTo("Your old cam is at the counter.", "Petra", now))).Value!;

        Assert.Null((await _shop.Desk.WriteToAsync(_order.Number, (await FindAsync()).Version, "Your old cam is at the counter.", "Petra")).Refusal);

        var (mail, order) = ((await MailsAsync())[^1], await FindAsync());
        Assert.Equal((looked.Subject, looked.Text), (mail.Subject, mail.Text));
        Assert.Equal(($"Order {_order.Number}: a message", "asks@example.com"), (mail.Subject, mail.InReplyTo));
        Assert.Contains("Your old cam is at the counter.", mail.Text, StringComparison.Ordinal);
        Assert.Equal((OrderEventKind.WroteTo, "Petra", OrderState.Declined), (order.History[^1].Kind, order.History[^1].By, order.State));
        Assert.Empty(order.Unheard);
        Assert.Equal("noWords", (await _shop.Desk.WriteToAsync(_order.Number, order.Version, " ", "Petra")).Refusal!.Code);
    }

    [Fact]
    public async Task Mail_that_was_added_to_an_order_may_still_become_a_new_one()
    {
        var mail = await _shop.Of<MailIntake>().TakeAsync(new ArrivedMail("two", new ReadMail { From = "una@misheard.example", FromName = "Una", Subject = $"Re: order {_order.Number}", Text = "Another one, please: 230/236 @.050" }));
        Assert.Equal(MailFate.Added, mail.Fate);

        var made = await _shop.Of<MailSorting>().AsNewOrderAsync(mail.Id, "Petra");

        Assert.Null(made.Refusal);
        Assert.NotEqual(_order.Number, made.Value!.OrderNumber);
        Assert.Equal("settled", (await _shop.Of<MailSorting>().AsNewOrderAsync(mail.Id, "Petra")).Refusal!.Code);
    }

    private async Task<Outcome<Order>> CorrectAsync(Contact contact) => await _shop.Desk.CorrectContactAsync(_order.Number, (await FindAsync()).Version, contact, "Petra");

    private async Task<IReadOnlyList<OutgoingMail>> MailsAsync() => await _shop.Outbox.OfOrderAsync(_order.Number);

    private async Task<Order> FindAsync() => (await _shop.Desk.FindAsync(_order.Number))!;
}
