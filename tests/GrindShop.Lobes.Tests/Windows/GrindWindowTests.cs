namespace GrindShop.Lobes.Tests;

public class GrindWindowTests
{
    private static readonly CamPhase BlankPhase = new(112, 108);

    [Fact]
    public void The_window_contains_the_nominal_grind_and_is_centred_on_it()
    {
        var window = Window(BlankPhase);

        Assert.True(window.Inside);
        Assert.Equal(BlankPhase, window.Nearest);
        Assert.Equal(-window.IntakeTurn!.Value.MinCamDeg, window.IntakeTurn.Value.MaxCamDeg, 1e-4);
        Assert.Equal(window.IntakeTurn.Value.MaxCamDeg, window.ExhaustTurn!.Value.MaxCamDeg, 1e-4);
    }

    [Fact]
    public void Turns_follow_the_definitions()
    {
        CamPhase wanted = new(113.5, 109);

        Assert.Equal(0.5, wanted.IntakeTurnFrom(BlankPhase));
        Assert.Equal(((2 * 113.5 - 109) - (2 * 112 - 108)) / 2, wanted.ExhaustTurnFrom(BlankPhase));
        Assert.Equal(wanted, BlankPhase.Turned(0.5, 1));
    }

    [Fact]
    public void Corners_are_the_ends_of_both_turns()
    {
        var window = Window(BlankPhase);
        double turn = window.IntakeTurn!.Value.MaxCamDeg;

        Assert.Equal(4, window.Corners.Length);
        Assert.Equal(112 - 2 * turn, window.Corners[0].LobeSeparationCamDeg, 1e-3);
        Assert.Equal(112, window.Corners[1].LobeSeparationCamDeg, 1e-3);
        Assert.Equal(108 + 2 * turn, window.Corners[2].IntakeCenterlineCrankDeg, 1e-3);
    }

    [Fact]
    public void Outside_the_window_the_nearest_phase_is_offered_and_works()
    {
        var window = Window(new(121, 108));

        Assert.False(window.Inside);
        Assert.True(Window(window.Nearest!.Value).Inside);
        Assert.True(window.Nearest.Value.LobeSeparationCamDeg is > 112 and < 121);
        var distance = Distance(window.Nearest.Value, new(121, 108));
        Assert.All(window.Corners, corner => Assert.True(Distance(corner, new(121, 108)) >= distance));
    }

    // An intake that closes later has its steep flank on the other side than an exhaust that closes later: the exhaust turns against.
    [Fact]
    public void An_asymmetric_exhaust_turns_the_other_way_round()
    {
        var lopsided = Lopsided();
        var blank = BlankOutline.Milled(Everyday.Law, Everyday.Roller, Everyday.BaseCircleIn, 0.04);
        var finish = new FinishLobe(lopsided, Everyday.Roller);
        var window = GrindWindow.Of(new(blank, blank, BlankPhase, finish, finish, BlankPhase, new(0.005), 1.25, 1.25));
        var metal = GrindWindow.Turns(blank, finish, new(0.005), 1.25)!.Value;

        Assert.True(metal.MaxCamDeg + metal.MinCamDeg < -0.5);
        Assert.Equal(metal, window.IntakeTurn!.Value);
        Assert.Equal(-metal.MaxCamDeg, window.ExhaustTurn!.Value.MinCamDeg);
        Assert.True(MetalBand.Judge(blank, finish, metal.MinCamDeg + 0.01, new(0.005), 1.25).Fits);
        Assert.False(MetalBand.Judge(blank, finish, metal.MinCamDeg - 0.01, new(0.005), 1.25).Fits);
    }

    [Fact]
    public void A_shallow_case_narrows_the_window_and_a_wrong_lobe_empties_it()
    {
        var free = Window(BlankPhase, 1.25).IntakeTurn!.Value;
        var cased = Window(BlankPhase, 1.25, new(0.005, 0.070, 0.030)).IntakeTurn!.Value;
        var empty = Window(BlankPhase, 1.31);

        Assert.True(cased.MaxCamDeg < free.MaxCamDeg - 0.5);
        Assert.Null(empty.IntakeTurn);
        Assert.Empty(empty.Corners);
        Assert.Null(empty.Nearest);
        Assert.False(empty.Inside);
    }

    [Fact]
    public void Nonsense_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("Phase", () => Window(new(double.NaN, 108)));
        Assert.Throws<ArgumentOutOfRangeException>("baseCircleDiameterIn", () => Window(BlankPhase, double.NaN));
    }

    private static TableLaw Lopsided() => TableLaw.Of(
        Enumerable.Range(-360, 720).Select(i => new TablePoint(
            i / 2.0, (i < 0 ? Everyday.Lobe(222) : Everyday.Lobe(228)).At(Everyday.Rad(i / 2.0)).LiftIn)),
        0);

    private static double Distance(CamPhase a, CamPhase b) => Math.Sqrt(
        Math.Pow(a.LobeSeparationCamDeg - b.LobeSeparationCamDeg, 2) + Math.Pow(a.IntakeCenterlineCrankDeg - b.IntakeCenterlineCrankDeg, 2));

    private static GrindWindow Window(CamPhase phase, double baseCircle = Everyday.BaseCircleIn, BandLimits? limits = null) => GrindWindow.Of(new(
        Everyday.Blank, Everyday.Blank, BlankPhase, Everyday.Finish, Everyday.Finish, phase, limits ?? new(Everyday.CleanupIn), baseCircle, baseCircle));
}
