using CsCheck;
using GrindShop.Shop.Buying;

namespace GrindShop.Shop.Tests.Buying;

public class ReorderPointTests
{
    private static readonly Gen<Demand> Demands =
        from mean in Gen.Double[.05, 80]
        from ratio in Gen.Double[.2, 4]
        select Demand.Of(mean, mean * ratio);

    /// <summary>Chopra and Meindl, Supply Chain Management, exercise 11-4; the answers follow from the formulas and agree with the printed ones.</summary>
    [Fact]
    public void Textbook_exercise_11_4()
    {
        var demand = Demand.OverLeadTime(250 / 7.0, 150 * 150 / 7.0, 14, 0);
        var rule = new ReorderPoint(demand, 600, 1000);

        Assert.IsType<NormalDemand>(demand);
        Assert.Equal(100, rule.SafetyStock, 9);
        Assert.Equal(.6813, rule.CycleService, 4);
        Assert.Equal(43.861, rule.ShortagePerCycle, 3);
        Assert.Equal(.9561, rule.FillRate, 4);
    }

    /// <summary>The same exercise asked the other way round.</summary>
    [Fact]
    public void Textbook_exercise_gives_its_point_back_from_either_service()
    {
        var demand = Demand.OverLeadTime(250 / 7.0, 150 * 150 / 7.0, 14, 0);
        var rule = new ReorderPoint(demand, 600, 1000);

        Assert.Equal(600, ReorderPoint.ForCycleService(demand, rule.CycleService, 1000).Point, 6);
        Assert.Equal(600, ReorderPoint.ForFillRate(demand, rule.FillRate, 1000).Point, 5);
    }

    /// <summary>A public worked example: 50 a week with deviation 5, two weeks, 99 %: 100 + 2.3263 x 5 x sqrt 2.</summary>
    [Fact]
    public void Worked_example_of_99_percent() =>
        Assert.Equal(116.45, ReorderPoint.ForCycleService(Demand.OverLeadTime(50 / 7.0, 25 / 7.0, 14, 0), .99, 100).Point, 2);

    /// <summary>Chopra and Meindl, example 11-6 (memory): 2,500 a day with deviation 500, lead time 7 days with deviation 7; deviation over the lead time 17,550.</summary>
    [Fact]
    public void Uncertain_lead_time_adds_to_the_uncertain_demand() =>
        Assert.Equal(17_550, Demand.OverLeadTime(2500, 500 * 500, 7, 49).Deviation, 10.0);

    /// <summary>A public worked example: N(1000, 200), gain 30, loss 20: ratio .6, 1050.67.</summary>
    [Fact]
    public void Newsvendor_example()
    {
        var vendor = new Newsvendor(Demand.Of(1000, 200 * 200), 30, 20);
        Assert.Equal(.6, vendor.CriticalRatio, 12);
        Assert.Equal(1050.67, vendor.BestQuantity, 2);
        Assert.True(vendor.Expected(1050.67) > Math.Max(vendor.Expected(1000), vendor.Expected(1100)));
    }

    /// <summary>Chopra and Meindl's computer shop (memory): 12,000 a year, 4,000 an order, 20 % of 500 a year: 980.</summary>
    [Fact]
    public void Economic_order_quantity_example() => Assert.Equal(980, OrderQuantity.Economic(12_000, 4_000m, 100m), 0);

    [Theory]
    [InlineData(3.2, 1, 1, 4)]
    [InlineData(3.2, 5, 1, 5)]
    [InlineData(5.0, 5, 4, 8)]
    [InlineData(12, 5, 4, 12)]
    [InlineData(0, 1, 1, 1)]
    public void Quantity_is_one_that_the_supplier_sells(double wanted, int least, int multiple, int sold) =>
        Assert.Equal(sold, OrderQuantity.Sold(wanted, least, multiple));

    [Fact]
    public void Point_from_cycle_service_is_the_least_that_gives_it() =>
        Gen.Select(Demands, Gen.Double[.5, .999]).Sample((demand, service) =>
        {
            var rule = ReorderPoint.ForCycleService(demand, service, 5);
            var less = demand is CountedDemand ? rule.Point - 1 : rule.Point * (1 - 1e-6) - 1e-6;
            return rule.CycleService >= service - 1e-9 && (less < 0 || demand.AtMost(less) < service);
        });

    [Fact]
    public void Point_from_fill_rate_is_the_least_that_gives_it() =>
        Gen.Select(Demands, Gen.Double[.5, .999], Gen.Int[1, 40]).Sample((demand, fill, quantity) =>
        {
            var rule = ReorderPoint.ForFillRate(demand, fill, quantity);
            var less = demand is CountedDemand ? rule.Point - 1 : rule.Point - 1e-4;
            return rule.FillRate >= fill - 1e-6 && (less < 0 || new ReorderPoint(demand, less, quantity).FillRate < fill);
        });

    [Fact]
    public void Higher_points_serve_better_and_larger_orders_too() =>
        Gen.Select(Demands, Gen.Int[0, 60], Gen.Int[1, 30]).Sample((demand, point, quantity) =>
        {
            ReorderPoint rule = new(demand, point, quantity), higher = new(demand, point + 1, quantity), larger = new(demand, point, quantity + 1);
            return higher.CycleService >= rule.CycleService - 1e-12 && higher.FillRate >= rule.FillRate - 1e-9
                && higher.ShortagePerCycle <= rule.ShortagePerCycle + 1e-12 && larger.FillRate >= rule.FillRate - 1e-9;
        });

    [Fact]
    public void More_variance_or_a_longer_lead_time_never_lowers_the_point() =>
        Gen.Select(Gen.Double[.02, 3], Gen.Double[.5, 3], Gen.Double[7, 90], Gen.Double[0, 20]).Sample((rate, ratio, days, spread) =>
        {
            double Point(double more, double longer, double wider) =>
                Demand.OverLeadTime(rate, rate * ratio * more, days + longer, spread * spread + wider).Sufficient(.95);
            var roundingAndRule = 1.5 + .1 * Point(1, 0, 0); // the rule changes from counted to normal along the way
            return Point(2, 0, 0) >= Point(1, 0, 0) - roundingAndRule && Point(1, 20, 0) >= Point(1, 0, 0) - roundingAndRule && Point(1, 0, 100) >= Point(1, 0, 0) - roundingAndRule;
        });
}
