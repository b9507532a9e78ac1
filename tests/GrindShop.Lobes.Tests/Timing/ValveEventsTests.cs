using CsCheck;

namespace GrindShop.Lobes.Tests;

public class ValveEventsTests
{
    // A public worked example (20-60 / 60-20 and the same cam advanced and retarded by 5) and a public petrol-engine timing diagram.
    [Theory]
    [InlineData(20, 60, 60, 20, 260, 260, 110, 110, 110, 40)]
    [InlineData(25, 55, 65, 15, 260, 260, 105, 115, 110, 40)]
    [InlineData(15, 65, 55, 25, 260, 260, 115, 105, 110, 40)]
    [InlineData(20, 35, 35, 10, 235, 225, 97.5, 102.5, 100, 30)]
    public void Published_cards_both_ways(
        double io, double ic, double eo, double ec, double intake, double exhaust, double icl, double ecl, double lsa, double overlap)
    {
        var forward = ValveEvents.Of(intake, exhaust, lsa, icl);
        var back = ValveEvents.FromEvents(io, ic, eo, ec);

        Assert.Equal(new ValveEvents(io, ic, eo, ec, overlap, ecl, lsa - icl), forward);
        Assert.Equal(forward, back);
        Assert.Equal((intake, exhaust, lsa, icl),
            (back.IntakeDurationCrankDeg, back.ExhaustDurationCrankDeg, back.LobeSeparationCamDeg, back.IntakeCenterlineCrankDeg));
    }

    // A published example prints 10 + 30 for this card; the two events at the overlap's own dead centre are 10 and 20.
    [Fact]
    public void Overlap_adds_the_events_at_the_same_dead_centre() =>
        Assert.Equal(30, ValveEvents.FromEvents(10, 30, 40, 20).OverlapCrankDeg);

    [Fact]
    public void Overlap_is_half_the_durations_less_twice_the_separation() => Cards.Sample(card =>
        Math.Abs(Events(card).OverlapCrankDeg - ((card.Intake + card.Exhaust) / 2 - 2 * card.Lsa)) < 1e-9);

    [Fact]
    public void There_and_back() => Cards.Sample(card =>
    {
        var events = Events(card);
        var back = ValveEvents.FromEvents(
            events.IntakeOpensBtdc, events.IntakeClosesAbdc, events.ExhaustOpensBbdc, events.ExhaustClosesAtdc);
        return Math.Abs(back.IntakeDurationCrankDeg - card.Intake) < 1e-9
            && Math.Abs(back.ExhaustDurationCrankDeg - card.Exhaust) < 1e-9
            && Math.Abs(back.LobeSeparationCamDeg - card.Lsa) < 1e-9
            && Math.Abs(back.IntakeCenterlineCrankDeg - card.Lsa + card.Advance) < 1e-9;
    });

    [Fact]
    public void Advance_brings_all_four_events_earlier_and_keeps_the_cam() => Cards.Sample(card =>
    {
        var before = Events(card);
        var after = before.Advanced(4);
        return Math.Abs(after.IntakeOpensBtdc - before.IntakeOpensBtdc - 4) < 1e-9
            && Math.Abs(after.IntakeClosesAbdc - before.IntakeClosesAbdc + 4) < 1e-9
            && Math.Abs(after.ExhaustOpensBbdc - before.ExhaustOpensBbdc - 4) < 1e-9
            && Math.Abs(after.ExhaustClosesAtdc - before.ExhaustClosesAtdc + 4) < 1e-9
            && Math.Abs(after.OverlapCrankDeg - before.OverlapCrankDeg) < 1e-9;
    });

    [Theory]
    [InlineData(double.NaN, 222, 110, 106, "intakeDurationCrankDeg")]
    [InlineData(222, 0, 110, 106, "exhaustDurationCrankDeg")]
    [InlineData(222, 222, double.PositiveInfinity, 106, "lobeSeparationCamDeg")]
    [InlineData(222, 222, 110, -106, "intakeCenterlineCrankDeg")]
    [InlineData(222, 222, 110, double.NaN, "intakeCenterlineCrankDeg")]
    public void Nonsense_is_refused_by_name(double intake, double exhaust, double lsa, double icl, string name) =>
        Assert.Throws<ArgumentOutOfRangeException>(name, () => ValveEvents.Of(intake, exhaust, lsa, icl));

    [Fact]
    public void Nonsense_events_are_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("exhaustClosesAtdc", () => ValveEvents.FromEvents(20, 60, 60, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("crankDeg", () => ValveEvents.Of(222, 222, 110, 106).Advanced(1e9));
    }

    private static Gen<(double Intake, double Exhaust, double Lsa, double Advance)> Cards =>
        Gen.Select(Gen.Double[150, 340], Gen.Double[150, 340], Gen.Double[95, 125], Gen.Double[-12, 12]);

    private static ValveEvents Events((double Intake, double Exhaust, double Lsa, double Advance) card) =>
        ValveEvents.Of(card.Intake, card.Exhaust, card.Lsa, card.Lsa - card.Advance);
}
