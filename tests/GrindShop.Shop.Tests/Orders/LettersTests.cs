using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>What customers are told, and that each event is told once.</summary>
public sealed class LettersTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

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
    public async Task A_letter_is_written_on_the_connection_that_saves_the_order()
    {
        var number = (await SubmitAsync()).Number;
        var onlyOne = new NpgsqlConnectionStringBuilder(_database.ConnectionString) { MaxPoolSize = 1 }.ToString();
        await using var shop = new TestShop(_database with { ConnectionString = onlyOne }, "narrow");
        await using var db = shop.Db();
        await using var transaction = await db.Database.BeginTransactionAsync();
        var order = await db.Orders.Include(one => one.Customer).Include(one => one.History).SingleAsync(one => one.Number == number);
        Assert.True(order.Decline("No blank has the metal for it.", "Desk", TestShop.Now).Succeeded);

        await shop.Of<CustomerMail>().TellAsync(db, order, default);

        Assert.Contains("No blank has the metal for it.", Assert.Single(db.OutgoingMails.Local).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Received_carries_what_was_computed_and_the_way_to_follow_it()
    {
        var order = await SubmitAsync();

        var mail = Assert.Single(await _shop.Outbox.OfOrderAsync(order.Number));

        var best = order.First.Answer!.Best!;
        Assert.Equal($"Order {order.Number}: we have your specification", mail.Subject);
        foreach (var expected in new[] { "Hello Una Thornquist,", order.First.Answer.Reasons[0], best.IntakeBaseCircleDiameterIn!.Value.ToString("0.000", null), best.Gear.Reason, $"/track/{order.TrackingCode}" })
            Assert.Contains(expected, mail.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_step_is_told_with_its_figures()
    {
        var order = await SubmitAsync();
        order = await StepAsync(order, () => _shop.Desk.QuoteAsync(order.Number, order.Version, order.First.Answer!.Best!.PartNumber, SomeOrders.Lines, "Petra"));
        order = await StepAsync(order, () => _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(20), "Petra"));

        var mails = await _shop.Outbox.OfOrderAsync(order.Number);

        Assert.Equal(3, mails.Count);
        Assert.Contains("Grinding: $300.00", mails[1].Text, StringComparison.Ordinal);
        Assert.Contains("Tuesday, March 31, 2026", mails[2].Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Struck_lines_are_not_told_and_the_others_make_the_price()
    {
        var order = await SubmitAsync();
        var offer = new QuoteOffer
        {
            Parts = new Dictionary<int, string> { [1] = order.First.Answer!.Best!.PartNumber },
            Lines = [new PriceLine("own-1", "Grinding", 300) { Reason = "agreed" }, new PriceLine("own-2", "Balance", 120) { RuleAmount = 120, IsStruck = true, Reason = "not wanted" }],
            ValidUntil = SomeOrders.Today.AddDays(10),
        };
        Assert.True((await _shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Petra")).Succeeded);

        var text = (await _shop.Outbox.OfOrderAsync(order.Number))[^1].Text;

        Assert.Contains("Together: $300.00", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Balance", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Declined_says_why()
    {
        var order = await SubmitAsync();
        await _shop.Desk.DeclineAsync(order.Number, order.Version, "No blank has the metal for it.", "Petra");

        Assert.Contains("Why: No blank has the metal for it.", (await _shop.Outbox.OfOrderAsync(order.Number))[1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Received_says_what_to_expect_as_the_form_does()
    {
        var order = await SubmitAsync();
        var content = await _shop.Catalog.ContentAsync();

        var expected = Outlook.Of(order.First.Answer!, content, await _shop.Desk.PriceRulesAsync(), SomeOrders.Today);

        var text = Assert.Single(await _shop.Outbox.OfOrderAsync(order.Number)).Text;
        Assert.Contains(PriceRules.Dollars(expected.Least!.Value), text, StringComparison.Ordinal);
        Assert.Contains(PriceRules.Dollars(expected.Most!.Value), text, StringComparison.Ordinal);
        Assert.Contains($"could leave the shop by {expected.ShipsOn!.Value.ToString("dddd, MMMM d, yyyy", System.Globalization.CultureInfo.InvariantCulture)}", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Looking_at_a_letter_first_shows_what_is_sent_and_does_nothing()
    {
        var order = await SubmitAsync();
        var (part, today) = (order.First.Answer!.Best!.PartNumber, SomeOrders.Today);
        var offer = QuoteOffer.Of(part, SomeOrders.Lines, today);

        var looked = (await _shop.Desk.PreviewAsync(order.Number, (copy, day, now) => copy.Quote(offer, day, "Petra", now))).Value!;
        Assert.Equal(OrderState.New, (await _shop.Desk.FindAsync(order.Number))!.State);
        Assert.Single(await _shop.Outbox.OfOrderAsync(order.Number));

        await _shop.Desk.QuoteAsync(order.Number, order.Version, offer, "Petra");
        var sent = (await _shop.Outbox.OfOrderAsync(order.Number))[^1];
        Assert.Equal((looked.Subject, looked.Text), (sent.Subject, sent.Text));
        Assert.Equal(looked.Papers, sent.Papers);
        Assert.Equal("noReason", (await _shop.Desk.PreviewAsync(order.Number, (copy, _, now) => copy.Decline(" ", "Petra", now))).Refusal!.Code);
    }

    [Fact]
    public async Task Cancelled_tells_the_words_for_the_customer_and_keeps_the_shops_own()
    {
        var order = await SubmitAsync();
        order = await StepAsync(order, () => _shop.Desk.QuoteAsync(order.Number, order.Version, order.First.Answer!.Best!.PartNumber, SomeOrders.Lines, "Petra"));
        order = await StepAsync(order, () => _shop.Desk.AcceptAsync(order.Number, order.Version, SomeOrders.Today.AddDays(20), "Petra"));
        var looked = (await _shop.Changing.CancelLetterAsync(order.Number, "Never pays.", "As you asked on the phone.", "Petra")).Value!;
        order = await StepAsync(order, () => _shop.Changing.CancelAsync(order.Number, order.Version, "Never pays.", "Petra", "As you asked on the phone."));

        var sent = (await _shop.Outbox.OfOrderAsync(order.Number))[^1];

        Assert.Equal(looked.Text, sent.Text);
        Assert.Contains("your order is cancelled.\n\nAs you asked on the phone.", sent.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Never pays", sent.Text, StringComparison.Ordinal);
        Assert.Equal(("As you asked on the phone.", true), (order.History[^1].Told, order.History[^1].What.StartsWith("Never pays.", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Enquiry_sent_twice_is_told_once()
    {
        var order = await SubmitAsync();
        await SubmitAsync();

        Assert.Single(await _shop.Outbox.OfOrderAsync(order.Number));
    }

    [Fact]
    public async Task Refused_act_tells_nothing()
    {
        var order = await SubmitAsync();
        await _shop.Desk.QuoteAsync(order.Number, order.Version + 1, SomeOrders.Blank, SomeOrders.Lines, "Petra");

        Assert.Single(await _shop.Outbox.OfOrderAsync(order.Number));
    }

    [Fact]
    public async Task Customer_without_an_address_is_not_written_to()
    {
        var order = (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("phone", null, "555-555-0142"), "Petra")).Order!;

        Assert.Empty(await _shop.Outbox.OfOrderAsync(order.Number));
    }

    [Fact]
    public async Task Database_refuses_a_second_mail_of_one_event()
    {
        var mail = Assert.Single(await _shop.Outbox.OfOrderAsync((await SubmitAsync()).Number));
        await using var db = _shop.Db();
        db.Add(OutgoingMail.Write(mail.EventKey, mail.OrderNumber!, mail.To, new Letter("again", "again"), "grindshop.example", TestShop.Now));

        var refused = await Assert.ThrowsAsync<DbUpdateException>(() => db.SaveChangesAsync());

        Assert.Equal(PostgresErrorCodes.UniqueViolation, Assert.IsType<PostgresException>(refused.InnerException).SqlState);
    }

    private async Task<Order> SubmitAsync() => (await _shop.Intake.SubmitAsync(SomeOrders.Enquiry("key"), "Una")).Order!;

    private async Task<Order> StepAsync(Order order, Func<Task<Outcome<Order>>> step)
    {
        Assert.Null((await step()).Refusal);
        return (await _shop.Desk.FindAsync(order.Number))!;
    }
}
