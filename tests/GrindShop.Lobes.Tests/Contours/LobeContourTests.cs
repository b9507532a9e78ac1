namespace GrindShop.Lobes.Tests;

public class LobeContourTests
{
    [Fact]
    public void Polar_radius_follows_the_surface()
    {
        var contour = LobeContour.Of(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn);

        Assert.Equal(0.625 + 0.335, contour.PolarRadiusIn(0), 1e-12);
        Assert.Equal(0.625, contour.PolarRadiusIn(Math.PI), 1e-12);
        Assert.All(contour.Points, p => Assert.Equal(p.PolarRadiusIn, contour.PolarRadiusIn(p.PolarAngleRad), 1e-9));
    }

    // Three points of the surface determine a circle; its radius must be the formula's (checks the curvature without any derivative).
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Curvature_is_that_of_the_circle_through_three_points(bool roller)
    {
        var points = LobeContour.Of(Everyday.Lobe(240, 0.3), roller ? Everyday.Roller : Follower.Flat, 1.4, 36_000).Points;
        for (var i = 7000; i < 29_000; i += 431)
        {
            ContourPoint a = points[i - 9], b = points[i], c = points[i + 9];
            if (b.RadiusIn is > 0.02 and < 20)
                Assert.Equal(b.IsConcave ? -b.RadiusIn : b.RadiusIn, CircleRadius(a, b, c), Math.Abs(b.RadiusIn) * 0.002 + 0.0002);
        }
    }

    [Fact]
    public void Points_converge_with_the_square_of_their_number()
    {
        double exact = 0.651334862992783, coarse = Error(90), fine = Error(360);

        Assert.Equal(exact, LobeContour.Of(Everyday.Law, Everyday.Roller, 1.25).PolarRadiusIn(1), 1e-9);
        Assert.InRange(coarse / fine, 10, 26);

        double Error(int points) => Math.Abs(Area(points) - Area(20_000));
        double Area(int points)
        {
            var p = LobeContour.Of(Everyday.Law, Everyday.Roller, 1.25, points).Points;
            return p.Select((a, i) => (a.XIn * p[(i + 1) % points].YIn - p[(i + 1) % points].XIn * a.YIn) / 2).Sum();
        }
    }

    [Theory]
    [InlineData(0.9)]
    [InlineData(4)]
    [InlineData(20)]
    public void Extremes_do_not_depend_on_the_number_of_points(double d)
    {
        var law = new PolynomialLaw(0.335, 1.4, d);
        LobeContour usual = LobeContour.Of(law, Everyday.Roller, 1.25), fine = LobeContour.Of(law, Everyday.Roller, 1.25, 50_000);

        Assert.Equal(fine.MinConvexRadiusIn, usual.MinConvexRadiusIn, 1e-5);
        Assert.Equal(fine.MinConcaveRadiusIn ?? 0, usual.MinConcaveRadiusIn ?? 0, (fine.MinConcaveRadiusIn ?? 0) * 1e-5);
        Assert.Equal(fine.MaxPressureAngleDeg!.Value, usual.MaxPressureAngleDeg!.Value, 1e-6);
    }

    [Fact]
    public void Undercut_shows_when_the_roller_is_larger_than_the_pitch_radius()
    {
        var peaky = PolynomialLaw.Solve(new(0.45, 200, 250, 0.006));

        Assert.False(LobeContour.Of(Everyday.Law, Everyday.Roller, 1.25).IsUndercut);
        Assert.True(LobeContour.Of(peaky, Follower.Roller(1.5), 0.6).IsUndercut);
        Assert.True(LobeContour.Of(peaky, Follower.Flat, 0.8).IsUndercut);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(1e9)]
    public void Nonsense_is_refused_by_name(double length)
    {
        Assert.Throws<ArgumentOutOfRangeException>("radiusIn", () => Follower.Roller(length));
        Assert.Throws<ArgumentOutOfRangeException>("baseCircleDiameterIn", () => LobeContour.Of(Everyday.Law, Everyday.Roller, length));
        Assert.Throws<ArgumentOutOfRangeException>("baseCircleDiameterIn", () => BlankOutline.Milled(Everyday.Law, Everyday.Roller, length, 0.03));
        Assert.Throws<ArgumentOutOfRangeException>("diameterIn", () => BlankOutline.Round(length));
        Assert.Throws<ArgumentOutOfRangeException>("lobeLiftIn", () => new PolynomialLaw(length, 1, 4));
        Assert.Throws<ArgumentOutOfRangeException>("baseCircleDiameterIn", () => MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, new(0.005), length));
    }

    [Fact]
    public void Other_nonsense_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("follower", () => LobeContour.Of(Everyday.Law, default, 1));
        Assert.Throws<ArgumentOutOfRangeException>("points", () => LobeContour.Of(Everyday.Law, Everyday.Roller, 1, 3));
        Assert.Throws<ArgumentOutOfRangeException>("stockIn", () => BlankOutline.Milled(Everyday.Law, Everyday.Roller, 1, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("turnCamDeg", () => MetalBand.Judge(Everyday.Blank, Everyday.Finish, double.NaN, new(0.005)));
        Assert.Throws<ArgumentOutOfRangeException>("CleanupIn", () => MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, new(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("CaseDepthIn", () => MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, new(0, double.NaN)));
    }

    [Fact]
    public void Tables_are_csv_with_units()
    {
        var wheel = GrindTable.WheelCentre(Everyday.Law, Everyday.Roller, 1.25, 9, 1).Split('\n');
        var surface = GrindTable.Contour(Everyday.Law, Everyday.Roller, 1.25, 0.5, LengthUnit.Millimetre).Split('\n');

        Assert.Equal("# wheel centre on the base circle 9.625000 in from the shaft axis", wheel[0]);
        Assert.Equal("cam angle (deg),wheel lift (in)", wheel[1]);
        Assert.Equal("0,0.335000", wheel[182]);
        Assert.Equal(363, wheel.Length);
        Assert.Equal("0,8.509000,24.384000", surface[361]);
        Assert.Equal("angle (deg),follower lift (mm),surface radius (mm)", surface[0]);
    }

    [Fact]
    public void A_wheel_table_read_back_is_the_same_lobe()
    {
        var file = LobeTableCsv.Read(GrindTable.WheelCentre(Everyday.Law, Everyday.Roller, 1.25, 9, 0.5));
        var master = TableLaw.Of(file.Lobes[0].Points, 0);

        Assert.Equal(222, new RolledLaw(master, Follower.Roller(9), 1.25, Everyday.Roller).DurationCrankDeg(0.05), 0.005);
    }

    private static double CircleRadius(ContourPoint a, ContourPoint b, ContourPoint c)
    {
        double abx = b.XIn - a.XIn, aby = b.YIn - a.YIn, acx = c.XIn - a.XIn, acy = c.YIn - a.YIn, bcx = c.XIn - b.XIn, bcy = c.YIn - b.YIn;
        var product = Math.Sqrt((abx * abx + aby * aby) * (acx * acx + acy * acy) * (bcx * bcx + bcy * bcy));
        return product / (2 * (abx * acy - acx * aby));
    }
}
