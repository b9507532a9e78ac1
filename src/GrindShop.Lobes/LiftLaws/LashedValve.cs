namespace GrindShop.Lobes;

/// <summary>
/// The valve behind a lobe: <c>valve lift = lobe lift x rocker ratio - lash</c> (none below zero). With a solid lifter the opening ramp
/// takes up the lash before the valve moves.
/// </summary>
/// <param name="RockerRatio">Rocker ratio, .5 to 4.</param>
/// <param name="LashIn">Lash at the valve, 0 to .1 in; 0 for a hydraulic lifter.</param>
public sealed record LashedValve(double RockerRatio, double LashIn)
{
    public double RockerRatio { get; } = Require.Within(RockerRatio, 0.5, 4, nameof(RockerRatio));

    public double LashIn { get; } = Require.Within(LashIn, 0, 0.1, nameof(LashIn));

    /// <summary>Lobe lift at which the lash is just taken up, in.</summary>
    public double LobeLiftAtLashIn => LashIn / RockerRatio;

    public double ValveLiftIn(double lobeLiftIn) => Math.Max(0, lobeLiftIn * RockerRatio - LashIn);

    /// <summary>Crank degrees for which the valve lift exceeds a check lift at the valve; at 0, how long the valve is off its seat.</summary>
    public double DurationCrankDeg(LiftLaw law, double valveLiftIn) =>
        law.DurationCrankDeg((Require.LengthOrZero(valveLiftIn, nameof(valveLiftIn)) + LashIn) / RockerRatio);

    /// <summary>Speed at which the lash closes on one side of the lobe, in per cam degree at the lifter; a ramp keeps it low.</summary>
    public double VelocityAtLashInPerCamDeg(LiftLaw law, bool closing) =>
        Math.Abs(law.At(law.CrossingRad(LobeLiftAtLashIn, closing)).VelocityInPerRad) * AngleMath.RadPerDeg;
}
