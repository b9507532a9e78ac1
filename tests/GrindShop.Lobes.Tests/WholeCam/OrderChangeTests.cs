namespace GrindShop.Lobes.Tests;

public class OrderChangeTests
{
    private static readonly EngineBanks Engine = Engines.Eight(0);

    [Fact]
    public void Swapping_companions_moves_their_lobes_half_a_turn()
    {
        var change = OrderChange.Of(Engine, Engines.Shaft(Engine), Engine.Firing.Order.Swapped(4, 7)).Required();
        Assert.Equal([4, 4, 7, 7], change.Moved.Select(lobe => lobe.Lobe.Cylinder));
        Assert.All(change.Moved, lobe => Assert.Equal(180, lobe.ShiftCamDeg, 1e-9));
    }

    [Fact]
    public void Swapping_neighbours_moves_each_the_other_way()
    {
        var change = OrderChange.Of(Engine, Engines.Shaft(Engine), Engine.Firing.Order.Swapped(2, 7)).Required();
        Assert.All(change.Moved, lobe => Assert.Equal(lobe.Lobe.Cylinder == 2 ? 45 : -45, lobe.ShiftCamDeg, 1e-9));
        Assert.Equal(4, change.Moved.Count);
    }

    // Common practice, no source: a changed firing order needs a blank milled for it, or a full-round one.
    [Fact]
    public void A_milled_blank_cannot_take_another_order_but_a_full_round_one_can()
    {
        var change = OrderChange.Of(Engine, Engines.Shaft(Engine), Engine.Firing.Order.Swapped(4, 7)).Required();
        Assert.Equal(OrderVerdict.NeedsBlankMilledForIt, change.On(fullRoundBlank: false));
        Assert.Equal(OrderVerdict.FullRoundTakesIt, change.On(fullRoundBlank: true));
    }

    [Fact]
    public void The_same_order_moves_nothing() => Assert.Equal(OrderVerdict.SameLobes,
        OrderChange.Of(Engine, Engines.Shaft(Engine), Engine.Firing.Order).Required().On(fullRoundBlank: false));

    // With the banks 90 apart, cylinders 1 and 4 have their lobes at the same angles, yet fire 180 apart: swapping them moves both.
    [Fact]
    public void Lobes_at_one_angle_still_move_when_their_cylinders_swap()
    {
        var engine = Engines.Eight(90);
        var change = OrderChange.Of(engine, Engines.Shaft(engine), engine.Firing.Order.Swapped(1, 4)).Required();
        Assert.Equal([-90, -90, 90, 90], change.Moved.Select(lobe => Math.Round(lobe.ShiftCamDeg, 9)));
    }

    [Fact]
    public void A_bad_shaft_is_reported_and_another_engine_refused()
    {
        Assert.IsType<CamLayoutProblem.NoLobes>(
            OrderChange.Of(Engine, Engines.Shaft(Engine) with { Lobes = [] }, Engine.Firing.Order).Problem);
        Assert.Throws<ArgumentOutOfRangeException>("other",
            () => OrderChange.Of(Engine, Engines.Shaft(Engine), FiringOrder.Parse("1-3-4-2", 4).Required()));
    }
}
