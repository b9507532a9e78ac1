using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;

namespace GrindShop.Shop.Tests.Routing;

public class JobTests
{
    private static readonly Vendor HeatTreater = SeedFiles.Scenario.Vendors.First(vendor => vendor.Kind == VendorKind.HeatTreater);

    private readonly Job _job = Open(Shelf.Blank("RV8R-516-08").Part);

    [Fact]
    public void Hardened_blank_is_ground_finished_inspected_and_shipped() =>
        Assert.Equal([Stage.Grind, Stage.Finish, Stage.Inspect, Stage.Ship], _job.Steps.Select(step => step.Stage));

    [Fact]
    public void Soft_blank_goes_by_the_heat_treater()
    {
        var route = Stages.RouteFor(Shelf.Blank("RV8R-862-14").Part, HeatTreater);

        Assert.Equal(
            [Stage.RoughGrind, Stage.HeatTreatOut, Stage.HeatTreatBack, Stage.Straighten, Stage.FinishGrind, Stage.Finish, Stage.Inspect, Stage.Ship],
            route.Select(step => step.Stage));
        Assert.Equal([Stage.HeatTreatOut, Stage.HeatTreatBack], route.Where(step => step.Vendor == HeatTreater).Select(step => step.Stage));
    }

    [Fact]
    public void Every_blank_of_the_demo_ends_at_ship_by_its_hardness() => Assert.All(SeedFiles.Scenario.Blanks, part =>
    {
        var route = Stages.RouteFor(part, HeatTreater);
        Assert.Equal(Stage.Ship, route[^1].Stage);
        Assert.Equal(part.Hardening == Hardening.Soft, route.Any(step => step.Stage == Stage.HeatTreatBack));
    });

    [Fact]
    public void Steps_are_done_in_order_each_with_who_and_when()
    {
        foreach (var (index, stage) in _job.Steps.Select(step => step.Stage).ToList().Index())
        {
            var step = Complete(stage, $"key-{index}").Value!;
            Assert.Equal(("Floor", TestShop.Now), (step.DoneBy, step.DoneAt!.Value));
            Assert.Equal((index + 1, index + 2), (_job.StepsDone, _job.History.Count));
        }
        Assert.Equal((TestShop.Now, OrderState.Shipped), (_job.ShippedAt!.Value, _job.Order.State));
    }

    [Fact]
    public void Step_that_is_not_next_is_refused_and_says_what_is() => Refused(Complete(Stage.Inspect, "key"), "outOfOrder", "First comes: grind.");

    [Fact]
    public void Step_of_another_route_is_refused() => Refused(Complete(Stage.Straighten, "key"), "notOnRoute", "Straighten is not on the route");

    [Fact]
    public void Step_done_before_is_refused_and_says_by_whom()
    {
        Complete(Stage.Grind, "key");

        Refused(Complete(Stage.Grind, "other"), "alreadyDone", "already done by Floor. Next is: finish.");
    }

    [Fact]
    public void Same_command_again_answers_the_same_and_changes_nothing()
    {
        var first = Complete(Stage.Grind, "key");
        var again = _job.Complete(Stage.Grind, "Somebody", TestShop.Now.AddHours(1), "key");

        Assert.Same(first.Value, again.Value);
        Assert.Equal((1, 2), (_job.StepsDone, _job.History.Count));
        Refused(Complete(Stage.Finish, "key"), "keyReused", "another step");
    }

    [Fact]
    public void Nothing_is_left_after_shipping()
    {
        foreach (var stage in _job.Steps.Select(step => step.Stage).ToList())
            Complete(stage, $"{stage}");

        Refused(Complete(Stage.Ship, "later"), "shipped", "has shipped");
    }

    [Fact]
    public void Cam_waits_at_its_stage_since_the_last_step()
    {
        Assert.Equal(TestShop.Now, _job.AtStageSince);

        _job.Complete(Stage.Grind, "Floor", TestShop.Now.AddDays(2), "key");

        Assert.Equal(TestShop.Now.AddDays(2), _job.AtStageSince);
    }

    [Fact]
    public void Order_of_three_pieces_has_three_jobs_and_ships_with_the_last()
    {
        var order = SomeOrders.Accepted(quantity: 3);
        var part = Shelf.Blank(SomeOrders.Blank).Part;
        var jobs = Enumerable.Range(0, 3).Select(_ => Open(order, part).Value!).ToList();

        Assert.Equal(["J1", "J1-2", "J1-3"], jobs.Select(job => job.Code));
        Assert.Equal("allStarted", Open(order, part).Refusal!.Code);
        foreach (var job in jobs)
        {
            Assert.Equal(OrderState.InWork, order.State);
            while (job.Current is { } step)
                Assert.True(job.Complete(step.Stage, "Floor", TestShop.Now, $"{job.Code}-{step.Ordinal}").Succeeded);
        }

        Assert.Equal((OrderState.Shipped, 3), (order.State, order.First.Shipped));
        Assert.Equal(["J1 shipped.", "J1-2 shipped.", "Shipped."], order.History.Select(line => line.What).TakeLast(3));
    }

    private static Job Open(BlankPart part) => Open(SomeOrders.Accepted(), part).Value!;

    private static Outcome<Job> Open(Order order, BlankPart part) =>
        Job.Open(order, order.First, new BlankLotClaim(1, part.PartNumber, "LOT-1"), Stages.RouteFor(part, HeatTreater), "Desk", TestShop.Now);

    private Outcome<JobStep> Complete(Stage stage, string key) => _job.Complete(stage, "Floor", TestShop.Now, key);

    private void Refused(Outcome<JobStep> outcome, string code, string words)
    {
        var (done, lines) = (_job.StepsDone, _job.History.Count);
        Assert.Equal(code, outcome.Refusal!.Code);
        Assert.Contains(words, outcome.Refusal.Reason, StringComparison.Ordinal);
        Assert.Equal((done, lines), (_job.Steps.Count(step => step.IsDone), 1 + done));
    }
}
