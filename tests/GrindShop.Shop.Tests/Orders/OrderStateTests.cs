using CsCheck;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Orders;

/// <summary>Whatever is tried in whatever order, an order walks its states one by one and every step leaves one line.</summary>
public class OrderStateTests
{
    public enum Act
    {
        Correct,
        Quote,
        QuoteNothing,
        QuoteWrongBlank,
        Accept,
        AcceptForYesterday,
        Decline,
        DeclineWithoutReason,
        Start,
        Step,
    }

    [Fact]
    public void No_state_is_skipped_and_every_act_adds_one_line_or_changes_nothing() => Gen.Frequency((3, Gen.Enum<Act>()), (2, Gen.OneOf(Act.Quote, Act.Accept, Act.Start, Act.Step))).Array[1, 25].Sample(
        acts =>
        {
            var walk = new Walk();
            foreach (var act in acts)
                walk.Try(act);
        },
        iter: 400);

    [Fact]
    public void Usual_way_ends_shipped_with_a_line_for_each_state()
    {
        var walk = new Walk();
        foreach (var act in new[] { Act.Quote, Act.Accept, Act.Start, Act.Step, Act.Step, Act.Step, Act.Step })
            walk.Try(act);

        Assert.Equal(
            [OrderEventKind.Received, OrderEventKind.Quoted, OrderEventKind.Accepted, OrderEventKind.PutToWork, OrderEventKind.Shipped],
            walk.Order.History.Select(line => line.Kind));
    }

    [Fact]
    public void Correction_takes_the_price_away()
    {
        var order = SomeOrders.New();
        order.Quote(SomeOrders.Blank, SomeOrders.Lines, "Desk", TestShop.Now);

        order.Correct(Wishes.Street, SomeOrders.Answer, "Desk", TestShop.Now, "Longer.");

        Assert.Equal((OrderState.New, 0m, null), (order.State, order.Price, order.First.QuotedPartNumber));
        Assert.Empty(order.PriceLines);
    }

    [Fact]
    public void Price_stands_on_a_blank_that_was_judged_and_can_become_the_cam()
    {
        var wrong = SomeOrders.Answer.Blanks.First(blank => !blank.Usable);

        Assert.Equal("doesNotFit", SomeOrders.New().Quote(wrong.PartNumber, SomeOrders.Lines, "Desk", TestShop.Now).Refusal!.Code);
        Assert.Equal("notJudged", SomeOrders.New().Quote("NO-SUCH", SomeOrders.Lines, "Desk", TestShop.Now).Refusal!.Code);
    }

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(731, true)]
    [InlineData(732, false)]
    public void Promise_lies_between_today_and_two_years(int days, bool taken)
    {
        var order = SomeOrders.New();
        order.Quote(SomeOrders.Blank, SomeOrders.Lines, "Desk", TestShop.Now);

        Assert.Equal(taken, order.Accept(SomeOrders.Today.AddDays(days), SomeOrders.Today, "Desk", TestShop.Now).Succeeded);
    }

    /// <summary>The order beside what the trade allows: the state, and the acts that leave it.</summary>
    private sealed class Walk
    {
        private Job? _job;

        public Order Order { get; } = SomeOrders.New();

        public void Try(Act act)
        {
            var (allowed, next) = (Allows(act), Next(act));
            var (before, lines) = (Snapshot(), Order.History.Count);
            Assert.Equal(allowed, Do(act));
            if (!allowed)
                Assert.Equal(before, Snapshot());
            else
                Assert.Equal((next, lines + (act == Act.Step && next == OrderState.InWork ? 0 : 1)), (Order.State, Order.History.Count));
            Assert.Equal(Order.Changes, Order.History.Count);
        }

        private bool Allows(Act act) => act switch
        {
            Act.Correct or Act.Quote or Act.Decline => Order.State is OrderState.New or OrderState.Quoted,
            Act.Accept => Order.State == OrderState.Quoted,
            Act.Start => Order.State == OrderState.Accepted,
            Act.Step => Order.State == OrderState.InWork,
            _ => false,
        };

        private OrderState Next(Act act) => act switch
        {
            Act.Correct => OrderState.New,
            Act.Quote => OrderState.Quoted,
            Act.Accept => OrderState.Accepted,
            Act.Decline => OrderState.Declined,
            Act.Step when _job?.StepsDone == _job?.Steps.Count - 1 => OrderState.Shipped,
            _ => OrderState.InWork,
        };

        private bool Do(Act act) => act switch
        {
            Act.Correct => Order.Correct(Wishes.Street, SomeOrders.Answer, "Desk", TestShop.Now, "Corrected.").Succeeded,
            Act.Quote => Order.Quote(SomeOrders.Blank, SomeOrders.Lines, "Desk", TestShop.Now).Succeeded,
            Act.QuoteNothing => Order.Quote(SomeOrders.Blank, [], "Desk", TestShop.Now).Succeeded,
            Act.QuoteWrongBlank => Order.Quote("NO-SUCH", SomeOrders.Lines, "Desk", TestShop.Now).Succeeded,
            Act.Accept => Order.Accept(SomeOrders.Today, SomeOrders.Today, "Desk", TestShop.Now).Succeeded,
            Act.AcceptForYesterday => Order.Accept(SomeOrders.Today.AddDays(-1), SomeOrders.Today, "Desk", TestShop.Now).Succeeded,
            Act.Decline => Order.Decline("No blank.", "Desk", TestShop.Now).Succeeded,
            Act.DeclineWithoutReason => Order.Decline("  ", "Desk", TestShop.Now).Succeeded,
            Act.Start => Start(),
            _ => _job?.Current is { } step && _job.Complete(step.Stage, "Floor", TestShop.Now, $"key-{step.Ordinal}").Succeeded,
        };

        private bool Start()
        {
            var blank = Shelf.Blank(SomeOrders.Blank).Part;
            var opened = Job.Open(Order, Order.First, new BlankLotClaim(1, blank.PartNumber, "LOT"), Stages.RouteFor(blank, null), "Desk", TestShop.Now);
            _job = opened.Value ?? _job;
            return opened.Succeeded;
        }

        private string Snapshot() => System.Text.Json.JsonSerializer.Serialize(new { Order, Done = _job?.StepsDone, Lines = _job?.History.Count }, ShopJson.Options);
    }
}
