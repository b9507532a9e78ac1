using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;
using Xunit;

namespace GrindShop.Web.Tests.Desk;

/// <summary>What the desk hears of a cam that the customer brings.</summary>
public sealed class CallHeardTests(StaffShop shop) : IClassFixture<StaffShop>
{
    [Fact]
    public async Task A_regrind_is_judged_once_the_used_cam_is_measured()
    {
        var draft = new CallDraft { Kind = WorkKind.Regrind, Line = "ridgetop hyd roller 222 @.050 .335 lobe 110+4", Condition = "worn" };
        Assert.False((await HeardAsync(draft)).CanBeJudged);

        draft.Measured = new MeasuredDraft { BaseCircle = 1.13, IntakeLift = .345, ExhaustLift = .345, IntakeDuration = 226, ExhaustDuration = 226, Alloy = BlankAlloy.AustemperedDuctileIron, Hardening = Hardening.Through };
        var heard = await HeardAsync(draft);

        Assert.True(heard.CanBeJudged);
        Assert.Equal("The used cam has the metal for this grind.", (await shop.Get<Catalog>().LookAsync(heard.Cam)).Answer!.Reasons[0]);
        Assert.False(heard.AsksLike(await HeardAsync(new CallDraft { Line = draft.Line })));
    }

    [Fact]
    public async Task What_is_chosen_beside_the_line_counts_for_a_gear_and_only_there()
    {
        var draft = new CallDraft { Kind = WorkKind.GearReplacement, Line = "iron gear on the distributor", Engine = "TI4-R", Distributor = DistributorGear.Bronze, Condition = "teeth gone" };
        draft.Gear.Marks = "M-14";

        var heard = await HeardAsync(draft);
        Assert.Equal(("TI4-R", DistributorGear.Bronze), (heard.Cam.Spec.EngineFamily, heard.Cam.Spec.DistributorGear));
        Assert.Empty(heard.ToAsk);

        draft.Kind = WorkKind.NewGrind;
        var cam = (await HeardAsync(draft)).Cam;
        Assert.Null(cam.Spec.EngineFamily);
        Assert.Null(cam.Gear);
        Assert.Null(cam.ReceivedCondition);
    }

    [Fact]
    public async Task The_enquiry_carries_everything_that_was_typed()
    {
        var draft = new CallDraft { Kind = WorkKind.GearReplacement, Line = "ridgetop for bob", Condition = "teeth gone", IsExpected = false, Notes = "call first" };
        draft.Gear.Marks = " M-14 ";

        var enquiry = draft.Enquiry((await HeardAsync(draft)).Reading);

        Assert.Equal((WorkKind.GearReplacement, "teeth gone", false, "M-14"), (enquiry.Kind, enquiry.ReceivedCondition, enquiry.IsExpected, enquiry.Gear!.Marks));
        Assert.EndsWith("call first", enquiry.Spec.Notes, StringComparison.Ordinal);
    }

    private async Task<CallHeard> HeardAsync(CallDraft draft) => CallHeard.Of(draft, (await shop.Get<Catalog>().ContentAsync()).Families);
}
