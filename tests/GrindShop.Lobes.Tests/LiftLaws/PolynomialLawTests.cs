using CsCheck;

namespace GrindShop.Lobes.Tests;

public class PolynomialLawTests
{
    [Theory]
    [InlineData(0.335, 222, 272, 0.006)]
    [InlineData(0.600, 330, 366, 0.006)]
    [InlineData(0.150, 150, 230, 0.006)]
    [InlineData(0.420, 262, 294, 0.020)]
    public void Both_durations_come_out_as_specified(double lift, double at050, double advertised, double at)
    {
        var law = PolynomialLaw.Solve(new(lift, at050, advertised, at));

        Assert.Equal(at050, law.DurationCrankDeg(0.050), 1e-8);
        Assert.Equal(advertised, law.DurationCrankDeg(at), 1e-8);
        Assert.Equal(lift, law.At(0).LiftIn, 1e-14);
    }

    [Fact]
    public void Every_pair_inside_the_named_range_is_solved_and_none_outside()
    {
        (from lift in Gen.Double[0.055, 1.0]
         from at050 in Gen.Double[150, 330]
         from share in Gen.Double[-0.2, 1.2]
         select (lift, at050, share)).Sample(c =>
        {
            PolynomialLaw.TrySolve(new(c.lift, c.at050, 699, 0.006), out _, out var error);
            if (error?.ReachableAdvertisedMinCrankDeg is not { } least || error.ReachableAdvertisedMaxCrankDeg is not { } most)
                return;
            var advertised = least + c.share * (most - least);
            var solved = PolynomialLaw.TrySolve(new(c.lift, c.at050, advertised, 0.006), out var law, out var why);
            if (c.share is < -0.001 or > 1.001)
                Assert.False(solved);
            else if (solved)
                Assert.Equal(advertised, law!.DurationCrankDeg(0.006), 0.001);
            else
                Assert.True(why!.ReachableAdvertisedMinCrankDeg is null || c.share is < 0.001 or > 0.999, why.Message);
        }, iter: 300);
    }

    // The terms of the stated series, s = L (1 + sum C_i x^n_i) with C_i = -prod n_j / (n_j - n_i), summed in decimal (28 digits)
    // for d = 4: Stoddart, "Polydyne Cam Design", Machine Design, 1953 (from memory).
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(9)]
    [InlineData(10)]
    public void Lift_is_the_stated_series(int tenthsOfElevenths)
    {
        int[] n = [2, 6, 10, 14, 18];
        var x = tenthsOfElevenths / 11m;
        var s = 1m;
        for (var i = 0; i < 5; i++)
        {
            var term = -1m;
            for (var j = 0; j < 5; j++)
                if (j != i)
                    term = term * n[j] / (n[j] - n[i]);
            for (var k = 0; k < n[i]; k++)
                term *= x;
            s += term;
        }

        Assert.Equal((double)s, new PolynomialLaw(1, 1, 4).At((double)x).LiftIn, 1e-13);
    }

    [Theory]
    [InlineData(0.8)]
    [InlineData(2.5)]
    [InlineData(80)]
    public void Velocity_and_acceleration_are_the_derivatives(double d)
    {
        var law = new PolynomialLaw(0.4, 1.3, d);
        const double step = 1e-5;
        for (var theta = -1.29; theta < 1.29; theta += 0.0437)
        {
            var (before, here, after) = (law.At(theta - step), law.At(theta), law.At(theta + step));
            Assert.Equal((after.LiftIn - before.LiftIn) / (2 * step), here.VelocityInPerRad, 2e-6);
            Assert.Equal((after.VelocityInPerRad - before.VelocityInPerRad) / (2 * step), here.AccelerationInPerRad2, 2e-3);
        }
    }

    [Fact]
    public void The_lift_ends_smoothly_and_repeats_every_turn()
    {
        var law = Everyday.Law;

        Assert.Equal(LiftPoint.Dwell, law.At(law.SupportEndRad + 1e-9));
        Assert.Equal(0, law.At(law.SupportEndRad - 1e-4).AccelerationInPerRad2, 1e-8);
        Assert.Equal(law.At(0.4).LiftIn, law.At(0.4 - 4 * Math.PI).LiftIn, 1e-13);
        Assert.Equal(law.At(0.4).LiftIn, law.At(-0.4).LiftIn, 1e-15);
    }

    [Fact]
    public void An_unreachable_pair_names_the_durations_that_work()
    {
        Assert.False(PolynomialLaw.TrySolve(new(0.335, 222, 500, 0.006), out _, out var error));

        Assert.InRange(272, error.ReachableAdvertisedMinCrankDeg!.Value, error.ReachableAdvertisedMaxCrankDeg!.Value);
        Assert.Contains("advertised duration can be", error.Message);
    }

    [Theory]
    [InlineData(double.NaN, 222, 272, 0.006)]
    [InlineData(0.335, double.PositiveInfinity, 272, 0.006)]
    [InlineData(0.335, 222, -1, 0.006)]
    [InlineData(0.335, 222, 272, 0.050)]
    [InlineData(0.050, 222, 272, 0.006)]
    [InlineData(0.335, 690, 699, 0.006)]
    [InlineData(1e300, 222, 272, 0.006)]
    public void Nonsense_is_refused_in_words(double lift, double at050, double advertised, double at)
    {
        Assert.False(PolynomialLaw.TrySolve(new(lift, at050, advertised, at), out var law, out var error));
        Assert.Null(law);
        Assert.NotEmpty(error.Message);
        Assert.Throws<ArgumentException>(() => PolynomialLaw.Solve(new(lift, at050, advertised, at)));
    }

    [Fact]
    public void Durations_at_and_above_the_lobe_lift_are_zero()
    {
        Assert.Equal(0, Everyday.Law.DurationCrankDeg(0.335));
        Assert.Equal(0, Everyday.Law.DurationCrankDeg(0.5));
        Assert.Throws<ArgumentOutOfRangeException>("atIn", () => Everyday.Law.DurationCrankDeg(double.NaN));
    }
}
