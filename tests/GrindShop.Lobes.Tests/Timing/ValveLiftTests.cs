using CsCheck;

namespace GrindShop.Lobes.Tests;

public class ValveLiftTests
{
    [Theory]
    [InlineData(0.335, 1.5, 0, 0.5025)]
    [InlineData(0.400, 1.6, 0.020, 0.620)]
    [InlineData(0.010, 1.5, 0.020, 0)]
    public void The_rocker_multiplies_and_lash_is_lost(double lobe, double ratio, double lash, double valve) =>
        Assert.Equal(valve, ValveLift.AtValve(lobe, ratio, lash), 1e-12);

    [Fact]
    public void Lash_is_just_closed_where_the_valve_has_no_lift() =>
        Assert.Equal(0.020 / 1.6, ValveLift.AtLobe(0, 1.6, 0.020), 1e-12);

    [Fact]
    public void There_and_back() =>
        Gen.Select(Gen.Double[0, 0.9], Gen.Double[1, 2], Gen.Double[0, 0.03]).Sample((valve, ratio, lash) =>
            Math.Abs(ValveLift.AtValve(ValveLift.AtLobe(valve, ratio, lash), ratio, lash) - valve) < 1e-12);

    [Theory]
    [InlineData(-0.1, 1.5, 0, "lobeLiftIn")]
    [InlineData(0.3, double.NaN, 0, "rockerRatio")]
    [InlineData(0.3, 1.5, 20, "lashIn")]
    public void Nonsense_is_refused_by_name(double lobe, double ratio, double lash, string name) =>
        Assert.Throws<ArgumentOutOfRangeException>(name, () => ValveLift.AtValve(lobe, ratio, lash));
}
