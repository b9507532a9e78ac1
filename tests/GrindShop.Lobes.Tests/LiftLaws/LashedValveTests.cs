namespace GrindShop.Lobes.Tests;

public class LashedValveTests
{
    [Fact]
    public void Lash_shortens_the_opening_to_the_lobe_duration_at_lash_over_ratio()
    {
        var valve = new LashedValve(1.5, 0.018);

        Assert.Equal(0.012, valve.LobeLiftAtLashIn, 1e-15);
        Assert.Equal(Everyday.Law.DurationCrankDeg(0.012), valve.DurationCrankDeg(Everyday.Law, 0), 1e-12);
        Assert.Equal(0.335 * 1.5 - 0.018, valve.ValveLiftIn(0.335), 1e-15);
        Assert.Equal(0, valve.ValveLiftIn(0.010));
        Assert.Equal(
            Math.Abs(Everyday.Law.At(Everyday.Law.CrossingRad(0.012, true)).VelocityInPerRad) * Math.PI / 180,
            valve.VelocityAtLashInPerCamDeg(Everyday.Law, closing: true),
            1e-15);
    }

    [Theory]
    [InlineData(double.NaN, 0, "RockerRatio")]
    [InlineData(0, 0, "RockerRatio")]
    [InlineData(1.5, -0.001, "LashIn")]
    [InlineData(1.5, double.PositiveInfinity, "LashIn")]
    public void Nonsense_is_refused(double ratio, double lash, string argument) =>
        Assert.Throws<ArgumentOutOfRangeException>(argument, () => new LashedValve(ratio, lash));
}
