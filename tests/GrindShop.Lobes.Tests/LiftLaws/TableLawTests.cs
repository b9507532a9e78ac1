using MathNet.Numerics.Interpolation;

namespace GrindShop.Lobes.Tests;

public class TableLawTests
{
    private static readonly PolynomialLaw Truth = Everyday.Law;

    [Fact]
    public void A_one_degree_table_repeats_the_lobe()
    {
        var law = TableLaw.Of(Rows(1, 107.3), 0);

        Assert.Equal(107.3, law.NoseAtCamDeg, 1e-4);
        Assert.Equal(Truth.LobeLiftIn, law.LobeLiftIn, 1e-6);
        Assert.Equal(222, law.DurationCrankDeg(0.050), 0.001);
        Assert.Equal(272, law.DurationCrankDeg(0.006), 0.005);
        Assert.Equal(Truth.MaxVelocityInPerCamDeg, law.MaxVelocityInPerCamDeg, Truth.MaxVelocityInPerCamDeg * 1e-4);
    }

    // Source: MathNet.Numerics 5.0.0, CubicSpline.InterpolateNatural, an interpolating spline with free ends on the base circle.
    [Fact]
    public void Without_tolerance_it_is_the_interpolating_cubic_spline()
    {
        var rows = Rows(2, 180).ToList();
        var law = TableLaw.Of(rows, 0);
        var spline = CubicSpline.InterpolateNatural(rows.Select(r => r.CamDeg), rows.Select(r => r.LiftIn));

        for (var deg = -100.0; deg < 100; deg += 0.37)
            Assert.Equal(spline.Interpolate(deg + law.NoseAtCamDeg), law.At(Everyday.Rad(deg)).LiftIn, 1e-12);
    }

    [Fact]
    public void Measuring_noise_is_smoothed_by_the_stated_tolerance()
    {
        var random = new Random(7);
        var rows = Rows(0.5, 90).Select(r => r with { LiftIn = r.LiftIn + 0.0004 * (random.NextDouble() - 0.5) }).ToList();
        var noise = 0.0004 / Math.Sqrt(12);
        TableLaw rough = TableLaw.Of(rows, 0), smooth = TableLaw.Of(rows, noise);

        Assert.Equal(noise, smooth.RmsDeviationIn, 1e-9);
        Assert.True(WorstVelocityError(smooth) < WorstVelocityError(rough) / 5);
        Assert.Equal(222, smooth.DurationCrankDeg(0.050), 0.05);
    }

    [Fact]
    public void Steps_may_vary_and_the_base_circle_may_be_left_out()
    {
        var degrees = Enumerable.Range(0, 400).Select(i => -100 + i * 0.5 + 0.2 * Math.Sin(i));
        var law = TableLaw.Of(degrees.Select(d => new TablePoint(d, Truth.At(Everyday.Rad(d)).LiftIn)), 0);

        Assert.Equal(222, law.DurationCrankDeg(0.050), 0.001);
        Assert.Equal(0, law.At(Math.PI).LiftIn, 1e-9);
    }

    [Fact]
    public void An_asymmetric_lobe_keeps_its_two_sides()
    {
        var closing = Everyday.Lobe(230);
        var law = TableLaw.Of(
            Enumerable.Range(-180, 360).Select(d => new TablePoint(d, (d < 0 ? Truth : closing).At(Everyday.Rad(d)).LiftIn)), 0);

        Assert.Equal((222 + 230) / 2, law.DurationCrankDeg(0.05), 0.001);
        Assert.Equal(2, (law.CrossingRad(0.05, true) + law.CrossingRad(0.05, false)) / Everyday.Rad(1), 0.05);
    }

    [Fact]
    public void A_gap_on_the_flank_is_refused_in_words()
    {
        var rows = Rows(1, 180).Where(r => r.CamDeg is < 130 or > 145);

        Assert.False(TableLaw.TryOf(rows, 0, out _, out var error));
        Assert.Contains("leaves out 129 to 146", error.Message);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(0)]
    public void Too_few_rows_are_refused(int count) => Assert.False(TableLaw.TryOf(Rows(1, 0).Take(count), 0, out _, out _));

    [Fact]
    public void A_table_that_is_no_lobe_is_refused()
    {
        Assert.False(TableLaw.TryOf(Rows(1, 0).Select(r => r with { LiftIn = 0 }), 0, out _, out _));
        Assert.False(TableLaw.TryOf(Rows(1, 0).Select(r => r with { LiftIn = double.NaN }), 0, out _, out _));
        Assert.Throws<ArgumentOutOfRangeException>("toleranceIn", () => TableLaw.Of(Rows(1, 0), double.NaN));
    }

    private static IEnumerable<TablePoint> Rows(double step, double nose) => Enumerable.Range(0, (int)(360 / step))
        .Select(i => new TablePoint(i * step, Truth.At(Everyday.Rad(i * step - nose)).LiftIn));

    private static double WorstVelocityError(LiftLaw law) => Enumerable.Range(-80, 160)
        .Max(d => Math.Abs(law.At(Everyday.Rad(d)).VelocityInPerRad - Truth.At(Everyday.Rad(d)).VelocityInPerRad));
}
