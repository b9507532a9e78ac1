using GrindShop.Shop.Orders;
using GrindShop.Web.Desk;

namespace GrindShop.Web.Tests.Desk;

/// <summary>Two people of the desk on the same order.</summary>
public sealed class OrderWorkTests(StaffShop shop) : IClassFixture<StaffShop>
{
    private OrderDesk OrderDesk => shop.Get<OrderDesk>();

    [Fact]
    public async Task The_second_to_save_is_told_what_changed_and_may_carry_on()
    {
        var (imka, piers) = (await OpenAsync(StaffShop.New), await OpenAsync(StaffShop.New));
        imka.IsTyping = true;
        Assert.True(await CorrectAsync(piers, 109, "Piers Oakham"));

        Assert.False(await CorrectAsync(imka, 111, "Imka Tolland"));
        Assert.Equal("stale", imka.Refusal?.Code);
        Assert.Contains("Piers Oakham", imka.Refusal?.Reason);
        Assert.Equal("109 cam deg", Assert.Single(imka.Changes, change => change.Name == "Lobe separation").Now);
        Assert.NotEqual(109, imka.Order!.First.Spec.LobeSeparationCamDeg);

        imka.TakeNewer();
        Assert.Equal(109, imka.Order!.First.Spec.LobeSeparationCamDeg);
        Assert.Null(imka.Refusal);
        Assert.True(await CorrectAsync(imka, 111, "Imka Tolland"));
        Assert.Equal(111, (await OrderDesk.FindAsync(StaffShop.New))!.First.Spec.LobeSeparationCamDeg);
    }

    [Fact]
    public async Task A_change_is_taken_over_at_once_where_nothing_is_being_typed()
    {
        var (imka, piers) = (await OpenAsync(StaffShop.Quoted), await OpenAsync(StaffShop.Quoted));
        Assert.True(await CorrectAsync(piers, 109, "Piers Oakham"));
        await imka.HearAsync();
        Assert.Null(imka.Newer);
        Assert.Equal(OrderState.New, imka.Order!.State);
        Assert.Contains("Piers Oakham", imka.Said);
    }

    [Fact]
    public async Task A_change_waits_while_something_is_being_typed()
    {
        var (imka, piers) = (await OpenAsync(StaffShop.New), await OpenAsync(StaffShop.New));
        var before = imka.Order!.Version;
        imka.IsTyping = true;
        Assert.True(await CorrectAsync(piers, 108.5, "Piers Oakham"));
        await imka.HearAsync();
        Assert.Equal(before, imka.Order!.Version);
        Assert.NotNull(imka.Newer);
        imka.StopTyping();
        Assert.Equal(108.5, imka.Order!.First.Spec.LobeSeparationCamDeg);
    }

    private async Task<OrderWork> OpenAsync(string number)
    {
        var work = new OrderWork(OrderDesk, number);
        await work.HearAsync();
        return work;
    }

    private Task<bool> CorrectAsync(OrderWork work, double lsa, string by) => work.ActAsync(
        order => OrderDesk.CorrectAsync(order.Number, order.Version, order.First.Spec with { LobeSeparationCamDeg = lsa, IntakeCenterlineCrankDeg = null, AdvanceCrankDeg = null }, "asked", by), "Corrected.");
}
