using GrindShop.Shop.Buying;
using MathNet.Numerics.Distributions;

namespace GrindShop.Shop.Tests.Buying;

public class DemandTests
{
    /// <summary>Tables of the standard normal distribution and its loss function, as in any statistics book (memory).</summary>
    [Theory]
    [InlineData(0, .5, .39894)]
    [InlineData(1, .84134, .08332)]
    [InlineData(1.64485, .95, .02089)]
    [InlineData(-1, .15866, 1.08332)]
    [InlineData(3, .99865, .00038)]
    public void Normal_tables(double z, double below, double loss)
    {
        Assert.Equal(below, Gauss.Below(z), 5);
        Assert.Equal(loss, Gauss.Loss(z), 5);
        Assert.Equal(z, Gauss.Quantile(Gauss.Below(z)), 9);
    }

    /// <summary>Poisson table, mean 2: at most 3 with .8571 (any statistics book; memory). Then all of it against a general-purpose library.</summary>
    [Fact]
    public void Poisson_is_the_librarys()
    {
        Assert.Equal(.8571, CountedDemand.Poisson(2).AtMost(3), 4);
        foreach (var mean in new[] { .1, 1, 2.7, 9.9 })
            for (var k = 0; k < 25; k++)
                Assert.Equal(Poisson.CDF(mean, k), CountedDemand.Poisson(mean).AtMost(k), 12);
    }

    [Theory]
    [InlineData(.4, .9)]
    [InlineData(3, 5)]
    [InlineData(20, 220)]
    public void Negative_binomial_is_the_librarys(double mean, double variance)
    {
        var demand = CountedDemand.NegativeBinomial(mean, variance);
        var library = new NegativeBinomial(mean * mean / (variance - mean), mean / variance);
        Assert.Equal((mean, variance), (library.Mean, library.Variance), Close);
        foreach (var (quantity, probability) in demand.Probabilities(60))
            Assert.Equal(library.Probability(quantity), probability, 11);
    }

    [Theory]
    [InlineData(.4, .9)]
    [InlineData(3, 3)]
    [InlineData(20, 220)]
    [InlineData(40, 60)]
    public void Shortage_is_what_summing_every_case_gives(double mean, double variance)
    {
        var demand = Demand.Of(mean, variance);
        foreach (var quantity in new[] { 0, 1, 4, 25 })
        {
            var sum = demand is CountedDemand counted
                ? counted.Probabilities(2000).Sum(wanted => Math.Max(0, wanted.Quantity - quantity) * wanted.Probability)
                : MathNet.Numerics.Integrate.OnClosedInterval(x => (x - quantity) * Normal.PDF(mean, Math.Sqrt(variance), x), quantity, mean + 12 * Math.Sqrt(variance), 1e-10);
            Assert.Equal(sum, demand.Shortage(quantity), 6);
        }
    }

    [Theory]
    [InlineData(500, 45000, "normal curve")]
    [InlineData(10, 25, "normal curve")]
    [InlineData(10, 26, "negative binomial")]
    [InlineData(9.9, 9.9, "Poisson")]
    [InlineData(2, 1, "Poisson")]
    [InlineData(2, 3, "negative binomial")]
    [InlineData(0, 0, "Poisson")]
    public void Which_distribution_follows_a_fixed_rule(double mean, double variance, string words) => Assert.Equal(words, Demand.Of(mean, variance).Words);

    [Fact]
    public void Enough_history_is_counted_as_it_is()
    {
        var history = new DemandHistory([1, 0, 2, 1, 0, 0, 3, 1]);
        Assert.True(history.IsEnough);
        Assert.Equal((1, 8 / 7.0), (history.WeeklyMean, history.WeeklyVariance), Close);
        var over = history.Over(new LeadTime(28, 0, ""));
        Assert.Equal((4, 4 * 8 / 7.0), (over.Mean, over.Variance), Close);
    }

    /// <summary>One blank in 26 weeks, lead time 13 weeks: (1 + 1/2) / 26 x 13 = .75 with variance .75 (1 + 13/26) = 1.125.</summary>
    [Fact]
    public void Too_little_history_widens_the_demand_and_says_so()
    {
        var history = new DemandHistory([.. Enumerable.Repeat(0, 25), 1]);
        var over = history.Over(new LeadTime(91, 0, ""));
        Assert.False(history.IsEnough);
        Assert.Equal((.75, 1.125), (over.Mean, over.Variance), Close);
        Assert.Contains("too little", history.Words);
    }

    [Fact]
    public void Nothing_wanted_expects_nothing() => Assert.Equal(0, new DemandHistory([.. Enumerable.Repeat(0, 26)]).Over(new LeadTime(91, 100, "")).Sufficient(.99));

    [Fact]
    public void Lead_time_comes_from_the_part_then_its_supplier_then_the_catalog()
    {
        Assert.Equal((30, 25), Read(LeadTime.From([25, 30, 35], [2, 2, 2], 28)), Close);
        Assert.Equal((28 * 1.2, 28 * 28 * .04), Read(LeadTime.From([25, 30], [1, 1.2, 1.4], 28)), Close);
        Assert.Equal((28, 49), Read(LeadTime.From([], [1], 28)), Close);
        Assert.Contains("assumed", LeadTime.From([], [], 28).Words);
    }

    private static (double, double) Read(LeadTime lead) => (lead.MeanDays, lead.VarianceDays);

    private static bool Close((double A, double B) one, (double A, double B) other) => Math.Abs(one.A - other.A) < 1e-9 && Math.Abs(one.B - other.B) < 1e-9;
}
