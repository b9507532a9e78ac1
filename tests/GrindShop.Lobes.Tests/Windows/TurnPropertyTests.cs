using CsCheck;

namespace GrindShop.Lobes.Tests;

public class TurnPropertyTests
{
    private const double BesideDeg = 0.02;

    [Fact]
    public void Just_inside_the_ends_the_lobe_fits_and_just_outside_it_does_not() =>
        (from at050 in Gen.Double[210, 240]
         from lift in Gen.Double[0.30, 0.36]
         from baseCircle in Gen.Double[1.10, 1.26]
         from stock in Gen.Double[0.020, 0.060]
         from cased in Gen.Bool
         select (at050, lift, baseCircle, stock, cased)).Sample(
            c =>
            {
                var blank = BlankOutline.Milled(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn, c.stock);
                var finish = new FinishLobe(Everyday.Lobe(c.at050, c.lift), Everyday.Roller);
                BandLimits limits = new(Everyday.CleanupIn, c.cased ? 0.120 : null, 0.030);
                bool Fits(double turn) => MetalBand.Judge(blank, finish, turn, limits, c.baseCircle).Fits;
                if (GrindWindow.Turns(blank, finish, limits, c.baseCircle) is not { } range)
                    Assert.False(Fits(0));
                else if (range.MaxCamDeg - range.MinCamDeg > 4 * BesideDeg)
                    Assert.True(
                        Fits(range.MinCamDeg + BesideDeg) && Fits(range.MaxCamDeg - BesideDeg)
                        && !Fits(range.MinCamDeg - BesideDeg) && !Fits(range.MaxCamDeg + BesideDeg));
            },
            iter: 20);

    [Fact]
    public void A_smaller_base_circle_never_narrows_the_window_of_a_through_hard_blank()
    {
        var widths = new[] { 1.28, 1.24, 1.20, 1.16 }
            .Select(bc => GrindWindow.Turns(Everyday.Blank, Everyday.Finish, new(Everyday.CleanupIn), bc)!.Value)
            .Select(range => range.MaxCamDeg - range.MinCamDeg).ToList();

        Assert.Equal(widths.Order(), widths);
    }

    [Fact]
    public void Absurd_pairs_give_no_window_and_no_exception() =>
        (from lift in Gen.Double[0.06, 1.2]
         from half in Gen.Double[0.2, Math.PI]
         from d in Gen.Double[0.8, 80]
         from radius in Gen.Double[0.05, 10]
         from baseCircle in Gen.Double[0.1, 5]
         select (lift, half, d, radius, baseCircle)).Sample(
            c =>
            {
                var law = new PolynomialLaw(c.lift, c.half, c.d);
                var follower = Follower.Roller(c.radius);
                var range = GrindWindow.Turns(Everyday.Blank, new(law, follower), new(0.005, 0.2), c.baseCircle);
                Assert.True(range is null || range.Value.MinCamDeg <= range.Value.MaxCamDeg);
                var duration = new RolledLaw(law, follower, c.baseCircle, Everyday.Roller).DurationCrankDeg(0.05);
                Assert.InRange(duration, 0, 720);
            },
            iter: 15);
}
