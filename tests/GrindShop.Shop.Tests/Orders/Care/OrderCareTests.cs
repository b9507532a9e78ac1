using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;

namespace GrindShop.Shop.Tests.Orders.Care;

/// <summary>Who has an order, until when it rests, whom to call: the rules alone.</summary>
public class OrderCareTests
{
    private static readonly ShopSettings Shop = Shelf.Rules.Settings;
    private static readonly DateTime ShopNow = Shop.ShopTime(TestShop.Now);

    [Fact]
    public void Each_change_of_hands_is_one_line_that_says_from_whom_to_whom()
    {
        var order = SomeOrders.New();
        var lines = order.History.Count;

        order.Assign("Imka", "Imka", TestShop.Now);
        order.Assign("Imka", "Imka", TestShop.Now);
        order.Assign("Piers", "Imka", TestShop.Now);
        order.Assign(null, "Piers", TestShop.Now);

        Assert.Equal(["Taken.", "Given to Piers from Imka.", "Given back by Piers: nobody has it."], order.History.Skip(lines).Select(line => line.What));
        Assert.Equal((null, order.History.Count), (order.AssignedTo, order.Changes));
    }

    [Fact]
    public void Snoozed_order_comes_back_by_itself_when_its_time_has_come()
    {
        var order = SomeOrders.New();

        Assert.True(order.Snooze(ShopNow.AddHours(3), " waits for his engine ", Shop, "Imka", TestShop.Now).Succeeded);

        Assert.True(order.IsSnoozed(TestShop.Now.AddMinutes(179)));
        Assert.False(order.IsSnoozed(TestShop.Now.AddMinutes(180)));
        Assert.Equal((OrderEventKind.Snoozed, "Imka", "Snoozed until 2026-03-11 13:30: waits for his engine"), (order.History[^1].Kind, order.History[^1].By, order.History[^1].What));
    }

    /// <summary>
    /// The shop stands in the central zone of the United States. On March 11, 2026 its clock is 5 hours behind UTC, after the change back on November 1 it is 6
    /// (second Sunday of March, first Sunday of November: Energy Policy Act of 2005, section 110; from memory).
    /// </summary>
    [Theory]
    [InlineData("2026-03-12T08:00", "2026-03-12T13:00Z")]
    [InlineData("2026-10-31T08:00", "2026-10-31T13:00Z")]
    [InlineData("2026-11-02T08:00", "2026-11-02T14:00Z")]
    [InlineData("2027-03-14T02:30", "2027-03-14T08:30Z")]
    public void Time_is_meant_by_the_clock_on_the_shops_wall(string until, string utc) =>
        Assert.Equal(DateTimeOffset.Parse(utc, null), Shop.Moment(DateTime.Parse(until, null)));

    [Theory]
    [InlineData(0, "why", "past")]
    [InlineData(-1, "why", "past")]
    [InlineData(400 * 24 * 60, "why", "farOff")]
    [InlineData(60, "  ", "noReason")]
    [InlineData(60, "bell\a", "badText")]
    public void Snooze_without_sense_is_refused_and_changes_nothing(int minutes, string why, string code)
    {
        var order = SomeOrders.New();
        var before = order.Changes;

        Assert.Equal(code, order.Snooze(ShopNow.AddMinutes(minutes), why, Shop, "Imka", TestShop.Now).Refusal!.Code);
        Assert.Equal((before, null), (order.Changes, order.SnoozedUntil));
    }

    [Theory]
    [InlineData("0001-01-01T00:00", "past")]
    [InlineData("9999-12-31T23:59", "farOff")]
    public void Ends_of_the_calendar_are_refused_too(string until, string code) =>
        Assert.Equal(code, SomeOrders.New().Snooze(DateTime.Parse(until, null), "why", Shop, "Imka", TestShop.Now).Refusal!.Code);

    [Fact]
    public void Past_time_is_refused_with_both_times_in_words()
    {
        var refusal = SomeOrders.New().Snooze(new DateTime(2026, 3, 11, 9, 0, 0), "why", Shop, "Imka", TestShop.Now).Refusal!;

        Assert.Equal("2026-03-11 09:00 has passed; in the shop it is 2026-03-11 10:30. Choose a time to come.", refusal.Reason);
    }

    [Fact]
    public void Whatever_changes_the_state_wakes_the_order()
    {
        var order = Snoozed();

        order.Quote(SomeOrders.Blank, SomeOrders.Lines, "Desk", TestShop.Now);

        Assert.Equal((null, null), (order.SnoozedUntil, order.SnoozeReason));
    }

    [Fact]
    public void Woken_by_hand_once_and_not_twice()
    {
        var order = Snoozed();

        Assert.True(order.Wake("Imka", TestShop.Now).Succeeded);
        Assert.Equal("awake", order.Wake("Imka", TestShop.Now).Refusal!.Code);
    }

    [Fact]
    public void Closed_order_has_nobody_to_look_after_it()
    {
        var order = SomeOrders.New();
        order.Decline("No blank.", "Desk", TestShop.Now);

        Assert.Equal("wrongState", order.Assign("Imka", "Imka", TestShop.Now).Refusal!.Code);
        Assert.Equal("wrongState", order.Snooze(ShopNow.AddDays(1), "why", Shop, "Imka", TestShop.Now).Refusal!.Code);
    }

    [Fact]
    public void Call_that_nobody_answers_comes_up_again_and_is_made_once()
    {
        var order = WithCall();
        var call = order.Calls[0];

        Assert.True(order.CallTried(call.Id, 0, "Imka", TestShop.Now.AddHours(1)).Succeeded);
        Assert.Equal("stale", order.CallTried(call.Id, 0, "Piers", TestShop.Now.AddHours(1)).Refusal!.Code);
        order.Assign("Hollis", "Hollis", TestShop.Now.AddHours(1));
        Assert.StartsWith("Imka has just tried", order.CallTried(call.Id, 0, "Piers", TestShop.Now.AddHours(1)).Refusal!.Reason, StringComparison.Ordinal);
        Assert.Equal((1, TestShop.Now.AddHours(1) + CallBack.TryAgainAfter), (call.Tries, call.DueAt));
        Assert.True(order.CallDone(call.Id, "Piers", TestShop.Now.AddHours(2)).Succeeded);

        Assert.Equal("Piers has made this call already.", order.CallDone(call.Id, "Imka", TestShop.Now.AddHours(2)).Refusal!.Reason);
        Assert.Equal(
            ["To be called back from 2026-03-11 11:30 at 555-555-0199: the deposit", "Called back at 555-555-0199, no answer (first try): the deposit", "Called back at 555-555-0199: the deposit"],
            order.History.Where(line => line.Kind != OrderEventKind.Assigned).TakeLast(3).Select(line => line.What));
    }

    [Fact]
    public void Same_key_plans_one_call()
    {
        var order = WithCall();

        Assert.True(order.PlanCall(Entry(ShopNow.AddHours(1)), Shop, "Imka", TestShop.Now).Succeeded);

        Assert.Single(order.Calls);
    }

    [Theory]
    [InlineData(-5, "555-0199", "the deposit", "past")]
    [InlineData(60, "soon", "the deposit", "noNumber")]
    [InlineData(60, "555-0199", " ", "noReason")]
    [InlineData(60, "555-0199", "a\0b", "badText")]
    public void Call_without_time_number_or_matter_is_refused(int minutes, string number, string about, string code) =>
        Assert.Equal(code, SomeOrders.New().PlanCall(new CallEntry(ShopNow.AddMinutes(minutes), number, about, "key"), Shop, "Imka", TestShop.Now).Refusal!.Code);

    private static Order Snoozed()
    {
        var order = SomeOrders.New();
        Assert.True(order.Snooze(ShopNow.AddDays(1), "why", Shop, "Imka", TestShop.Now).Succeeded);
        return order;
    }

    private static Order WithCall()
    {
        var order = SomeOrders.New();
        Assert.True(order.PlanCall(Entry(ShopNow.AddHours(1)), Shop, "Imka", TestShop.Now).Succeeded);
        return order;
    }

    private static CallEntry Entry(DateTime due) => new(due, "555-555-0199", "the deposit", "key");
}
