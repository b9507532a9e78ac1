using CsCheck;

namespace GrindShop.Lobes.Tests;

public class RolledLawTests
{
    private const double BaseIn = Everyday.BaseCircleIn;

    public static TheoryData<double, double> Rollers => new() { { 0.375, 0.25 }, { 0.375, 0.9 }, { 0.375, 9 }, { 0.30, 6 } };

    [Theory]
    [MemberData(nameof(Rollers))]
    public void Roller_to_roller_and_back_is_the_law(double from, double to)
    {
        var there = new RolledLaw(Everyday.Law, Follower.Roller(from), BaseIn, Follower.Roller(to));

        AssertSame(Everyday.Law, new RolledLaw(there, Follower.Roller(to), BaseIn, Follower.Roller(from)));
    }

    [Fact]
    public void Flat_to_roller_and_back_is_the_law()
    {
        var there = new RolledLaw(Everyday.Law, Follower.Flat, BaseIn, Everyday.Roller);

        AssertSame(Everyday.Law, new RolledLaw(there, Everyday.Roller, BaseIn, Follower.Flat));
    }

    [Fact]
    public void Velocity_and_acceleration_are_the_derivatives()
    {
        const double step = 1e-5;
        foreach (var law in new LiftLaw[] { new RolledLaw(Everyday.Law, Everyday.Roller, BaseIn, Follower.Roller(9)), new RolledLaw(Everyday.Law, Follower.Flat, BaseIn, Everyday.Roller) })
            for (var theta = -1.4; theta < 1.4; theta += 0.0713)
            {
                var (before, here, after) = (law.At(theta - step), law.At(theta), law.At(theta + step));
                Assert.Equal((after.LiftIn - before.LiftIn) / (2 * step), here.VelocityInPerRad, 1e-6);
                Assert.Equal((after.VelocityInPerRad - before.VelocityInPerRad) / (2 * step), here.AccelerationInPerRad2, 1e-3);
            }
    }

    // The definition, without any envelope formula: the follower stops where no point of the body is beyond it.
    [Theory]
    [InlineData(9.0)]
    [InlineData(0.2)]
    [InlineData(null)]
    public void The_lift_is_where_the_follower_meets_the_body(double? radius)
    {
        var follower = radius is { } r ? Follower.Roller(r) : Follower.Flat;
        var law = new RolledLaw(Everyday.Law, Everyday.Roller, BaseIn, follower);
        var body = LobeContour.Of(Everyday.Law, Everyday.Roller, BaseIn, 40_000).Points;
        for (var theta = -2.0; theta < 2.0; theta += 0.217)
        {
            var reach = body.Max(p => Reach(p, theta, radius));
            Assert.Equal(reach - BaseIn / 2, law.At(theta).LiftIn, 1e-7);
        }
    }

    [Fact]
    public void A_wheel_larger_than_the_hollow_bridges_it_and_says_so()
    {
        var sharp = new PolynomialLaw(0.45, 1.0, 6);
        var contour = LobeContour.Of(sharp, Everyday.Roller, BaseIn);
        var hollow = contour.MinConcaveRadiusIn!.Value;

        Assert.True(contour.WheelReaches(hollow * 0.99));
        Assert.False(contour.WheelReaches(hollow * 1.01));
        AssertSame(sharp, Back(sharp, hollow * 0.97));
        Assert.True(Enumerable.Range(-60, 120).Max(d => Back(sharp, hollow * 3).At(Everyday.Rad(d)).LiftIn - sharp.At(Everyday.Rad(d)).LiftIn) > 1e-4);
    }

    [Fact]
    public void Any_roller_on_any_lobe_that_can_be_ground_comes_back() =>
        (from at050 in Gen.Double[200, 280] from lift in Gen.Double[0.25, 0.40] from wheel in Gen.Double[0.05, 10] select (at050, lift, wheel))
        .Sample(
            c =>
            {
                var law = Everyday.Lobe(c.at050, c.lift);
                var contour = LobeContour.Of(law, Everyday.Roller, BaseIn, 720);
                if (!contour.IsUndercut && (contour.MinConcaveRadiusIn ?? 100) > c.wheel * 1.05)
                    AssertSame(law, new RolledLaw(new RolledLaw(law, Everyday.Roller, BaseIn, Follower.Roller(c.wheel)), Follower.Roller(c.wheel), BaseIn, Everyday.Roller));
            },
            iter: 12);

    private static RolledLaw Back(LiftLaw law, double wheel) =>
        new(new RolledLaw(law, Everyday.Roller, BaseIn, Follower.Roller(wheel)), Follower.Roller(wheel), BaseIn, Everyday.Roller);

    private static double Reach(ContourPoint p, double theta, double? radius)
    {
        double along = p.XIn * Math.Cos(theta) + p.YIn * Math.Sin(theta), across = p.YIn * Math.Cos(theta) - p.XIn * Math.Sin(theta);
        if (radius is not { } r)
            return along;
        return Math.Abs(across) < r ? along + Math.Sqrt(r * r - across * across) - r : double.NegativeInfinity;
    }

    private static void AssertSame(LiftLaw expected, LiftLaw actual)
    {
        for (var theta = -3.1; theta < 3.1; theta += 0.0631)
            Assert.Equal(expected.At(theta).LiftIn, actual.At(theta).LiftIn, 1e-7);
    }
}
