using CsCheck;

namespace GrindShop.Lobes.Tests;

public class FurnaceTests
{
    // F. E. Harris's published table, in at 1, 4, 8 and 16 hours. The table is rounded to .001, so the formula agrees within half of that;
    // the last figure is the exception: the formula gives .11751 where .117 is printed.
    [Theory]
    [InlineData(1600, .018, .035, .050, .071)]
    [InlineData(1650, .021, .042, .060, .084)]
    [InlineData(1700, .025, .050, .071, .100)]
    [InlineData(1750, .029, .059, .083, .117)]
    public void Harris_table(double fahrenheit, double one, double four, double eight, double sixteen)
    {
        Assert.Equal(one, Carburizing.DepthIn(1, fahrenheit), .0005);
        Assert.Equal(four, Carburizing.DepthIn(4, fahrenheit), .0005);
        Assert.Equal(eight, Carburizing.DepthIn(8, fahrenheit), .0005);
        Assert.Equal(sixteen, Carburizing.DepthIn(16, fahrenheit), .00051);
    }

    [Fact]
    public void Depth_and_time_there_and_back() => Gen.Select(Gen.Double[.1, 24], Gen.Double[1550, 1800]).Sample((hours, fahrenheit) =>
        Math.Abs(Carburizing.Hours(Carburizing.DepthIn(hours, fahrenheit), fahrenheit) - hours) < 1e-9);

    // Kapoor's worked examples: 114.6e-8 ohm m at 10 kHz; 5e-7 ohm m to 1.5 mm.
    [Fact]
    public void Induction_reference_depth()
    {
        Assert.Equal(5.3878, Induction.ReferenceDepthIn(114.6e-8, 10_000) * 25.4, 5e-5);
        Assert.Equal(56_290, Induction.FrequencyHz(5e-7, 1.5 / 25.4), 5.0);
    }

    [Fact]
    public void Depth_and_frequency_there_and_back() =>
        Gen.Select(Gen.Double[1e3, 1e6], Gen.Double[1, 100]).Sample((hertz, permeability) => Math.Abs(
            Induction.FrequencyHz(1e-6, Induction.ReferenceDepthIn(1e-6, hertz, permeability), permeability) / hertz - 1) < 1e-9);

    [Fact]
    public void Nonsense_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("hours", () => Carburizing.DepthIn(double.NaN, 1700));
        Assert.Throws<ArgumentOutOfRangeException>("fahrenheit", () => Carburizing.DepthIn(8, 900));
        Assert.Throws<ArgumentOutOfRangeException>("depthIn", () => Carburizing.Hours(-.1, 1700));
        Assert.Throws<ArgumentOutOfRangeException>("frequencyHz", () => Induction.ReferenceDepthIn(1e-6, 0));
        Assert.Throws<ArgumentOutOfRangeException>("resistivityOhmM", () => Induction.FrequencyHz(double.PositiveInfinity, .1));
    }
}
