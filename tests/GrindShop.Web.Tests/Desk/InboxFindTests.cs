using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Desk;

namespace GrindShop.Web.Tests.Desk;

public sealed class InboxFindTests
{
    private static readonly InboxRow Row = new(
        "C1042", OrderState.Quoted, DateTimeOffset.UnixEpoch, OrderChannel.Phone, "Plumb Line Machine", "blue car",
        new CamSpec { EngineFamily = "RV8-R", Lifter = LifterType.SolidRoller, LobeSeparationCamDeg = 112 },
        Verdict.FromStock, 1, 400, DateTimeOffset.UnixEpoch, null);

    [Theory]
    [InlineData("")]
    [InlineData("1042")]
    [InlineData("c1042")]
    [InlineData("plumb rv8")]
    [InlineData("  blue   solid ")]
    [InlineData("lsa 112")]
    [InlineData("from stock quoted")]
    public void Every_word_is_found_wherever_it_stands(string text) => Assert.True(InboxFind.Matches(Row, text));

    [Theory]
    [InlineData("c1043")]
    [InlineData("plumb red")]
    public void A_word_that_stands_nowhere_finds_nothing(string text) => Assert.False(InboxFind.Matches(Row, text));
}
