using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Feasibility.Rules;

/// <summary>How the owner's rules bear on a cam and a blank. The starting words are common practice, no source.</summary>
public class RuleAdviceTests
{
    private static readonly PreparedBlank Steel = Shelf.Blank("RV8R-516-09"), Ductile = Shelf.Blank("RV8R-AD-05"), NoLobe = Shelf.Blank("RV8R-866-11");

    [Fact]
    public void A_plain_pump_rod_runs_on_ductile_iron_and_wants_care_on_steel()
    {
        Assert.Empty(Shelf.Fit(WithPump(Ductile), Ductile).Cautions);
        var caution = Assert.Single(Shelf.Fit(WithPump(Steel), Steel).Cautions);
        Assert.Equal(("pump/steel5160", RuleVerdict.Caution), (caution.Rule, caution.Verdict));
        Assert.Contains("bronze or composite tip", caution.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blank_without_the_lobe_is_no_blank_for_a_mechanical_pump()
    {
        var fit = Shelf.Fit(WithPump(NoLobe), NoLobe);

        Assert.False(fit.Fits);
        Assert.Contains("no lobe for a mechanical fuel pump", Assert.Single(fit.Reasons), StringComparison.Ordinal);
        Assert.True(Shelf.Fit(Shelf.Nominal(NoLobe), NoLobe).Fits);
        Assert.True(Shelf.Fit(Shelf.Nominal(NoLobe) with { MechanicalFuelPump = false }, NoLobe).Fits);
    }

    [Fact]
    public void A_pump_on_a_cam_that_drives_none_is_a_contradiction()
    {
        var family = Wishes.Family("NV8-C");

        var problem = Assert.Single(SpecCheck.Problems(Wishes.Street with { EngineFamily = family.Code, MechanicalFuelPump = true }, family));

        Assert.Equal("mechanicalFuelPump", problem.Field);
    }

    [Fact]
    public void A_pressed_on_gear_belongs_to_the_rear_whatever_distributor_is_named()
    {
        var front = Wishes.Family("FV8-F");

        Assert.Equal(GearVerdict.No, Shelf.Rules.Gear(front, CamGear.PressedIron, null).Verdict);
        Assert.Equal(GearVerdict.No, Shelf.Rules.Gear(front, CamGear.PressedIron, DistributorGear.Iron).Verdict);
        Assert.Equal(GearVerdict.Ok, Shelf.Rules.Gear(Wishes.MainFamily, CamGear.PressedIron, DistributorGear.Iron).Verdict);
    }

    [Fact]
    public void A_verdict_of_the_owner_replaces_the_starting_one()
    {
        var electricOnly = new PumpRule { Alloy = Steel.Part.Alloy, Verdict = RuleVerdict.No, Reason = "We run no mechanical pump on this." };
        var rules = new ShopRules(Shelf.Rules.Settings, [.. SeedFiles.Scenario.Rules, electricOnly]);

        var fit = FeasibilityJudge.Judge(WithPump(Steel), Steel.Part.EngineFamily, [new StockedBlank(Steel, 1)], rules).Blanks.Single();

        Assert.Equal(electricOnly.Reason, Assert.Single(fit.Reasons));
    }

    [Fact]
    public void A_rule_can_be_a_caution_that_is_said_and_kept()
    {
        var caution = new TradeRule { Kind = TradeRuleKind.NoPumpLobe, Verdict = RuleVerdict.Caution, Reason = "Ask the grinder first." };
        var rules = new ShopRules(Shelf.Rules.Settings, [.. SeedFiles.Scenario.Rules, caution]);

        var answer = FeasibilityJudge.Judge(WithPump(NoLobe), NoLobe.Part.EngineFamily, [new StockedBlank(NoLobe, 1)], rules);

        Assert.Equal("Ask the grinder first.", Assert.Single(answer.Blanks.Single().Cautions).Reason);
        Assert.Contains(answer.Reasons, reason => reason.EndsWith("Ask the grinder first.", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_rule_has_its_own_key_and_says_something()
    {
        var all = StartingRules.All();

        Assert.Equal(2 * 4 * 4 + 9 * 4 + 9 + 2, all.Count);
        Assert.Distinct(all.Select(rule => rule.Key));
        Assert.Distinct(all.Select(rule => rule.Subject));
        Assert.All(all, rule => Assert.EndsWith(".", rule.Reason));
    }

    private static GrindSpec WithPump(PreparedBlank blank) => Shelf.Nominal(blank) with { MechanicalFuelPump = true };
}
