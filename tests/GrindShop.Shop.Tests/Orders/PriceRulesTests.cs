using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Specs;

namespace GrindShop.Shop.Tests.Orders;

public class PriceRulesTests
{
    [Fact]
    public void Every_order_of_the_demo_costs_base_blank_and_the_adders_that_apply()
    {
        var priced = SeedFiles.Scenario.Orders.Where(order => order.First.Blank is not null).ToList();

        Assert.True(priced.Count > 100);
        Assert.All(priced, order =>
        {
            var grind = Wishes.Grind(order.First.Entry.Spec);
            var fit = Shelf.Fit(grind, Shelf.Blank(order.First.Blank!.PartNumber)) with { InStock = order.Order % 2 == 0 };
            Assert.Equal(Expected(grind, order.First.Blank, fit), Lines(grind, order.First.Blank, fit, []).Sum(line => line.Amount));
        });
    }

    [Fact]
    public void Chosen_adder_is_added_and_unknown_codes_are_not()
    {
        var (grind, blank, manual) = (Wishes.Grind(Wishes.Street), Shelf.Blank(SomeOrders.Blank), SeedFiles.Scenario.Prices.Adders.First(adder => adder.When == AdderTrigger.Manual));
        var fit = Shelf.Fit(grind, blank);

        var lines = Lines(grind, blank.Part, fit, [manual.Code, "no such"]);

        Assert.Equal(manual.Amount, lines.Sum(line => line.Amount) - Lines(grind, blank.Part, fit, []).Sum(line => line.Amount));
    }

    [Fact]
    public void Family_and_lifter_without_a_base_price_are_refused()
    {
        var blank = Shelf.Blank(SomeOrders.Blank);

        Assert.Equal("noBasePrice", new PriceRules([], 1).Lines(Wishes.Grind(Wishes.Street), blank.Part.EngineFamily, blank.Part, SomeOrders.Answer.Best!, []).Refusal!.Code);
    }

    /// <summary>The same sum from the files, adder by adder.</summary>
    private static decimal Expected(GrindSpec grind, BlankPart blank, BlankFit fit)
    {
        var prices = SeedFiles.Scenario.Prices;
        var sum = prices.BasePrices.Single(price => price.EngineFamily == grind.EngineFamily && price.Lifter == grind.Lifter).Amount;
        sum += Math.Round(blank.Cost * SeedFiles.Scenario.Settings.BlankMarkup, 2, MidpointRounding.AwayFromZero);
        if (blank.Hardening == Hardening.Soft)
            sum += Sum(AdderTrigger.HeatTreat);
        if (!fit.InStock)
            sum += Sum(AdderTrigger.SpecialOrder);
        if (grind.Lifter is LifterType.SolidFlat or LifterType.SolidRoller)
            sum += Sum(AdderTrigger.SolidLifter);
        if (Math.Abs(fit.IntakeBaseCircleDiameterIn!.Value - fit.ExhaustBaseCircleDiameterIn!.Value) > .020)
            sum += Sum(AdderTrigger.SplitBaseCircles);
        if (!IsSameRound(grind.FiringOrder, blank.EngineFamily.FiringOrder))
            sum += Sum(AdderTrigger.OtherFiringOrder);
        return sum;

        decimal Sum(AdderTrigger when) => prices.Adders.Where(adder => adder.When == when).Sum(adder => adder.Amount);
    }

    private static bool IsSameRound(string one, string other) => $"{one}-{one}".Contains(other, StringComparison.Ordinal);

    /// <summary>Base prices know their family by its number in the database; here all numbers are 0, so only this family's are given.</summary>
    private static IReadOnlyList<PriceLine> Lines(GrindSpec grind, BlankPart blank, BlankFit fit, string[] manual) => new PriceRules(
        [
            .. SeedFiles.Scenario.Prices.BasePrices.Where(price => price.EngineFamily == grind.EngineFamily)
                .Select(price => new BasePrice { EngineFamily = blank.EngineFamily, Lifter = price.Lifter, Amount = price.Amount }),
            .. SeedFiles.Scenario.Prices.Adders,
        ],
        SeedFiles.Scenario.Settings.BlankMarkup).Lines(grind, blank.EngineFamily, blank, fit, manual).Value!;
}
