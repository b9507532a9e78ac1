using GrindShop.Lobes;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Tests.Drawings;

public sealed class TimingDrawingTests
{
    /// <summary>20-60 / 60-20: 260 and 260 crank degrees, 110 and 110, overlap 40; a public worked example.</summary>
    private static readonly ValveEvents Worked = ValveEvents.FromEvents(20, 60, 60, 20);

    [Fact]
    public void The_bars_are_as_long_as_the_durations_and_centred_on_the_lobes()
    {
        var (intake, exhaust) = (Openings.Intake(Worked), Openings.Exhaust(Worked));
        Assert.Equal((-20, 240), (intake.From, intake.To));
        Assert.Equal((-240, 20), (exhaust.From, exhaust.To));
        Assert.Equal((110, -110), (intake.Middle, exhaust.Middle));
    }

    [Fact]
    public void The_words_say_the_events_and_the_overlap()
    {
        var words = TimingWords.Of(Worked);
        Assert.Contains("Exhaust opens 60.0 crank degrees before bottom dead centre and closes 20.0 crank degrees after top dead centre.", words);
        Assert.Contains("Both are open together for 40.0 crank degrees.", words);
    }

    [Fact]
    public void A_short_cam_opens_after_and_closes_before_top_dead_centre()
    {
        var words = TimingWords.Of(ValveEvents.FromEvents(-5, 20, 30, -10));
        Assert.Contains("Intake opens 5.0 crank degrees after top dead centre", words);
        Assert.Contains("closes 10.0 crank degrees before top dead centre", words);
        Assert.Contains("Both are closed between for 15.0 crank degrees.", words);
    }

    [Fact]
    public void The_axis_holds_every_opening()
    {
        var axis = CrankAxis.For(ValveEvents.Of(340, 340, 110, 106));
        Assert.True(axis.FromCrankDeg < -274 && axis.ToCrankDeg > 276);
        Assert.Equal(CrankAxis.Left, axis.X(axis.FromCrankDeg));
        Assert.Equal(CrankAxis.Width - CrankAxis.Right, axis.X(axis.ToCrankDeg));
    }

    [Fact]
    public void Lift_stands_at_fifty_thousandths_where_the_valve_events_say_so()
    {
        var events = ValveEvents.Of(222, 222, 110, 106);
        var plot = new LiftPlot(SampleLobe.Law, SampleLobe.Law, events);
        Assert.Equal((106, -114), (plot.IntakeAtCrankDeg, plot.ExhaustAtCrankDeg));
        var opens = Openings.Intake(events).From;
        Assert.Equal(.050, SampleLobe.Law.At(double.DegreesToRadians((opens - plot.IntakeAtCrankDeg) / 2)).LiftIn, 6);
        Assert.True(plot.Y(SampleLobe.LiftIn) < plot.Y(.050) && plot.Y(.050) < plot.Y(0));
    }
}
