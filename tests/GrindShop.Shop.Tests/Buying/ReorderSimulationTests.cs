using GrindShop.Shop.Buying;

namespace GrindShop.Shop.Tests.Buying;

/// <summary>The formulas against a shelf that is played blank by blank. The seeds are fixed: the same shelf every time.</summary>
public class ReorderSimulationTests
{
    [Theory]
    [InlineData(.12, 30, 5, 4)]
    [InlineData(.05, 45, 2, 1)]
    [InlineData(.30, 28, 9, 12)]
    public void Service_of_a_slow_mover_is_what_the_shelf_gives(double perDay, double leadDays, int point, int quantity)
    {
        var rule = new ReorderPoint(Demand.OverLeadTime(perDay, perDay, leadDays, 0), point, quantity);
        var (fillRate, cycleService, shortage) = Play(new Random(7), perDay, leadDays, point, quantity, 3_000_000);

        Assert.Equal("Poisson", rule.Demand.Words);
        Assert.Equal(rule.FillRate, fillRate, .004);
        Assert.Equal(rule.CycleService, cycleService, .006);
        Assert.Equal(rule.ShortagePerCycle, shortage, .012);
    }

    /// <summary>A Poisson demand over a gamma-distributed lead time is exactly negative binomial (Greenwood and Yule, 1920; memory).</summary>
    [Fact]
    public void Demand_over_a_lead_time_that_varies()
    {
        const double perDay = .1, mean = 40, variance = 300;
        var demand = Demand.OverLeadTime(perDay, perDay, mean, variance);
        var random = new Random(11);
        var draws = Enumerable.Range(0, 200_000).Select(_ =>
            MathNet.Numerics.Distributions.Poisson.Sample(random, perDay * MathNet.Numerics.Distributions.Gamma.Sample(random, mean * mean / variance, mean / variance))).ToList();

        Assert.Equal("negative binomial", demand.Words);
        for (var k = 0; k < 14; k++)
            Assert.Equal(demand.AtMost(k), draws.Count(draw => draw <= k) / (double)draws.Count, .005);
    }

    /// <summary>Demand one by one at exponential intervals; late demand waits; an order comes after a fixed time.</summary>
    private static (double FillRate, double CycleService, double Shortage) Play(Random random, double perDay, double leadDays, int point, int quantity, int demands)
    {
        var (now, onHand, position, met) = (0.0, point + quantity, point + quantity, 0);
        var (cycles, safe, missing) = (0, 0, 0.0);
        var due = new Queue<double>();
        for (var i = 0; i < demands; i++)
        {
            now += -Math.Log(1 - random.NextDouble()) / perDay;
            while (due.TryPeek(out var arrival) && arrival <= now)
            {
                due.Dequeue();
                (cycles, safe, missing) = (cycles + 1, safe + (onHand >= 0 ? 1 : 0), missing + Math.Max(0, -onHand));
                onHand += quantity;
            }
            met += onHand > 0 ? 1 : 0;
            (onHand, position) = (onHand - 1, position - 1);
            if (position > point)
                continue;
            position += quantity;
            due.Enqueue(now + leadDays);
        }
        return (met / (double)demands, safe / (double)cycles, missing / cycles);
    }
}
