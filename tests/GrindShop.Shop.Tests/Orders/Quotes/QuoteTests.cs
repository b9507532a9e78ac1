using CsCheck;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Orders.Quotes;

public class QuoteTests
{
    public enum Act
    {
        Correct,
        Quote,
        QuoteOtherwise,
        AddCam,
        SetPieces,
        RemoveCam,
        Ask,
        Expire,
        Accept,
        AcceptOnline,
        Decline,
        DeclineOnline,
        Deposit,
    }

    private static readonly DateOnly Today = SomeOrders.Today;

    [Fact]
    public void Whatever_follows_no_quote_and_no_line_of_history_ever_changes() => Gen.Frequency((2, Gen.Enum<Act>()), (1, Gen.OneOf(Act.Quote, Act.QuoteOtherwise))).Array[1, 30].Sample(
        acts =>
        {
            var order = SomeOrders.New();
            var (quotes, lines) = (new List<string>(), new List<string>());
            foreach (var act in acts)
            {
                Do(order, act);
                StartsWith(quotes, [.. order.Quotes.Select(Json)]);
                StartsWith(lines, [.. order.History.Select(Json)]);
                Assert.Equal(order.State is OrderState.Quoted or OrderState.Accepted or OrderState.Expired, order.CurrentQuote is not null && order.State != OrderState.Declined);
                Assert.Equal(order.CurrentQuote?.Total ?? 0, order.Price);
                Assert.Equal(order.QuotesMade, order.Quotes.Count);
            }
        },
        iter: 300);

    [Fact]
    public void A_line_that_is_not_what_the_rules_ask_needs_a_reason()
    {
        PriceLine rule = new("base", "Grinding", 300) { RuleAmount = 300 };

        Assert.True(Quote(rule).Succeeded);
        Assert.Equal("noReason", Quote(rule with { Amount = 250 }).Refusal!.Code);
        Assert.Equal("noReason", Quote(rule, new PriceLine("own-1", "Old friend", -20)).Refusal!.Code);
        Assert.Equal("noReason", Quote(rule, new PriceLine("rush", "Rush", 90) { RuleAmount = 90, IsStruck = true }).Refusal!.Code);
        var quoted = Quote(rule with { Amount = 250, Reason = "agreed" }, new PriceLine("own-1", "Old friend", -20) { Reason = "tenth cam" }, new PriceLine("rush", "Rush", 90) { RuleAmount = 90, IsStruck = true, Reason = "our delay" });
        Assert.Equal(230, quoted.Value!.Price);
        Assert.Equal(["base", "own-1"], quoted.Value.CurrentQuote!.Charged.Select(line => line.Code));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_line_says_what_it_is_for(string text) =>
        Assert.Equal("noText", Quote(new PriceLine("base", "Grinding", 300) { RuleAmount = 300 }, new PriceLine("own-1", text, 20) { Reason = "as agreed" }).Refusal!.Code);

    [Theory]
    [InlineData(-1, "badValidity")]
    [InlineData(0, null)]
    [InlineData(365, null)]
    [InlineData(366, "badValidity")]
    public void A_price_stands_until_today_at_least_and_a_year_at_most(int days, string? refusal) =>
        Assert.Equal(refusal, SomeOrders.New().Quote(Offer(300) with { ValidUntil = Today.AddDays(days) }, Today, "Desk", TestShop.Now).Refusal?.Code);

    [Fact]
    public void A_price_can_be_accepted_on_its_last_day_and_not_the_day_after()
    {
        var order = SomeOrders.New();
        order.Quote(Offer(300), Today, "Desk", TestShop.Now);
        var last = order.CurrentQuote!.ValidUntil;

        Assert.Equal("wrongState", order.Expire(last, "GrindShop", TestShop.Now).Refusal!.Code);
        Assert.Equal("expired", order.Accept(last.AddDays(20), last.AddDays(1), "Desk", TestShop.Now).Refusal!.Code);
        Assert.True(order.Expire(last.AddDays(1), "GrindShop", TestShop.Now).Succeeded);
        Assert.True(order.Quote(Offer(310) with { ValidUntil = last.AddDays(31) }, last.AddDays(1), "Desk", TestShop.Now).Succeeded);
        Assert.Equal(("Q1-2", 310m), (order.CurrentQuote!.Number, order.Price));
        Assert.True(order.Accept(last.AddDays(31), last.AddDays(31), "Una", TestShop.Now, "Una Thornquist").Succeeded);
    }

    [Fact]
    public void Deposits_add_up_once_each_and_no_more_is_given_back_than_came_in()
    {
        var order = SomeOrders.Accepted();
        DepositEntry first = new(100, PaidBy.Check, Today, "no. 5110", "key-1");

        Assert.True(order.RecordDeposit(first, Today, "Desk", TestShop.Now).Succeeded);
        Assert.True(order.RecordDeposit(first, Today, "Desk", TestShop.Now).Succeeded);
        Assert.Equal((100m, 200m), (order.Received, order.Balance));
        Assert.Equal("badAmount", order.RecordDeposit(first with { Amount = -100.01m, CommandKey = "key-2" }, Today, "Desk", TestShop.Now).Refusal!.Code);
        Assert.Equal("badAmount", order.RecordDeposit(first with { Amount = 1.005m, CommandKey = "key-2" }, Today, "Desk", TestShop.Now).Refusal!.Code);
        Assert.Equal("badDay", order.RecordDeposit(first with { PaidOn = Today.AddDays(1), CommandKey = "key-2" }, Today, "Desk", TestShop.Now).Refusal!.Code);
        Assert.True(order.RecordDeposit(first with { Amount = -100, CommandKey = "key-2" }, Today, "Desk", TestShop.Now).Succeeded);
        Assert.Equal((0m, 2), (order.Received, order.Deposits.Count));
    }

    private static Outcome<Order> Quote(params PriceLine[] lines) => SomeOrders.New().Quote(Offer(0) with { Lines = lines }, Today, "Desk", TestShop.Now);

    private static QuoteOffer Offer(decimal amount) => QuoteOffer.Of(SomeOrders.Blank, [new PriceLine("base", "Grinding", amount)], Today);

    private static void Do(Order order, Act act)
    {
        var at = TestShop.Now.AddHours(order.Changes);
        CamEntry entry = new() { Spec = Wishes.Street, Quantity = 2 };
        _ = act switch
        {
            Act.Correct => order.Correct(Wishes.Street with { Notes = "Other." }, SomeOrders.Answer, "Desk", at, "Corrected."),
            Act.Quote => order.Quote(Offers(order, 300), Today, "Desk", at),
            Act.QuoteOtherwise => order.Quote(Offers(order, 280), Today, "Desk", at),
            Act.AddCam => order.AddCam(entry, SomeOrders.Answer, "Desk", at),
            Act.SetPieces => order.SetWork(1, entry, SomeOrders.Answer, "Desk", at),
            Act.RemoveCam => order.RemoveCam(order.Cams[^1].Ordinal, "Desk", at),
            Act.Ask => order.AskCustomer("Which gear?", "Desk", at),
            Act.Expire => order.Expire(Today.AddDays(31), "GrindShop", at),
            Act.Accept => order.Accept(Today.AddDays(20), Today, "Desk", at),
            Act.AcceptOnline => order.Accept(Today.AddDays(20), Today, "Una", at, "Una Thornquist"),
            Act.Decline => order.Decline("No time.", "Desk", at),
            Act.DeclineOnline => order.DeclineByCustomer("Una", "", at),
            _ => order.RecordDeposit(new DepositEntry(50, PaidBy.Cash, Today, "", $"key-{order.Changes}"), Today, "Desk", at),
        };
    }

    private static QuoteOffer Offers(Order order, decimal amount) => Offer(amount) with { Parts = order.Cams.ToDictionary(cam => cam.Ordinal, _ => SomeOrders.Blank) };

    private static void StartsWith(List<string> before, List<string> now)
    {
        Assert.Equal(before, now.Take(before.Count));
        before.AddRange(now.Skip(before.Count));
    }

    private static string Json<T>(T value) => System.Text.Json.JsonSerializer.Serialize(value, ShopJson.Options);
}
