using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.People;

namespace GrindShop.Shop.Tests.Demo;

public class DemoScenarioTests
{
    [Fact]
    public void Files_are_free_of_problems() => Assert.Empty(SeedFiles.Reading.Problems.Select(problem => problem.ToString()));

    [Fact]
    public void Families_of_every_kind_of_engine_are_there()
    {
        var families = SeedFiles.Scenario.Families;

        Assert.True(families.Count >= 8);
        Assert.Equal(Enum.GetValues<GearPosition>().Order(), families.Select(family => family.Gear).Distinct().Order());
        Assert.Contains(families, family => family is { HasSides: true, Kind: EngineKind.OverheadCamV });
        Assert.Contains(families, family => family is { Kind: EngineKind.PushrodInline, Cylinders: 6 });
        Assert.Contains(families, family => family is { Kind: EngineKind.PushrodInline, Cylinders: 4 });
        Assert.Contains(families, family => family is { Cylinders: 6, FiringIntervalsCrankDeg: [150, 90, ..] });
        Assert.Contains(families, family => family.OtherFiringOrders.Length > 0);
    }

    [Fact]
    public void Bearing_bores_leave_every_blank_of_a_family_a_base_circle_it_can_be_ground_to()
    {
        foreach (var part in SeedFiles.Scenario.Blanks)
            if (part.Nominal is { } nominal && part.EngineFamily.BoreLimitIn(Math.Max(nominal.Intake.LobeLiftIn, nominal.Exhaust.LobeLiftIn)) is { } limit)
                Assert.True(limit >= nominal.BaseCircleDiameterIn - 1e-9 && limit > part.LeastBaseCircleIn, $"{part.PartNumber}: {limit:0.000} in");
    }

    /// <summary>Two cylinders of a V engine that share a crank pin fire a bank angle apart, whichever of them leads (geometry).</summary>
    [Fact]
    public void Pushrod_v8_firing_orders_suit_a_crank_whose_pins_are_shared_by_pairs()
    {
        foreach (var family in SeedFiles.Scenario.Families.Where(family => family is { Kind: EngineKind.PushrodV, Cylinders: 8 }))
            foreach (var text in family.OtherFiringOrders.Prepend(family.FiringOrder))
            {
                var schedule = FiringSchedule.EvenFire(FiringOrder.Parse(text, 8).Required());
                var (left, right) = (Enumerable.Range(1, 8).Where(c => family.BankOfCylinder[c - 1] == 0), Enumerable.Range(1, 8).Where(c => family.BankOfCylinder[c - 1] == 1));
                var leads = left.Zip(right).Select(pair => (schedule.FiresAt(pair.First).Value - schedule.FiresAt(pair.Second).Value + 720) % 360).Distinct();
                Assert.Single(leads);
            }
    }

    [Fact]
    public void Every_alloy_and_hardening_of_the_trade_is_in_the_catalog()
    {
        var blanks = SeedFiles.Scenario.Blanks;

        Assert.True(blanks.Count >= 60);
        Assert.InRange(blanks.Count(part => part.EngineFamily.Code == SeedFiles.Scenario.Families[0].Code), 10, 14);
        Assert.All(blanks.GroupBy(part => part.EngineFamily.Code), family => Assert.InRange(family.Count(), 4, 14));
        Assert.Equal(Enum.GetValues<BlankAlloy>().Order(), blanks.Select(part => part.Alloy).Distinct().Order());
        Assert.Equal(Enum.GetValues<Hardening>().Order(), blanks.Select(part => part.Hardening).Distinct().Order());
        Assert.Equal(Enum.GetValues<BlankForm>().Order(), blanks.Select(part => part.Form).Distinct().Order());
        Assert.Equal(Enum.GetValues<CamGear>().Order(), blanks.Select(part => part.Gear).Distinct().Order());
    }

    /// <summary>Depths of case as the trade has them (common practice, no source).</summary>
    [Fact]
    public void Cases_are_as_deep_as_their_process_makes_them()
    {
        foreach (var part in SeedFiles.Scenario.Blanks.Where(part => part.CaseDepthIn is not null))
        {
            var (least, most) = (part.Alloy, part.Hardening) switch
            {
                (BlankAlloy.Steel8660, _) => (.375, .5),
                (_, Hardening.Carburized) => (.045, .070),
                _ => (.18, .30),
            };
            Assert.InRange(part.CaseDepthIn!.Value, least, most);
        }
    }

    [Fact]
    public void Flat_tappets_run_on_iron_only()
    {
        Assert.All(SeedFiles.Scenario.Blanks.Where(part => part.Nominal?.FollowerKind == FollowerKind.Flat), part => Assert.Equal(BlankAlloy.HardenableIron, part.Alloy));
        Assert.All(SeedFiles.Scenario.Rules.OfType<LifterRule>().Where(rule => rule.Lifter.ToString().EndsWith("Flat", StringComparison.Ordinal)),
            rule => Assert.Equal(rule.Alloy == BlankAlloy.HardenableIron ? RuleVerdict.Ok : RuleVerdict.No, rule.Verdict));
    }

    /// <summary>The gear table (common practice, no source): steel in one piece against iron fails, against nitrocarburized steel is doubtful.</summary>
    [Fact]
    public void Gear_table_is_the_trades()
    {
        var gears = SeedFiles.Scenario.Rules.OfType<GearRule>().ToList();
        foreach (var rule in gears)
            Assert.Equal(
                (rule.CamGear, rule.DistributorGear) switch
                {
                    (CamGear.PressedIron, _) when rule.Position == GearPosition.Front => RuleVerdict.No,
                    (CamGear.Steel, DistributorGear.Iron) => RuleVerdict.No,
                    (CamGear.Steel, DistributorGear.NitrocarburizedSteel) => RuleVerdict.Caution,
                    _ => RuleVerdict.Ok,
                },
                rule.Verdict);
        Assert.Equal(32, gears.Count);
        Assert.All(gears, rule => Assert.EndsWith(".", rule.Reason));
    }

    [Fact]
    public void Every_blank_has_a_price_for_a_lifter_that_runs_on_it()
    {
        var (prices, lifters) = (SeedFiles.Scenario.Prices.BasePrices, SeedFiles.Scenario.Rules.OfType<LifterRule>());
        foreach (var part in SeedFiles.Scenario.Blanks)
            Assert.Contains(prices, price => price.EngineFamily == part.EngineFamily.Code
                && lifters.Any(rule => rule.Alloy == part.Alloy && rule.Lifter == price.Lifter && rule.Verdict != RuleVerdict.No));
    }

    [Fact]
    public void Orders_stand_in_every_state_and_most_have_shipped()
    {
        var orders = SeedFiles.Scenario.Orders;

        Assert.True(orders.Count >= 200);
        Assert.Equal(Enum.GetValues<OrderState>().Order(), orders.Select(order => order.State).Distinct().Order());
        Assert.Equal(Enum.GetValues<WorkKind>().Order(), orders.SelectMany(order => order.Cams).Select(cam => cam.Entry.Kind).Distinct().Order());
        Assert.Contains(orders, order => order.Cams.Count > 1);
        Assert.Contains(orders, order => order.First.Entry.Quantity > 1);
        Assert.Equal(Enum.GetValues<OrderChannel>().Order(), orders.Select(order => order.Channel).Distinct().Order());
        Assert.InRange(orders.Count(order => order.State == OrderState.Shipped) / (double)orders.Count, .55, .65);
    }

    [Fact]
    public void People_of_every_role_can_sign_in()
    {
        var people = SeedFiles.Scenario.People.CountBy(person => person.Role).ToDictionary();

        Assert.Equal((1, 2, 3), (people[Roles.Owner], people[Roles.Desk], people[Roles.Floor]));
        Assert.All(SeedFiles.Scenario.People, person => Assert.EndsWith(".example", person.UserName));
    }

    [Fact]
    public void Customers_are_reachable_only_at_addresses_and_numbers_kept_for_examples()
    {
        Assert.Equal(60, SeedFiles.Scenario.Customers.Count);
        Assert.All(SeedFiles.Scenario.Customers, customer => Assert.Matches(@"@([a-z0-9-]+\.)*example\.(com|org|net)$", customer.Email));
        Assert.All(SeedFiles.Scenario.Customers, customer => Assert.Matches(@"^\(555\) 555-01\d\d$", customer.Phone));
    }
}
