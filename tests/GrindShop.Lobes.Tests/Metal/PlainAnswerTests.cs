namespace GrindShop.Lobes.Tests;

/// <summary>Cases whose answer needs no computer.</summary>
public class PlainAnswerTests
{
    [Fact]
    public void The_nominal_grind_removes_exactly_the_stock()
    {
        var answer = MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, new(Everyday.CleanupIn), Everyday.BaseCircleIn);

        Assert.Equal(Everyday.StockIn, answer.MinRemovalIn, 2e-6);
        Assert.Equal(Everyday.StockIn, answer.MaxRemovalIn, 2e-6);
        Assert.Equal(Everyday.BaseCircleIn, answer.BaseCircleDiameterIn);
    }

    [Fact]
    public void From_a_round_the_nose_and_the_heel_decide()
    {
        var answer = MetalBand.Judge(BlankOutline.Round(2), Everyday.Finish, 77, new(0.010));

        Assert.Equal(2 * (1 - 0.010 - 0.335), answer.MaxBaseCircleDiameterIn, 2e-6);
        Assert.Equal(0.345, answer.MaxRemovalIn, 2e-6);
        Assert.Equal(0, answer.MinRemovalAtCamDeg, 1);
        Assert.Equal(new TurnRange(-180, 180), GrindWindow.Turns(BlankOutline.Round(2), Everyday.Finish, new(0.010), 1.3));
        Assert.Null(GrindWindow.Turns(BlankOutline.Round(2), Everyday.Finish, new(0.010), 1.32));
    }

    // Under a flat face both contours are offset curves of their support functions, so the base circles differ by the stock alone.
    [Fact]
    public void A_flat_tappet_blank_gives_stock_less_cleanup()
    {
        var law = Everyday.Lobe(240, 0.3);
        var answer = MetalBand.Judge(BlankOutline.Milled(law, Follower.Flat, 1.2, 0.04), new(law, Follower.Flat), 0, new(0.005));

        Assert.Equal(1.2 + 2 * (0.04 - 0.005), answer.MaxBaseCircleDiameterIn, 4e-6);
        Assert.Equal(0.005, answer.MaxRemovalIn, 4e-6);
    }

    [Fact]
    public void A_lobe_that_pokes_out_has_a_negative_removal()
    {
        var answer = MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, new(0.005), Everyday.BaseCircleIn + 0.080);

        Assert.Equal(-0.010, answer.MinRemovalIn, 2e-5);
        Assert.False(answer.Fits);
        Assert.False(answer.InsideOutsideEdge);
    }

    // Where the least is told to be, the surface must be that near the blank's: distance of that one point to the outline.
    [Fact]
    public void The_place_of_the_least_removal_is_where_it_is_least()
    {
        var contour = LobeContour.Of(Everyday.Law, Everyday.Roller, 1.2);
        BandAnswer plain = MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, new(0.005), 1.2), quick = new BandJudge(Everyday.Finish, new(0.005), 1.2).Judge(Everyday.Blank, 0);

        foreach (var (at, removal) in new[]
        {
            (plain.MinRemovalAtCamDeg, plain.MinRemovalIn), (quick.MinRemovalAtCamDeg, plain.MinRemovalIn),
            (plain.MaxRemovalAtCamDeg, plain.MaxRemovalIn), (quick.MaxRemovalAtCamDeg, plain.MaxRemovalIn),
        })
        {
            var touched = contour.TouchedAt(Everyday.Rad(at));
            Assert.Equal(removal, Everyday.Blank.Points.Min(p => Math.Sqrt(Math.Pow(p.XIn - touched.XIn, 2) + Math.Pow(p.YIn - touched.YIn, 2))), 0.0003);
        }
    }

    [Fact]
    public void The_cap_on_the_base_circle_is_kept()
    {
        var answer = MetalBand.Judge(Everyday.Blank, Everyday.Finish, 0, new(0.005), null, 1.20);

        Assert.Equal(1.20, answer.BaseCircleDiameterIn);
        Assert.Equal(1.30, answer.MaxBaseCircleDiameterIn, 2e-6);
        Assert.True(answer.MinRemovalIn > 0.05);
    }

    [Fact]
    public void Hopeless_pairs_answer_without_a_base_circle()
    {
        var answer = MetalBand.Judge(BlankOutline.Round(0.5), new(Everyday.Lobe(247), Everyday.Roller), 0, new(0.005));

        Assert.Equal(0, answer.MaxBaseCircleDiameterIn);
        Assert.False(answer.Fits);
    }

    [Fact]
    public void The_nose_passes_through_the_bearing_bore()
    {
        Assert.Equal(1.868 - 0.67 - 0.02, BearingBore.MaxBaseCircleDiameterIn(1.868, 0.335, 0.02), 1e-12);
        Assert.Equal(0, BearingBore.MaxBaseCircleDiameterIn(0.5, 0.335, 0.02));
    }

    [Fact]
    public void The_outline_stands_outside_the_nominal_grind_by_the_stock()
    {
        Assert.Equal(720, Everyday.Blank.Points.Length);
        Assert.Equal(0.625 + 0.335 + 0.030, Everyday.Blank.Points[0].XIn, 1e-6);
        Assert.Equal(-0.655, Everyday.Blank.Points[360].XIn, 1e-6);
    }
}
