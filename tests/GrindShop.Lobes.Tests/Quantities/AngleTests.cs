using CsCheck;

namespace GrindShop.Lobes.Tests;

public class AngleTests
{
    [Fact]
    public void A_cam_degree_is_two_crank_degrees() =>
        Assert.Equal(109, CrankDegrees.FromDegrees(218).ToCam().Value);

    [Theory]
    [InlineData(-90, 270)]
    [InlineData(360, 0)]
    [InlineData(725, 5)]
    [InlineData(-1e-13, 0)]
    [InlineData(359.9999999999, 0)]
    public void Wrapped_lies_from_0_up_to_360(double camDeg, double wrapped) =>
        Assert.Equal(wrapped, CamDegrees.FromDegrees(camDeg).Wrapped().Value, 1e-9);

    [Theory]
    [InlineData(270, -90)]
    [InlineData(180, 180)]
    [InlineData(-180, 180)]
    [InlineData(181, -179)]
    public void The_shorter_way_is_never_more_than_half_a_turn(double camDeg, double shorter) =>
        Assert.Equal(shorter, CamDegrees.FromDegrees(camDeg).ShorterWay().Value, 1e-9);

    [Fact]
    public void There_and_back() => Gen.Double[-10_000, 10_000].Sample(degrees =>
        Math.Abs(CamDegrees.FromDegrees(degrees).ToCrank().ToCam().Value - degrees) < 1e-9
        && Math.Abs(CamDegrees.FromRadians(degrees / 180 * Math.PI).Value - degrees) < 1e-9);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e300)]
    public void What_is_no_angle_is_refused(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>("camDeg", () => CamDegrees.FromDegrees(value));
        Assert.Throws<ArgumentOutOfRangeException>("crankDeg", () => CrankDegrees.FromDegrees(value));
    }
}
