using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>A lot that measures less than the catalog says is judged with its own metal. All figures are the demo's.</summary>
public class LotMetalTests
{
    private static readonly PreparedBlank Blank = Shelf.Blank("RV8R-516-08");

    [Theory]
    [InlineData(null, null, .030, .28)]
    [InlineData(.026, null, .026, .28)]
    [InlineData(.030, .25, .030, .25)]
    [InlineData(.034, null, .030, .276)] // .004 more comes off first, so that much less case is left
    [InlineData(.034, .30, .030, .276)]
    public void The_least_of_measured_and_nominal_counts(double? stock, double? caseDepth, double stockIn, double caseIn)
    {
        var metal = LotMetal.Of(Blank.Part, stock, caseDepth);
        Assert.Equal((stockIn, caseIn), (Math.Round(metal.StockIn!.Value, 9), Math.Round(metal.CaseDepthIn!.Value, 9)));
    }

    [Fact]
    public void A_lot_with_less_stock_gives_a_smaller_base_circle_and_says_so()
    {
        var grind = Shelf.Nominal(Blank);
        var nominal = Shelf.Fit(grind, Blank);

        var fit = Judge(grind, 0, new LotMetal(.026, .28)).Best!;

        Assert.Equal("L9", fit.Lot);
        Assert.True(fit.InStock);
        Assert.InRange(nominal.IntakeBaseCircleDiameterIn!.Value - fit.IntakeBaseCircleDiameterIn!.Value, .001, .004 * 2 + 1e-6);
        Assert.Equal("From lot L9: measured stock 0.026 in, nominal 0.030.", fit.Reasons[0]);
    }

    [Fact]
    public void While_there_are_blanks_as_the_catalog_says_they_are_answered()
    {
        var fit = Judge(Shelf.Nominal(Blank), 1, new LotMetal(.026, .28)).Best!;
        Assert.Null(fit.Lot);
        Assert.True(fit.InStock);
    }

    [Fact]
    public void A_cam_that_does_not_come_out_of_the_lot_is_a_special_order_and_says_why()
    {
        var answer = Judge(Shelf.Nominal(Blank), 0, new LotMetal(.030, .010));

        Assert.Equal(Verdict.SpecialOrder, answer.Verdict);
        Assert.False(answer.Best!.InStock);
        Assert.Contains(answer.Best.Reasons, reason => reason.StartsWith("In stock is lot L9: case to count on 0.010 in", StringComparison.Ordinal));
    }

    /// <summary>Two of the lot, and as many as the catalog says: each counts where the cam comes out of it.</summary>
    [Theory]
    [InlineData(.280, 3, 5)]
    [InlineData(.010, 3, 3)]
    [InlineData(.280, 0, 2)]
    [InlineData(.010, 0, 0)]
    public void What_is_free_for_the_cam_is_counted_by_the_lots_that_it_comes_out_of(double caseIn, int asNominal, int free)
    {
        var fit = Judge(Shelf.Nominal(Blank), asNominal, new LotMetal(.026, caseIn)).Best!;
        Assert.Equal((Blank.Part.PartNumber, free), (fit.PartNumber, fit.Available));
    }

    [Fact]
    public void Each_part_is_answered_once()
    {
        var answer = Judge(Shelf.Nominal(Blank), 0, new LotMetal(.026, .28));
        Assert.Equal(answer.Blanks.Count, answer.Blanks.DistinctBy(fit => fit.PartNumber).Count());
    }

    private static FeasibilityAnswer Judge(Shop.Specs.GrindSpec grind, int asNominal, LotMetal lot)
    {
        var family = Blank.Part.EngineFamily;
        var others = Shelf.Of(family).Where(other => other != Blank).Select(other => new StockedBlank(other, 0));
        return FeasibilityJudge.Judge(grind, family, [.. others, new StockedBlank(Blank, asNominal), new StockedBlank(Blank.With(lot), 2, "L9")], Shelf.Rules);
    }
}
