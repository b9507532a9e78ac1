using GrindShop.Shop.Buying;
using static GrindShop.Shop.Tests.Buying.SomePurchases;

namespace GrindShop.Shop.Tests.Buying;

public class PartNeedTests
{
    private static readonly LeadTime FourWeeks = new(28, 0, "four weeks");

    /// <summary>One a week, Poisson: 8 weeks in turn of 1, 0, 2, 1 have mean 1 and variance 4/7.</summary>
    private static readonly DemandHistory OneAWeek = new([1, 0, 2, 1, 1, 0, 2, 1]);

    /// <summary>Poisson table, mean 4: at most 7 with .9489, at most 8 with .9786 (any statistics book; memory); so 95 % needs 8.</summary>
    [Fact]
    public void The_point_is_read_from_a_poisson_table()
    {
        var need = Need(OneAWeek, 20);
        Assert.Equal((8, "Poisson"), (need.Point, need.Rule.Demand.Words));
        Assert.Equal(.9786, need.Rule.CycleService, 4);
    }

    [Theory]
    [InlineData(9, 0, 0, 0, false)]
    [InlineData(8, 0, 0, 0, true)]
    [InlineData(5, 4, 0, 0, false)]
    [InlineData(10, 0, 0, 2, true)]
    [InlineData(2, 0, 0, 5, true)]
    public void Due_is_what_stands_at_or_below_the_point(int available, int onOrder, int inDrafts, int waiting, bool due) =>
        Assert.Equal(due, new PartNeed(new SupplyTerms(Part), new StockPosition(available, 0, available, onOrder, inDrafts, waiting), OneAWeek, FourWeeks, new BuyingRules()).IsDue);

    [Fact]
    public void A_draft_that_covers_it_is_not_drafted_again()
    {
        var need = new PartNeed(new SupplyTerms(Part), new StockPosition(3, 0, 3, 0, 12, 0), OneAWeek, FourWeeks, new BuyingRules());
        Assert.Equal((true, true, 0), (need.IsDue, need.IsInDraft, need.Quantity));
    }

    /// <summary>By hand: 52.18 a year, $35 an order, $174 x 15 % + $1.50 = $27.60 a year: sqrt(2 x 35 x 52.18 / 27.6) = 11.50, so 12.</summary>
    [Fact]
    public void The_quantity_is_the_economic_one_of_the_suppliers_kind()
    {
        Assert.Equal(12, Need(OneAWeek, 8).Quantity);
        Assert.Equal(15, Need(OneAWeek, 8, Sold(10, 5)).Quantity);
        Assert.Equal(40, Need(OneAWeek, 8, Sold(40, 1)).Quantity);
        Assert.Equal(19, Need(OneAWeek, -10).Quantity);
    }

    /// <summary>By hand, 30 at $150: 52.18 x 150 + 52.18 / 30 x 35 + 15 x (150 x .15 + 1.5) = $8,248; 12 at $174: $9,396.</summary>
    [Fact]
    public void A_price_break_is_taken_where_it_pays()
    {
        var terms = Sold(1, 1);
        terms.SoldAs(1, 0, [new(30, 150m)]);
        Assert.Equal(30, Need(OneAWeek, 8, terms).Quantity);
        terms.SoldAs(1, 0, [new(30, 173.5m)]);
        Assert.Equal(12, Need(OneAWeek, 8, terms).Quantity);
        terms.SoldAs(1, 0, [new(500, 100m)]);
        Assert.Equal(12, Need(OneAWeek, 8, terms).Quantity);
    }

    /// <summary>What is not due is priced at the 30 that are ordered at a time, not at a single blank's price.</summary>
    [Fact]
    public void Each_costs_what_it_costs_in_the_quantity_that_is_ordered()
    {
        var terms = Sold(1, 1);
        terms.SoldAs(1, 0, [new(30, 150m)]);
        Assert.Equal((0, 150m), (Need(OneAWeek, 20, terms).Quantity, Need(OneAWeek, 20, terms).UnitPrice));
        Assert.Equal((30, 150m), (Need(OneAWeek, 8, terms).Quantity, Need(OneAWeek, 8, terms).UnitPrice));
        Assert.Equal(174m, Need(OneAWeek, 20, Sold(1, 1)).UnitPrice);
    }

    [Fact]
    public void What_is_left_of_the_replaced_part_counts_and_stands_in_the_reason()
    {
        PartNeed With(int ofReplaced) => new(new SupplyTerms(Part), new StockPosition(2, 0, 2, 0, 0, 0, ofReplaced), OneAWeek, FourWeeks, new BuyingRules()) { Replaces = ["OLD-1"] };
        Assert.False(With(7).IsDue);
        Assert.Contains("8 to count on (2 available, 0 on order, less 0 waited for, and 6 of OLD-1, which it replaces)", With(6).Why);
        Assert.Contains("0 waited for, less 3 waited for of OLD-1, which it replaces)", With(-3).Why);
    }

    [Fact]
    public void What_nobody_wanted_is_bought_only_for_those_who_wait()
    {
        var history = new DemandHistory([.. Enumerable.Repeat(0, 26)]);
        Assert.False(Need(history, 0).IsDue);
        Assert.Equal(2, Need(history, -2).Quantity);
    }

    [Fact]
    public void A_part_may_have_its_own_service_level()
    {
        var terms = Sold(1, 1);
        Assert.Equal("badService", terms.Serve(.4).Refusal!.Code);
        Assert.True(terms.Serve(.8).Succeeded);
        Assert.Equal((6, .8), (Need(OneAWeek, 8, terms).Point, Need(OneAWeek, 8, terms).ServiceLevel));
    }

    [Fact]
    public void A_least_quantity_that_lasts_too_long_is_said() => Assert.True(Need(OneAWeek, 8, Sold(200, 1)).CoversTooLong);

    [Fact]
    public void The_reason_holds_the_figures()
    {
        var why = Need(OneAWeek, 8).Why;
        foreach (var part in new[] { "8 available", "the point is 8", "28 days", "4.0 ± 2.0", "8 wanted in 8 weeks", "97.9" })
            Assert.Contains(part, why);
    }

    private static SupplyTerms Sold(int least, int multiple)
    {
        var terms = new SupplyTerms(SoldFrom(least));
        Assert.True(terms.SoldAs(multiple, 0, []).Succeeded);
        return terms;
    }

    private static PartNeed Need(DemandHistory history, int position, SupplyTerms? terms = null) => new(
        terms ?? new SupplyTerms(Part), new StockPosition(Math.Max(0, position), 0, Math.Max(0, position), 0, 0, Math.Max(0, -position)), history, FourWeeks, new BuyingRules());
}
