namespace GrindShop.Lobes;

/// <summary>One lobe of a laid-out cam.</summary>
/// <param name="Position">Place along the shaft, 1 at the front.</param>
/// <param name="Lobe">The cylinder and valve it works.</param>
/// <param name="FromDatumCamDeg">Nose from the datum, counted on the cam in the engine's sense of rotation, 0 up to 360.</param>
/// <param name="WorkHeadCamDeg">Turn of the work head, in its own sense, that brings the nose to where the datum was; 0 up to 360.</param>
/// <param name="ValveOpenestCrankDeg">
/// Crank angle of greatest lift, 0 up to 720, counted from overlap top dead centre of the first cylinder of the order.
/// </param>
public sealed record LobeRow(int Position, LobePlace Lobe, double FromDatumCamDeg, double WorkHeadCamDeg, double ValveOpenestCrankDeg);

/// <summary>
/// The angle of every lobe of one cam from its datum. A lobe has its nose on the lifter axis <c>e</c> when the crank has turned
/// to the centre of its valve's opening: <c>nose + crank / 2 = e</c>, all counted in the cam's sense of rotation. Hence
/// intake <c>e - (F + ICL) / 2</c>, exhaust <c>e - (F - ECL) / 2 = intake + LSA</c>, both less the datum's own angle
/// (F = crank angle of the cylinder in the schedule; derivation in docs/mathematics).
/// </summary>
public sealed class CamLayout
{
    private readonly EngineBanks engine;
    private readonly CamShaft shaft;

    private CamLayout(EngineBanks engine, CamShaft shaft)
    {
        (this.engine, this.shaft) = (engine, shaft);
        Rows = [.. shaft.Lobes.Select((lobe, index) => Row(index + 1, lobe))];
    }

    /// <summary>Front to rear.</summary>
    public IReadOnlyList<LobeRow> Rows { get; }

    /// <exception cref="ArgumentOutOfRangeException">
    /// An angle is outside its range: axes and datum -360 to 360, LSA and ICL as in <see cref="ValveEvents.Of"/>.
    /// </exception>
    public static Outcome<CamLayout, CamLayoutProblem> Of(EngineBanks engine, CamShaft shaft)
    {
        ValveEvents.CheckSetting(shaft.LobeSeparationCamDeg, shaft.IntakeCenterlineCrankDeg);
        Require.Within(shaft.DatumClockwiseDeg, -360, 360);
        return (engine.Problem() ?? ShaftCheck.Problem(engine, shaft)) is { } problem ? problem : new CamLayout(engine, shaft);
    }

    /// <summary>
    /// Cam degrees from each intake (or exhaust) lobe to the next in firing order with the bank angles taken out, 0 up to 360;
    /// on an even-fire cam that serves every cylinder each is 720 / n / 2.
    /// </summary>
    public IReadOnlyList<double> StepsCamDeg(ValveKind valve)
    {
        var frame = (from cylinder in engine.Firing.Order.Cylinders
                     from row in Rows.Where(row => row.Lobe == new LobePlace(cylinder, valve)).Take(1)
                     select CamDegrees.FromDegrees(row.FromDatumCamDeg) - Axis(cylinder)).ToList();
        return [.. frame.Select((angle, index) => (angle - frame[(index + 1) % frame.Count]).Wrapped().Value)];
    }

    private LobeRow Row(int position, LobePlace lobe)
    {
        var openest = Openest(lobe);
        var datum = shaft.Turns.FromClockwise(shaft.DatumClockwiseDeg);
        var angle = (Axis(lobe.Cylinder) - openest.ToCam() - datum).Wrapped();
        // Turning the cam with the engine brings up the noses behind the datum first; the other way, those ahead of it.
        var workHead = shaft.WorkHeadTurns == shaft.Turns ? (-angle).Wrapped() : angle;
        return new(position, lobe, angle.Value, workHead.Value, 2 * openest.ToCam().Wrapped().Value);
    }

    private CrankDegrees Openest(LobePlace lobe)
    {
        var intake = CrankDegrees.FromDegrees(shaft.IntakeCenterlineCrankDeg);
        var separation = CamDegrees.FromDegrees(shaft.LobeSeparationCamDeg).ToCrank();
        return engine.Firing.FiresAt(lobe.Cylinder) + (lobe.Valve == ValveKind.Intake ? intake : intake - separation);
    }

    private CamDegrees Axis(int cylinder) => shaft.Turns.FromClockwise(engine.BankOf(cylinder).LifterAxisClockwiseDeg);
}
