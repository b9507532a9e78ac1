using CsCheck;
using GrindShop.Shop.Buying;

namespace GrindShop.Shop.Tests.Buying;

public class MillRunTests
{
    /// <summary>Ten cams a year for four years; 5 for $180 and more, set-up $800; storage $2 a year; the dearer blank costs $260.</summary>
    private static readonly MillRunCase Plain = new()
    {
        YearlyDemand = 10,
        YearlyDeviation = 0,
        HorizonYears = 4,
        CostOfCapital = 0,
        ObsolescenceAYear = 0,
        StorageAYear = 2,
        SetupCharge = 800,
        PriceBreaks = [new(5, 180), new(40, 150)],
        LostMargin = 300,
        Alternatives = [new("dearer", 260, 1), new("shallower case", 140, .5)],
    };

    /// <summary>
    /// By hand, without interest: 25 blanks cost 25 x 180 + 800 = 5,300; they last 2.5 years and lie 25 x 2.5 / 2 = 31.25 blank-years, $62.50; the other
    /// 15 cams cost 140 x .5 + 300 x .5 = $220 each, $3,300. Together $8,662.50, or $216.5625 for each of 40 cams.
    /// </summary>
    [Fact]
    public void Worked_by_hand_without_interest()
    {
        var cost = new MillRun(Plain).Cost(25);
        Assert.Equal(5300, cost.Outlay, 9);
        Assert.Equal(2.5, cost.YearsOfCover, 9);
        Assert.Equal(8662.5, cost.PresentValue, 6);
        Assert.Equal(216.5625, cost.CostPerCam, 6);
        Assert.Equal("shallower case", Plain.Best.Name);
    }

    /// <summary>
    /// By hand, dearer blank only: 800 + 180 Q + .1 Q^2 + 260 (40 - Q) = 10,400 at Q = (80 - sqrt(6,400 - 320)) / .2 = 10.13, so 11 blanks break even;
    /// from 40 on at $150 the run costs 6,000 + 800 + 160 = $6,960, the least.
    /// </summary>
    [Fact]
    public void Break_even_and_cheapest_by_hand()
    {
        var run = new MillRun(Plain with { Alternatives = [new("dearer", 260, 1)] });
        Assert.Equal(10_400, run.PresentValueWithout, 6);
        Assert.Equal(11, run.BreakEven!.Quantity);
        Assert.Equal(40, run.Cheapest.Quantity);
        Assert.Equal(6960, run.Cheapest.PresentValue, 6);
    }

    [Fact]
    public void Without_any_alternative_the_cams_are_lost()
    {
        var run = new MillRun(Plain with { Alternatives = [] });
        Assert.Equal(300, run.CostPerCamWithout, 9);
        Assert.Equal(MillRunCase.TurnedAway, run.Case.Best);
    }

    /// <summary>Plain bookkeeping day by day, one factor a day, at each of the rates; no formula of the code's.</summary>
    [Theory]
    [InlineData(.12, .04, 25)]
    [InlineData(.08, 0, 40)]
    [InlineData(0, .1, 60)]
    [InlineData(.3, .2, 5)]
    public void Present_value_is_what_a_daybook_gives(double capital, double obsolescence, int quantity)
    {
        var assumed = Plain with { CostOfCapital = capital, ObsolescenceAYear = obsolescence };
        const int stepsAYear = 20_000;
        var (value, cams, left, factor) = (quantity * assumed.UnitPrice(quantity) + 800.0, 0.0, (double)quantity, 1.0);
        var (aStep, wanted) = (Math.Pow((1 - obsolescence) / (1 + capital), 1.0 / stepsAYear), 10.0 / stepsAYear);
        for (var step = 0; step < 4 * stepsAYear; step++)
        {
            value += factor * (left * 2 / stepsAYear + (left > 0 ? 0 : wanted * 220));
            cams += factor * wanted;
            left = Math.Max(0, left - wanted);
            factor *= aStep;
        }

        var cost = new MillRun(assumed).Cost(quantity);
        Assert.Equal(value, cost.PresentValue, value * 2e-4);
        Assert.Equal(value / cams, cost.CostPerCam, .1);
    }

    [Fact]
    public void Uncertain_demand_costs_more_than_the_same_demand_known()
    {
        var cases = from mean in Gen.Double[2, 60] from spread in Gen.Double[.05, .9] from quantity in Gen.Int[5, 200] select (mean, spread, quantity);
        cases.Sample(c =>
        {
            var known = Plain with { YearlyDemand = c.mean, StorageAYear = 0 };
            double Cost(double deviation) => new MillRun(known with { YearlyDeviation = deviation }).Cost(c.quantity).PresentValue;
            return Cost(c.spread * c.mean) >= Cost(0) - 1e-6;
        }, iter: 20);
    }

    /// <summary>Against half a million draws from the gamma distribution itself; the seed is fixed.</summary>
    [Fact]
    public void Equally_likely_rates_stand_for_the_distribution()
    {
        var uncertain = Plain with { YearlyDeviation = 4, CostOfCapital = .1 };
        var random = new Random(3);
        var shape = 10.0 * 10 / (4 * 4);
        var draws = new double[500_000];
        MathNet.Numerics.Distributions.Gamma.Samples(random, draws, shape, shape / 10);
        double Drawn(int quantity) => draws.Average(rate => quantity * Plain.UnitPrice(quantity) + 800 + Rest(quantity, rate));
        double Rest(int quantity, double rate)
        {
            var (fade, lasts) = (Math.Log(1.1), Math.Min(quantity / rate, 4));
            double Annuity(double years) => (1 - Math.Exp(-fade * years)) / fade;
            var ramp = (1 - Math.Exp(-fade * lasts) * (1 + fade * lasts)) / (fade * fade);
            return 2 * (quantity * Annuity(lasts) - rate * ramp) + 220 * rate * (Annuity(4) - Annuity(lasts));
        }

        foreach (var quantity in new[] { 10, 40, 80 })
            Assert.Equal(Drawn(quantity), new MillRun(uncertain).Cost(quantity).PresentValue, .004 * Drawn(quantity));
    }

    [Fact]
    public void The_one_purchase_rule_is_the_newsvendors()
    {
        var rule = new MillRun(Plain with { YearlyDeviation = 2 }).OnePurchase(25)!;
        Assert.Equal(40 / 220.0, rule.CriticalRatio, 9);
        Assert.Null(new MillRun(Plain with { Alternatives = [new("cheap", 100, 1)] }).OnePurchase(25));
    }

    [Fact]
    public void Nonsense_is_refused_in_words()
    {
        foreach (var wrong in new[]
        {
            Plain with { YearlyDemand = 0 }, Plain with { YearlyDemand = double.NaN }, Plain with { YearlyDeviation = -1 }, Plain with { YearlyDeviation = 30 }, Plain with { HorizonYears = 0 },
            Plain with { CostOfCapital = 2 }, Plain with { ObsolescenceAYear = 1 }, Plain with { StorageAYear = double.PositiveInfinity }, Plain with { PriceBreaks = [] },
            Plain with { PriceBreaks = [new(0, 1)] }, Plain with { Alternatives = [new("x", 1, 2)] }, Plain with { LostMargin = -1 },
        })
            Assert.False(string.IsNullOrEmpty(wrong.Refuse()?.Reason));
        Assert.Null(Plain.Refuse());
    }
}
