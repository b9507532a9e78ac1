using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Tests.Feasibility;

namespace GrindShop.Shop.Tests.Orders;

public class PromiseRuleTests
{
    private static readonly BlankFit InStock = SomeOrders.Answer.Best! with { LeadTimeDays = 0, NeedsHeatTreat = false };

    /// <summary>Ten working days from each day of the week of Monday, March 9th, 2026, counted on a calendar.</summary>
    [Theory]
    [InlineData("2026-03-09", "2026-03-23")]
    [InlineData("2026-03-12", "2026-03-26")]
    [InlineData("2026-03-13", "2026-03-27")]
    [InlineData("2026-03-14", "2026-03-27")]
    [InlineData("2026-03-15", "2026-03-27")]
    public void Weekends_do_not_count(string today, string promise) => Assert.Equal(DateOnly.Parse(promise, null), Suggest(today, InStock));

    [Theory]
    [InlineData(true, 0, "2026-04-14")]
    [InlineData(false, 5, "2026-03-27")]
    [InlineData(true, 5, "2026-04-20")]
    public void Heat_treat_adds_working_days_and_an_ordered_blank_its_days(bool heatTreat, int leadDays, string promise) =>
        Assert.Equal(DateOnly.Parse(promise, null), Suggest("2026-03-09", InStock with { NeedsHeatTreat = heatTreat, LeadTimeDays = leadDays }));

    [Fact]
    public void Promise_never_falls_on_a_weekend() => Assert.All(Enumerable.Range(0, 60), day =>
        Assert.InRange(Suggest("2026-01-01", InStock with { LeadTimeDays = day }).DayOfWeek, DayOfWeek.Monday, DayOfWeek.Friday));

    private static DateOnly Suggest(string today, BlankFit fit) => PromiseRule.Suggest(DateOnly.Parse(today, null), fit, Shelf.Rules.Settings);
}
