using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Tests.Public;

public sealed class TrackingTests
{
    private static readonly DateTimeOffset Day = new(2026, 3, 2, 15, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("abcd-2345 WXYZ 67", "ABCD2345WXYZ67")]
    [InlineData("ABCD2345WXYZ67", "ABCD2345WXYZ67")]
    [InlineData("--", null)]
    [InlineData(null, null)]
    public void Codes_are_read_as_people_type_them(string? typed, string? code) => Assert.Equal(code, TrackingCodes.Read(typed));

    [Fact]
    public void A_text_of_any_length_is_no_code() => Assert.Null(TrackingCodes.Read(new string('A', 5000)));

    [Fact]
    public void A_new_order_waits_for_its_price()
    {
        var steps = TrackStep.Of(NewOrder(), []);
        Assert.Equal(Day, steps[0].DoneAt);
        Assert.Equal("Priced", Assert.Single(steps, step => step.IsNow).Words);
    }

    [Fact]
    public void A_price_that_fell_away_is_not_done()
    {
        var order = NewOrder();
        order.Quote("PART", [new PriceLine("BASE", "Grind", 100m)], "Desk", Day.AddDays(1));
        Assert.Equal(Day.AddDays(1), TrackStep.Of(order, [])[1].DoneAt);
        order.Correct(order.First.Spec, null, "Desk", Day.AddDays(2), "Other lobe separation.");
        Assert.Null(TrackStep.Of(order, [])[1].DoneAt);
    }

    [Fact]
    public void Nothing_comes_next_for_a_declined_order()
    {
        var order = NewOrder();
        order.Decline("No blank can become it.", "Desk", Day);
        Assert.DoesNotContain(TrackStep.Of(order, []), step => step.IsNow);
    }

    [Theory]
    [InlineData(3, "3.0° before TDC")]
    [InlineData(-3.04, "3.0° after TDC")]
    [InlineData(0, "0.0° before TDC")]
    public void Events_are_said_with_their_side(double crankDeg, string words) => Assert.Equal(words, EventWords.Before(crankDeg, "TDC"));

    private static Order NewOrder()
    {
        var enquiry = new Enquiry { SubmitKey = "key", Channel = OrderChannel.Web, Spec = new CamSpec(), Contact = new Contact { Name = "Somebody" } };
        return Order.Receive(OrderNumbers.Next(1), enquiry, new Customer { Name = "Somebody", Since = Day }, Answer, "customer", Day);
    }

    /// <summary>A price stands on a blank that fits; which cam it becomes is not looked at here.</summary>
    private static FeasibilityAnswer Answer => new()
    {
        Verdict = Verdict.FromStock,
        Reasons = [],
        Grind = null!,
        Blanks = [new BlankFit { PartNumber = "PART", InStock = true, Fits = true, NeedsHeatTreat = false, LeadTimeDays = 0, Gear = new GearAdvice(GearVerdict.None, ""), Reasons = [] }],
    };
}
