using CsCheck;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Records;

namespace GrindShop.Shop.Tests.Blanks;

public class BlankLotTests
{
    private static readonly BlankPart Part = Shelf.Blank("RV8R-516-08").Part;

    [Fact]
    public void Whatever_happens_the_lot_agrees_with_a_plain_model_and_with_its_book() => Gen.Select(Gen.Int[1, 5], LotAct.Any.Array[0, 40]).Sample((quantity, acts) =>
    {
        var (lot, model) = (Lot(quantity), new LotModel(quantity));
        foreach (var act in acts)
        {
            var lines = lot.Movements.Count;
            var outcome = act.Do(lot);
            Assert.Equal(act.Do(model), outcome.Succeeded);
            Assert.Equal(lines + (outcome.Succeeded ? 1 : 0), lot.Movements.Count);
            Assert.Equal((model.OnHand, model.Jobs.Count, model.Available), (lot.OnHand, lot.Allocated, lot.Available));
            Assert.Equal((lot.OnHand, lot.Allocated), (lot.Movements.Sum(line => line.OnHandChange), lot.Movements.Sum(line => line.AllocatedChange)));
            Assert.Equal(model.Jobs.Distinct().Order(), lot.HeldBy);
            Assert.InRange(lot.Allocated, 0, lot.OnHand);
        }
    });

    [Fact]
    public void A_count_below_what_is_promised_names_the_jobs_that_hold_blanks()
    {
        var lot = Lot(3);
        lot.Allocate("J7", "Desk", TestShop.Now);
        lot.Allocate("J8", "Desk", TestShop.Now);

        var refusal = lot.Count(1, "two are gone", "Floor", TestShop.Now).Refusal!;

        Assert.Equal("promised", refusal.Code);
        Assert.Contains("J7, J8", refusal.Reason, StringComparison.Ordinal);
        Assert.Equal(3, lot.OnHand);
    }

    [Fact]
    public void More_than_there_is_does_not_leave_it_though_none_is_promised()
    {
        var refusal = Lot(3).Scrap(4, "rust", "Floor", TestShop.Now).Refusal!;

        Assert.Equal(("notThere", "The book has 3 of lot LOT; no more than that can leave it."), (refusal.Code, refusal.Reason));
    }

    [Fact]
    public void A_quarantined_lot_keeps_its_promises_and_gives_nothing_out()
    {
        var lot = Lot(2);
        lot.Allocate("J7", "Desk", TestShop.Now);
        lot.Quarantine("Certificate missing.", "Owner", TestShop.Now);

        Assert.Equal((2, 1, 0), (lot.OnHand, lot.Allocated, lot.Available));
        Assert.Equal("quarantined", lot.Allocate("J8", "Desk", TestShop.Now).Refusal!.Code);
        Assert.Equal("quarantined", lot.Consume("J7", "Floor", TestShop.Now).Refusal!.Code);
        Assert.True(lot.Clear("Certificate came.", "Owner", TestShop.Now).Succeeded);
        Assert.True(lot.Consume("J7", "Floor", TestShop.Now).Succeeded);
    }

    [Fact]
    public void What_changes_the_book_says_why_and_shortly()
    {
        var lot = Lot(2);
        foreach (var (why, code) in new[] { (" ", "noReason"), (new string('x', BlankLot.LongestReason + 1), "tooLong") })
        {
            Outcome<StockMovement>[] refused =
            [
                lot.Scrap(1, why, "Owner", TestShop.Now), lot.Adjust(1, why, "Owner", TestShop.Now), lot.Count(5, why, "Owner", TestShop.Now),
                lot.Quarantine(why, "Owner", TestShop.Now), lot.Correct("88", "", why, "Owner", TestShop.Now),
            ];
            Assert.All(refused, outcome => Assert.Equal(code, outcome.Refusal!.Code));
        }
        Assert.True(lot.Count(2, "", "Owner", TestShop.Now).Succeeded);
    }

    /// <summary>Soft 8620 and a hard case lie outside the conversions of ASTM E140; the rest of their sample counts all the same.</summary>
    [Theory]
    [InlineData(180, HardnessScale.Hbw, "180 HBW")]
    [InlineData(63, HardnessScale.Hrc, "63 HRC")]
    [InlineData(15, HardnessScale.Hrc, "15 HRC")]
    [InlineData(800, HardnessScale.Hv, "800 HV")]
    public void A_reading_beyond_the_table_is_kept_as_measured_with_the_rest_of_its_sample(double value, HardnessScale scale, string words)
    {
        var lot = Lot(2);
        var line = lot.Measure(new SampleFigures(2, new HardnessReading(value, scale), .14, .031, null), "Desk", TestShop.Now).Value!;
        Assert.Contains(words, line.Reason, StringComparison.Ordinal);
        Assert.Equal(new HardnessReading(value, scale), Assert.Single(lot.Samples).Hardness);
        Assert.Equal((.14, .031), (lot.MeasuredCaseIn, lot.MeasuredStockIn));
    }

    [Theory]
    [InlineData(0, HardnessScale.Hrc)]
    [InlineData(-5, HardnessScale.Hrc)]
    [InlineData(580, HardnessScale.Hrc)]
    [InlineData(1_000, HardnessScale.Hbw)]
    [InlineData(double.NaN, HardnessScale.Hv)]
    [InlineData(double.PositiveInfinity, HardnessScale.Hv)]
    public void A_figure_that_no_hardness_can_have_is_refused(double value, HardnessScale scale) =>
        Assert.Equal("badSample", Lot(2).Measure(new SampleFigures(2, new HardnessReading(value, scale), null, null, null), "Desk", TestShop.Now).Refusal!.Code);

    [Theory]
    [InlineData(60, 100, true)]
    [InlineData(61, 100, false)]
    [InlineData(60, 101, false)]
    public void A_correction_that_the_book_has_no_room_for_is_refused(int heat, int certificate, bool fits)
    {
        var lot = Lot(2);
        var outcome = lot.Correct(new string('8', heat) + " ", new string('C', certificate), "misread", "Owner", TestShop.Now);
        Assert.Equal(fits ? null : "tooLong", outcome.Refusal?.Code);
        Assert.Equal((fits ? heat : 0, fits ? 2 : 1), (lot.HeatNumber.Length, lot.Movements.Count));
        Assert.Equal("tooLong", lot.Relocate(new string('A', 41), "Owner", TestShop.Now).Refusal!.Code);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void Empty_lot_is_not_received(int quantity) => Assert.Throws<ArgumentOutOfRangeException>(() => Lot(quantity));

    private static BlankLot Lot(int quantity) => BlankLot.Receive(Part, "LOT", "A1", quantity, "Owner", TestShop.Now);
}
