namespace GrindShop.Lobes.Tests;

/// <summary>Facts of the trade, computed from an invented everyday lobe (.335 in, 222 at .050, 272 at .006, base circle 1.25, stock .030).
/// All are common practice, no source.</summary>
public class TradeFactTests
{
    private static readonly BandLimits Cleanup = new(Everyday.CleanupIn);

    // "With everyday stock (about .030 in per side, from memory) the LSA can move about 2 cam degrees and the ICL about 3 crank degrees."
    // Reproduced for the grinds such a blank is bought for: lobes 8 to 10 crank degrees longer than its nominal grind, on the nominal base
    // circle. Each lobe may then turn about 1.5 cam degrees: 3 crank degrees of centreline, and a separation that moves 1.5 by one lobe
    // or 3 by both. The blank's own lobe may turn twice as far.
    [Theory]
    [InlineData(230)]
    [InlineData(231)]
    [InlineData(232)]
    public void A_somewhat_longer_lobe_can_move_about_two_of_separation_and_three_of_centreline(double at050)
    {
        var window = Window(at050, Everyday.BaseCircleIn, new(113, 108));

        var turn = window.IntakeTurn!.Value.MaxCamDeg;
        Assert.InRange(2 * turn, 2.5, 3.7);
        Assert.InRange(2, turn, turn + window.ExhaustTurn!.Value.MaxCamDeg);
        Assert.True(window.Inside);
        Assert.False(Window(at050, Everyday.BaseCircleIn, new(112, 112)).Inside);
        Assert.False(Window(at050, Everyday.BaseCircleIn, new(116, 108)).Inside);
    }

    [Fact]
    public void Its_own_lobe_can_turn_about_twice_as_far()
    {
        Assert.InRange(GrindWindow.Turns(Everyday.Blank, Everyday.Finish, Cleanup, Everyday.BaseCircleIn)!.Value.MaxCamDeg, 3.3, 3.7);
    }

    // "It cannot become a cam some 25 degrees longer at .050 without giving up far too much base circle": .080 in against its own lobe
    // before anything is turned, and more than .100 when the separation is to move by 2.
    [Fact]
    public void A_lobe_25_degrees_longer_costs_far_too_much_base_circle()
    {
        var longer = new FinishLobe(Everyday.Lobe(247), Everyday.Roller);
        var own = MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, Cleanup).MaxBaseCircleDiameterIn;

        Assert.InRange(own - MetalBand.Judge(Everyday.Blank, longer, 0, Cleanup).MaxBaseCircleDiameterIn, 0.075, 0.085);
        Assert.True(own - MetalBand.Judge(Everyday.Blank, longer, 1.5, Cleanup).MaxBaseCircleDiameterIn > 0.100);
        Assert.Null(GrindWindow.Turns(Everyday.Blank, longer, Cleanup, Everyday.BaseCircleIn));
    }

    // "The deeper the case, the more can be taken off: an induction-hardened blank can be ground much further than a carburized one."
    [Fact]
    public void A_deep_case_can_be_ground_much_further()
    {
        BandLimits carburized = new(Everyday.CleanupIn, 0.060, 0.030), induction = new(Everyday.CleanupIn, 0.250, 0.030);
        var longer = new FinishLobe(Everyday.Lobe(247), Everyday.Roller);

        Assert.False(MetalBand.Judge(Everyday.Blank, longer, 0, carburized).Fits);
        Assert.True(MetalBand.Judge(Everyday.Blank, longer, 0, induction).Fits);
        Assert.True(MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, carburized).Fits);
        Assert.InRange(MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, induction, 1.0).LeastCaseLeftIn!.Value, 0.09, 0.11);
    }

    // "Raising the lift on the same journals forces a smaller base circle" (geometry), through the bore and out of the same blank.
    [Fact]
    public void More_lift_forces_a_smaller_base_circle()
    {
        Assert.Equal(
            2 * 0.020,
            BearingBore.MaxBaseCircleDiameterIn(2, 0.335, 0.01) - BearingBore.MaxBaseCircleDiameterIn(2, 0.355, 0.01),
            1e-12);
        var higher = new FinishLobe(Everyday.Lobe(222, 0.355), Everyday.Roller);
        Assert.Equal(1.300 - 0.040, MetalBand.Judge(Everyday.Blank, higher, 0, Cleanup).MaxBaseCircleDiameterIn, 1e-4);
    }

    private static GrindWindow Window(double at050, double baseCircleIn, CamPhase wanted)
    {
        var finish = new FinishLobe(Everyday.Lobe(at050), Everyday.Roller);
        return GrindWindow.Of(
            new(Everyday.Blank, Everyday.Blank, new(112, 108), finish, finish, wanted, Cleanup, baseCircleIn, baseCircleIn));
    }
}
