using GrindShop.Shop.Routing;
using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public sealed class BacklogNumbersTests
{
    private static readonly DateOnly Today = new(2026, 3, 10);

    private static readonly BacklogRow[] Rows =
    [
        Row("C1", Stage.Grind, -3), Row("C2", Stage.HeatTreatBack, -1), Row("C3", null, 0), Row("C4", Stage.HeatTreatBack, 7), Row("C5", Stage.Grind, 8),
    ];

    [Theory]
    [InlineData("late", "C1 C2")]
    [InlineData("week", "C3 C4")]
    [InlineData("blank", "C3")]
    [InlineData("vendor", "C2 C4")]
    [InlineData("all", "C1 C2 C3 C4 C5")]
    [InlineData(null, "C1 C2 C3 C4 C5")]
    [InlineData("mistyped", "C1 C2 C3 C4 C5")]
    public void A_number_counts_the_rows_it_shows(string? code, string orders)
    {
        var number = BacklogNumbers.Named(code);
        Assert.Equal(orders, string.Join(' ', Rows.Where(row => number.Counts(row, Today)).Select(row => row.OrderNumber)));
    }

    [Fact]
    public void Bars_stand_in_the_order_of_the_route_and_tell_the_late_ones() => Assert.Equal(
        [new BacklogBar(null, 1, 0), new BacklogBar(Stage.Grind, 2, 1), new BacklogBar(Stage.HeatTreatBack, 2, 1)],
        BacklogBar.Of(Rows));

    private static BacklogRow Row(string order, Stage? stage, int dueInDays) => new(
        order, null, "Somebody", "RV8-R", stage, DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, Today.AddDays(dueInDays), Math.Max(0, -dueInDays));
}
