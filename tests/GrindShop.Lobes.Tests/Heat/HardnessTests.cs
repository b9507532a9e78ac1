using CsCheck;

namespace GrindShop.Lobes.Tests;

public class HardnessTests
{
    // ASTM E140, non-austenitic steels.
    [Theory]
    [InlineData(62, 746, 688)]
    [InlineData(60, 697, 654)]
    [InlineData(58, 653, 615)]
    [InlineData(55, 595, 560)]
    [InlineData(52, 544, 512)]
    [InlineData(50, 513, 481)]
    [InlineData(48, 484, 455)]
    [InlineData(45, 446, 421)]
    [InlineData(40, 392, 371)]
    [InlineData(35, 345, 327)]
    [InlineData(30, 302, 286)]
    [InlineData(25, 266, 253)]
    [InlineData(20, 238, 226)]
    public void Rows_of_the_standard_every_way(double hrc, double hv, double hbw)
    {
        Assert.Equal(hv, Value(hrc, HardnessScale.Hrc, HardnessScale.Hv), 1e-9);
        Assert.Equal(hbw, Value(hrc, HardnessScale.Hrc, HardnessScale.Hbw), 1e-9);
        Assert.Equal(hrc, Value(hv, HardnessScale.Hv, HardnessScale.Hrc), 1e-9);
        Assert.Equal(hbw, Value(hv, HardnessScale.Hv, HardnessScale.Hbw), 1e-9);
        Assert.Equal(hrc, Value(hbw, HardnessScale.Hbw, HardnessScale.Hrc), 1e-9);
    }

    // Rows of ASTM E140 that the table leaves out (memory): the straight line between its neighbours stays within 2 HV.
    [Theory]
    [InlineData(61, 720)]
    [InlineData(59, 674)]
    [InlineData(57, 633)]
    [InlineData(53, 560)]
    [InlineData(46, 458)]
    [InlineData(42, 412)]
    [InlineData(37, 363)]
    [InlineData(33, 327)]
    [InlineData(28, 286)]
    [InlineData(22, 248)]
    public void Between_the_rows_it_stays_near_the_standard(double hrc, double hv) =>
        Assert.Equal(hv, Value(hrc, HardnessScale.Hrc, HardnessScale.Hv), 2.0);

    [Fact]
    public void The_limit_of_550_HV_is_about_52_HRC() =>
        Assert.Equal(52.3, Value(550, HardnessScale.Hv, HardnessScale.Hrc), 0.1);

    [Fact]
    public void Harder_on_one_scale_is_harder_on_another_and_the_way_back_is_the_same() =>
        Gen.Select(Gen.Double[20, 61.9], Gen.Double[1e-4, .1], Gen.Enum<HardnessScale>()).Sample((hrc, more, scale) =>
            Value(hrc + more, HardnessScale.Hrc, scale) > Value(hrc, HardnessScale.Hrc, scale)
            && Math.Abs(Value(Value(hrc, HardnessScale.Hrc, scale), scale, HardnessScale.Hrc) - hrc) < 1e-9);

    [Theory]
    [InlineData(58, HardnessScale.Hrc, HardnessScale.Hbw, false)]
    [InlineData(58.5, HardnessScale.Hrc, HardnessScale.Hbw, true)]
    [InlineData(654, HardnessScale.Hbw, HardnessScale.Hv, true)]
    [InlineData(60, HardnessScale.Hrc, HardnessScale.Hv, false)]
    public void Brinell_above_58_HRC_is_marked(double value, HardnessScale from, HardnessScale to, bool beyond) =>
        Assert.Equal(beyond, Hardness.Convert(value, from, to).Required().BeyondBrinell);

    [Theory]
    [InlineData(19.9)]
    [InlineData(62.1)]
    public void Outside_the_table_there_is_no_conversion(double hrc) => Assert.Equal(
        new HardnessOutsideTable(new(hrc, HardnessScale.Hrc), 20, 62),
        Hardness.Convert(hrc, HardnessScale.Hrc, HardnessScale.Hv).Problem);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void Nonsense_is_refused_by_name(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>("value", () => Hardness.Convert(value, HardnessScale.Hv, HardnessScale.Hrc));
        Assert.Throws<ArgumentOutOfRangeException>("scale", () => Hardness.Convert(500, HardnessScale.Hv, (HardnessScale)9));
    }

    private static double Value(double value, HardnessScale from, HardnessScale to) => Hardness.Convert(value, from, to).Required().Value;
}
