namespace GrindShop.Lobes;

/// <summary>How the two lobes of a cylinder stand: separation in cam degrees, intake centreline in crank degrees.</summary>
public readonly record struct CamPhase(double LobeSeparationCamDeg, double IntakeCenterlineCrankDeg)
{
    public double ExhaustCenterlineCrankDeg => 2 * LobeSeparationCamDeg - IntakeCenterlineCrankDeg;

    /// <summary>Turn of the intake lobe's metal from a blank's phase to this one, cam degrees: a later intake is positive.</summary>
    public double IntakeTurnFrom(CamPhase blank) => (IntakeCenterlineCrankDeg - blank.IntakeCenterlineCrankDeg) / 2;

    /// <summary>
    /// Change of the exhaust centreline from a blank's phase to this one, cam degrees: an earlier exhaust is positive, so the metal
    /// turns the other way round by as much.
    /// </summary>
    public double ExhaustTurnFrom(CamPhase blank) => (ExhaustCenterlineCrankDeg - blank.ExhaustCenterlineCrankDeg) / 2;

    /// <summary>The phase after turning the two lobes from this one.</summary>
    public CamPhase Turned(double intakeTurnCamDeg, double exhaustTurnCamDeg) =>
        new(LobeSeparationCamDeg + intakeTurnCamDeg + exhaustTurnCamDeg, IntakeCenterlineCrankDeg + 2 * intakeTurnCamDeg);
}
