using CsCheck;

namespace GrindShop.Lobes.Tests;

// No textbook example was found; the expected angles follow from the geometry (derivation in the mathematics document).
public class CamLayoutTests
{
    [Theory]
    [InlineData(90, new double[] { 0, 45, 0, 225, 270, 135, 90, 135 })]
    [InlineData(0, new double[] { 0, 315, 270, 225, 180, 135, 90, 45 })]
    public void Intake_lobes_of_an_eight_in_firing_order(double evenBankAhead, double[] expected)
    {
        var engine = Engines.Eight(evenBankAhead);
        var angles = CamLayout.Of(engine, Engines.Shaft(engine)).Required().Intakes(engine);
        Assert.Equal(expected, angles.Select(angle => Engines.Turn(angles[0], angle)), Close);
    }

    [Theory]
    [InlineData("1-5-3-6-2-4", 6, 60)]
    [InlineData("1-3-4-2", 4, 90)]
    [InlineData("1-2-4-5-3", 5, 72)]
    public void In_line_lobes_stand_equally_apart_in_firing_order(string order, int cylinders, double apart)
    {
        var engine = Engines.InLine(order, cylinders);
        var layout = CamLayout.Of(engine, Engines.Shaft(engine)).Required();
        var angles = layout.Intakes(engine);
        Assert.Equal(Enumerable.Range(0, cylinders).Select(k => 360 - k * apart).Select(angle => angle % 360),
            angles.Select(angle => Engines.Turn(angles[0], angle)), Close);
        Assert.All(layout.StepsCamDeg(ValveKind.Exhaust), step => Assert.Equal(apart, step, 1e-9));
    }

    [Fact]
    public void The_nose_is_under_the_lifter_when_the_valve_is_openest() => Settings.Sample((lsa, icl, datum, axis) =>
    {
        var engine = Engines.Eight(axis);
        var shaft = Engines.Shaft(engine, lsa, icl) with { DatumClockwiseDeg = datum };
        return CamLayout.Of(engine, shaft).Required().Rows.All(row =>
        {
            // Turn the cam clockwise from crank zero by half the crank angle: datum and nose travel with it.
            var nose = datum + row.FromDatumCamDeg + row.ValveOpenestCrankDeg / 2;
            var lifter = row.Lobe.Cylinder % 2 == 0 ? axis : 0;
            return Math.Abs(CamDegrees.FromDegrees(nose - lifter).ShorterWay().Value) < 1e-6;
        });
    });

    [Fact]
    public void Valves_are_openest_at_their_centrelines()
    {
        var engine = Engines.InLine("1-3-4-2", 4);
        var rows = CamLayout.Of(engine, Engines.Shaft(engine, 110, 106)).Required().Rows;
        Assert.Equal(106, rows[0].ValveOpenestCrankDeg, 1e-9);
        Assert.Equal(720 - 114, rows[1].ValveOpenestCrankDeg, 1e-9);
    }

    [Fact]
    public void Exhaust_stands_the_separation_ahead_of_intake() => Settings.Sample((lsa, icl, datum, axis) =>
    {
        var engine = Engines.Eight(axis);
        var layout = CamLayout.Of(engine, Engines.Shaft(engine, lsa, icl) with { DatumClockwiseDeg = datum }).Required();
        return Enumerable.Range(1, 8).All(cylinder => Math.Abs(lsa - Engines.Turn(
            layout.Angle(cylinder, ValveKind.Intake), layout.Angle(cylinder, ValveKind.Exhaust))) < 1e-6);
    });

    [Fact]
    public void Seen_in_a_mirror_the_cam_turns_the_other_way_with_the_same_angles() => Settings.Sample((lsa, icl, datum, axis) =>
    {
        var (engine, mirrored) = (Engines.Eight(axis), Engines.Eight(-axis));
        var shaft = Engines.Shaft(engine, lsa, icl) with { DatumClockwiseDeg = datum };
        var other = shaft with { Turns = Rotation.CounterClockwise, DatumClockwiseDeg = -datum, WorkHeadTurns = Rotation.CounterClockwise };
        return Same(CamLayout.Of(engine, shaft).Required().Rows, CamLayout.Of(mirrored, other).Required().Rows);
    });

    [Fact]
    public void Turned_the_other_way_the_same_engine_needs_another_cam()
    {
        var engine = Engines.Eight(90);
        var shaft = Engines.Shaft(engine);
        var angles = CamLayout.Of(engine, shaft with { Turns = Rotation.CounterClockwise }).Required().Intakes(engine);
        Assert.Equal([0, 225, 180, 225, 90, 135, 90, 315], angles.Select(angle => Engines.Turn(angles[0], angle)), Close);
    }

    [Fact]
    public void Steps_round_the_cam_add_up_to_one_turn() => Settings.Sample((lsa, icl, _, axis) =>
    {
        var engine = Engines.Eight(axis);
        var steps = CamLayout.Of(engine, Engines.Shaft(engine, lsa, icl)).Required().StepsCamDeg(ValveKind.Intake);
        return steps.Count == 8 && Math.Abs(steps.Sum() - 360) < 1e-6;
    });

    [Fact]
    public void Odd_fire_steps_are_half_the_firing_intervals()
    {
        var six = FiringOrder.Parse("1-6-5-4-3-2", 6).Required();
        var engine = new EngineBanks(FiringSchedule.OddFire(six, [90, 150, 90, 150, 90, 150]).Required(),
            [new("odd", -45, [1, 3, 5]), new("even", 45, [2, 4, 6])]);
        var steps = CamLayout.Of(engine, Engines.Shaft(engine)).Required().StepsCamDeg(ValveKind.Intake);
        Assert.Equal([45, 75, 45, 75, 45, 75], steps, Close);
    }

    [Fact]
    public void Companions_of_one_bank_stand_180_apart()
    {
        var engine = Engines.InLine("1-5-3-6-2-4", 6);
        var layout = CamLayout.Of(engine, Engines.Shaft(engine)).Required();
        Assert.Equal([(1, 6), (5, 2), (3, 4)], engine.Firing.Companions);
        Assert.All(engine.Firing.Companions, pair => Assert.Equal(
            180, Engines.Turn(layout.Angle(pair.First, ValveKind.Exhaust), layout.Angle(pair.Second, ValveKind.Exhaust)), 1e-9));
    }

    [Fact]
    public void The_work_head_turns_the_other_way_round_for_the_other_sense()
    {
        var engine = Engines.Eight(90);
        var shaft = Engines.Shaft(engine);
        var with = CamLayout.Of(engine, shaft).Required().Rows;
        var against = CamLayout.Of(engine, shaft with { WorkHeadTurns = Rotation.CounterClockwise }).Required().Rows;
        Assert.All(with, row => Assert.Equal(0, Engines.Turn(0, row.FromDatumCamDeg + row.WorkHeadCamDeg), 1e-9));
        Assert.All(against, row => Assert.Equal(row.FromDatumCamDeg, row.WorkHeadCamDeg, 1e-9));
    }

    private static Gen<(double Lsa, double Icl, double Datum, double Axis)> Settings =>
        Gen.Select(Gen.Double[98, 120], Gen.Double[98, 118], Gen.Double[-180, 180], Gen.Double[-120, 120]);

    private static bool Same(IReadOnlyList<LobeRow> some, IReadOnlyList<LobeRow> others) => some.Zip(others).All(pair =>
        Math.Abs(CamDegrees.FromDegrees(pair.First.FromDatumCamDeg - pair.Second.FromDatumCamDeg).ShorterWay().Value) < 1e-6
        && Math.Abs(CamDegrees.FromDegrees(pair.First.WorkHeadCamDeg - pair.Second.WorkHeadCamDeg).ShorterWay().Value) < 1e-6);

    private static bool Close(double one, double other) => Math.Abs(one - other) < 1e-9;
}
