using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;

namespace GrindShop.Web.Tests.Desk;

public class PriceDraftTests
{
    private static readonly DateOnly Monday = new(2026, 3, 9);

    [Fact]
    public void The_day_follows_the_rules_until_somebody_types_one()
    {
        var draft = new PriceDraft();

        draft.Follow(ShipsOn(Monday));
        Assert.Equal(Monday, draft.ShipOn);
        draft.Follow(ShipsOn(Monday.AddDays(7)));
        Assert.Equal(Monday.AddDays(7), draft.ShipOn);
        draft.ShipOn = Monday.AddDays(30);
        draft.Follow(ShipsOn(Monday.AddDays(8)));
        Assert.Equal(Monday.AddDays(30), draft.ShipOn);
    }

    [Fact]
    public void A_day_that_was_cleared_stays_cleared()
    {
        var draft = new PriceDraft();
        draft.Follow(ShipsOn(Monday));
        draft.ShipOn = null;

        draft.Follow(ShipsOn(Monday.AddDays(7)));

        Assert.Null(draft.ShipOn);
    }

    private static PriceByRules ShipsOn(DateOnly day) => new([new PriceLine("base", "Grinding", 300) { RuleAmount = 300 }], day, new Dictionary<int, BlankFit>(), []);
}
