using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>Facts of the trade, all common practice, no source: they must follow from the geometry, for no table holds them.</summary>
public class TradeFactsTests
{
    private const string Everyday = "RV8R-516-08";

    [Theory]
    [InlineData("RV8R-515-07")]
    [InlineData(Everyday)]
    [InlineData("RV8R-HI-02")]
    public void With_everyday_stock_the_separation_moves_two_degrees_and_the_centreline_three_and_not_twice_that(string partNumber)
    {
        var blank = Shelf.Blank(partNumber);

        Assert.Equal(.030, blank.Part.Nominal!.StockIn);
        Assert.All(Corners, corner => Assert.True(BaseCircle(blank, corner.Lsa, corner.Icl) >= blank.Part.Nominal.BaseCircleDiameterIn));
        Assert.Contains(Corners, corner => BaseCircle(blank, 2 * corner.Lsa, 2 * corner.Icl) < blank.Part.Nominal.BaseCircleDiameterIn - .030);
    }

    [Theory]
    [InlineData("RV8R-515-07")]
    [InlineData(Everyday)]
    [InlineData("RV8R-HI-02")]
    public void Blank_does_not_become_a_cam_25_degrees_longer_without_giving_up_base_circle(string partNumber)
    {
        var blank = Shelf.Blank(partNumber);
        var nominal = Shelf.Nominal(blank);

        var lost = Shelf.Fit(nominal, blank).IntakeBaseCircleDiameterIn - Shelf.Fit(Shelf.Longer(nominal, 25), blank).IntakeBaseCircleDiameterIn;

        Assert.True(lost > 2 * blank.Part.Nominal!.StockIn, $"{lost:0.000} in");
    }

    [Fact]
    public void Deeper_case_lets_more_metal_go()
    {
        var part = Shelf.Blank(Everyday).Part;
        var deep = PreparedBlank.Of(part);
        var shallow = PreparedBlank.Of(Shelf.Like(part, BlankAlloy.Steel8620, Hardening.Carburized, .060));
        var grinds = Enumerable.Range(0, 13).Select(steps => Shelf.Longer(Shelf.Nominal(deep), -5 * steps)).ToList();

        var (fromDeep, fromShallow) = (grinds.Where(grind => Shelf.Fit(grind, deep).Fits).ToList(), grinds.Where(grind => Shelf.Fit(grind, shallow).Fits).ToList());

        Assert.Subset(fromDeep.ToHashSet(), fromShallow.ToHashSet());
        Assert.True(fromDeep.Count >= 2 * fromShallow.Count && fromShallow.Count > 0, $"{fromDeep.Count} and {fromShallow.Count} of {grinds.Count}");
    }

    [Fact]
    public void Each_thousandth_of_lift_costs_two_of_base_circle_where_the_nose_must_pass_the_bores()
    {
        var part = Shelf.Like(Shelf.Blank(Everyday).Part, hardening: Hardening.Through, roundDiameterIn: 2.2);
        var blank = PreparedBlank.Of(part);
        var low = Shelf.Nominal(Shelf.Blank(Everyday));
        var high = low with { Intake = low.Intake with { LobeLiftIn = .400 }, Exhaust = low.Exhaust with { LobeLiftIn = .400 } };

        var (atLow, atHigh) = (Shelf.Fit(low, blank).IntakeBaseCircleDiameterIn!.Value, Shelf.Fit(high, blank).IntakeBaseCircleDiameterIn!.Value);

        Assert.Equal(2 * (.400 - low.Exhaust.LobeLiftIn), atLow - atHigh, 9);
        Assert.Equal(part.EngineFamily.JournalDiametersIn.Min(), atHigh + 2 * .400 + part.EngineFamily.NoseClearanceIn, 9);
    }

    [Theory]
    [InlineData("RV8R-516-08")]
    [InlineData("RV8R-516-09")]
    [InlineData("RV8R-516-10")]
    public void Blank_nearest_to_the_finished_lobe_keeps_most_case_and_base_circle(string partNumber)
    {
        var own = Shelf.Judge(Shelf.Nominal(Shelf.Blank(partNumber))).Blanks.Single(fit => fit.PartNumber == partNumber);
        var others = Shelf.Blanks.Where(blank => blank.Part is { EngineFamily.Code: "RV8-R", Alloy: BlankAlloy.Steel5160, FiringOrder: "1-8-4-3-6-5-7-2" })
            .Select(blank => Shelf.Fit(Shelf.Nominal(Shelf.Blank(partNumber)), blank)).ToList();

        Assert.True(others.Count >= 3);
        Assert.All(others, other => Assert.True(own.LeastCaseLeftIn >= other.LeastCaseLeftIn - .0005 && own.IntakeBaseCircleDiameterIn >= other.IntakeBaseCircleDiameterIn - .0005));
    }

    [Fact]
    public void Other_firing_order_needs_a_blank_milled_for_it_or_a_full_round_one()
    {
        var answer = Shelf.Judge(Shelf.Nominal(Shelf.Blank(Everyday)) with { FiringOrder = "1-8-7-3-6-5-4-2" });

        Assert.All(answer.Blanks.Where(fit => fit.Fits), fit =>
            Assert.True(Shelf.Blank(fit.PartNumber).Part is { Form: BlankForm.FullRound } or { FiringOrder: "1-8-7-3-6-5-4-2" }));
        Assert.Contains(answer.Blanks, fit => fit.Fits && Shelf.Blank(fit.PartNumber).Part.Form == BlankForm.FullRound);
        Assert.Contains(answer.Blanks, fit => fit.Fits && Shelf.Blank(fit.PartNumber).Part.Form == BlankForm.Milled);
    }

    private static IEnumerable<(double Lsa, double Icl)> Corners => [(-2, -3), (-2, 3), (2, -3), (2, 3)];

    private static double BaseCircle(PreparedBlank blank, double lsa, double icl)
    {
        var nominal = Shelf.Nominal(blank);
        var fit = Shelf.Fit(nominal with { LobeSeparationCamDeg = nominal.LobeSeparationCamDeg + lsa, IntakeCenterlineCrankDeg = nominal.IntakeCenterlineCrankDeg + icl }, blank);
        return Math.Min(fit.IntakeBaseCircleDiameterIn ?? 0, fit.ExhaustBaseCircleDiameterIn ?? 0);
    }
}
