using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Planning;
using TestShelf = GrindShop.Shop.Tests.Feasibility.Shelf;

namespace GrindShop.Shop.Tests.Planning;

public class ShelfPlanTests
{
    private static readonly IReadOnlyList<PreparedBlank> Blanks = [.. TestShelf.Blanks.Where(blank => blank.Part.EngineFamily.Code == "RV8-R")];
    private static readonly IReadOnlyList<PreparedBlank> Milled = [.. Blanks.Where(blank => blank.Part.Nominal is not null)];

    [Fact]
    public void Wishes_for_two_blanks_own_grinds_put_these_two_on_the_shelf()
    {
        var (one, other) = (Milled[0], Milled.First(blank => blank.Part.CaseDepthIn is not null));
        var plan = Plan([Wish(one, "C1", 3, "street"), Wish(other, "C2", 2, "race")], today: one.Part.PartNumber);

        Assert.Single(plan.Today.Sites);
        Assert.Equal(.6, plan.Today.ServedShare, 9);
        Assert.Equal(1, plan.Best[1].ServedShare);
        Assert.True(plan.Best[1].Dollars < plan.Today.Dollars);
        Assert.Null(plan.Serve(plan.Today)[1].Blank);
        Assert.NotNull(plan.Serve(plan.Best[1])[1].Blank);
        Assert.All(plan.Plans, proof => Assert.True(proof.Proven));
    }

    [Fact]
    public void A_part_that_is_only_used_up_lies_on_todays_shelf_and_on_no_best_one()
    {
        var (old, other) = (Milled[0], Milled.First(blank => blank.Part.CaseDepthIn is not null));
        ShelfDemand[] wishes = [Wish(old, "C1", 3, "street"), Wish(other, "C2", 2, "race")];
        Assert.Contains(old, Plan(wishes).Best[^1].Sites.Select(site => Blanks[site]));

        var plan = Plan(wishes, today: old.Part.PartNumber, usedUp: old.Part.PartNumber);

        Assert.Equal([old], plan.Today.Sites.Select(plan.Blank));
        Assert.All(plan.Best, shelf => Assert.DoesNotContain(old, shelf.Sites.Select(plan.Blank)));
        var without = ShelfPlan.Make(plan.Case with { Blanks = [.. Blanks.Where(blank => blank != old)] }, TestShelf.Rules);
        Assert.Equal(without.Plans.Select(proof => (proof.Cost, proof.Bound)), plan.Plans.Select(proof => (proof.Cost, proof.Bound)));
        Assert.Equal(without.Best.Select(shelf => shelf.Dollars), plan.Best.Select(shelf => shelf.Dollars));
    }

    [Fact]
    public void Growth_of_a_use_weighs_its_wishes()
    {
        ShelfDemand[] wishes = [Wish(Milled[0], "C1", 1, "street"), Wish(Milled[^1], "C2", 1, "race")];
        var (plain, grown) = (Plan(wishes), Plan(wishes, growth: new() { ["race"] = 3 }));

        Assert.Equal(plain.Best[0].Sites.Select(site => plain.Serve(plain.Best[0]).Count(served => served.Blank is not null)), [1]);
        Assert.NotNull(grown.Serve(grown.Best[0])[1].Blank);
        Assert.Equal(.75, grown.Best[0].ServedShare, 9);
    }

    [Fact]
    public void The_same_case_gets_the_same_plan()
    {
        ShelfDemand[] wishes = [.. Milled.Select((blank, i) => Wish(blank, $"C{i}", 1 + i % 3, "street"))];

        Assert.Equal(Plan(wishes).Best.SelectMany(shelf => shelf.Sites), Plan(wishes).Best.SelectMany(shelf => shelf.Sites));
    }

    [Theory]
    [InlineData(OrderState.Shipped, Verdict.FromStock, DemandKind.Ordered)]
    [InlineData(OrderState.Accepted, Verdict.SpecialOrder, DemandKind.Ordered)]
    [InlineData(OrderState.Declined, Verdict.FromStock, DemandKind.Unmet)]
    [InlineData(OrderState.Expired, null, DemandKind.Unmet)]
    [InlineData(OrderState.New, Verdict.NotGrindable, DemandKind.Unmet)]
    [InlineData(OrderState.Quoted, Verdict.FromStock, DemandKind.Open)]
    [InlineData(OrderState.Cancelled, Verdict.FromStock, null)]
    public void What_kind_of_demand_an_order_is(OrderState state, Verdict? verdict, DemandKind? expected) => Assert.Equal(expected, ShelfDemand.KindOf(state, verdict));

    [Fact]
    public void A_region_holds_the_blanks_own_grind_and_what_the_judge_accepts()
    {
        foreach (var blank in Milled)
        {
            var (region, nominal) = (BlankRegion.Of(blank, blank.Part.EngineFamily, TestShelf.Rules, .040), TestShelf.Nominal(blank));
            Assert.True(region.Holds(nominal.Intake.DurationAt050CrankDeg, nominal.LobeSeparationCamDeg), blank.Part.PartNumber);
            Assert.False(region.Holds(nominal.Intake.DurationAt050CrankDeg, nominal.LobeSeparationCamDeg + 40));
            var reach = region.Steps.Single(step => step.DurationAt050CrankDeg == nominal.Intake.DurationAt050CrankDeg).SeparationReachCamDeg;
            var narrower = BlankRegion.Of(blank, blank.Part.EngineFamily, TestShelf.Rules, .010);
            Assert.All(narrower.Steps, step => Assert.True(step.SeparationReachCamDeg <= region.Steps.Single(one => one.DurationAt050CrankDeg == step.DurationAt050CrankDeg).SeparationReachCamDeg + .1));
            Assert.True(reach > 0);
        }
    }

    private static ShelfPlan Plan(ShelfDemand[] wishes, string today = "", Dictionary<string, double>? growth = null, string usedUp = "") =>
        ShelfPlan.Make(new ShelfCase(wishes, Blanks, [today], new ServingWeights { MostCenterlineCrankDeg = 0, MostDurationCrankDeg = 0 }, growth ?? []) { UsedUp = [usedUp] }, TestShelf.Rules);

    private static ShelfDemand Wish(PreparedBlank blank, string number, int quantity, string use) =>
        new(number, DateTimeOffset.UnixEpoch, DemandKind.Ordered, quantity, use, TestShelf.Nominal(blank));
}
