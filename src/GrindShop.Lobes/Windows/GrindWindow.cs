using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>A blank's pair of lobes, the pair wanted from it, and the base circles they are ground on.</summary>
/// <param name="IntakeBlank">The blank's intake lobe.</param>
/// <param name="ExhaustBlank">The blank's exhaust lobe.</param>
/// <param name="BlankPhase">Phase of the blank's lobes.</param>
/// <param name="Intake">Intake lobe wanted.</param>
/// <param name="Exhaust">Exhaust lobe wanted.</param>
/// <param name="Phase">Phase wanted.</param>
/// <param name="Limits">Clean-up, and case where the blank has one.</param>
/// <param name="IntakeBaseCircleDiameterIn">Base circle of the intake lobe, in.</param>
/// <param name="ExhaustBaseCircleDiameterIn">Base circle of the exhaust lobe, in.</param>
public sealed record WindowQuestion(
    BlankOutline IntakeBlank,
    BlankOutline ExhaustBlank,
    CamPhase BlankPhase,
    FinishLobe Intake,
    FinishLobe Exhaust,
    CamPhase Phase,
    BandLimits Limits,
    double IntakeBaseCircleDiameterIn,
    double ExhaustBaseCircleDiameterIn);

/// <summary>
/// The phases a blank has metal for. Turns follow the definitions of <see cref="CamPhase"/>; they span a parallelogram in the plane
/// of lobe separation (cam degrees) and intake centreline (crank degrees).
/// </summary>
/// <param name="IntakeTurn">Allowed intake turns; null when the lobe fits at no turn.</param>
/// <param name="ExhaustTurn">Allowed exhaust turns; null when the lobe fits at no turn.</param>
/// <param name="Corners">The four corners in order round the parallelogram; empty when the window is.</param>
/// <param name="Inside">The phase wanted lies in the window.</param>
/// <param name="Nearest">The phase in the window nearest to the one wanted (plain distance in that plane); null when the window is empty.</param>
public sealed record GrindWindow(
    TurnRange? IntakeTurn, TurnRange? ExhaustTurn, ImmutableArray<CamPhase> Corners, bool Inside, CamPhase? Nearest)
{
    /// <exception cref="ArgumentOutOfRangeException">A figure of the question is not a number or outside its range.</exception>
    public static GrindWindow Of(WindowQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var limits = question.Limits.Checked();
        Check(question.BlankPhase, nameof(question.BlankPhase));
        Check(question.Phase, nameof(question.Phase));
        var intake = Turns(question.IntakeBlank, question.Intake, limits, question.IntakeBaseCircleDiameterIn);
        var exhaust = Turns(question.ExhaustBlank, question.Exhaust, limits, question.ExhaustBaseCircleDiameterIn)?.Reversed();
        return intake is { } i && exhaust is { } e ? Open(i, e, question) : new(intake, exhaust, [], false, null);
    }

    /// <summary>Allowed turns of one lobe's metal, cam degrees positive towards the closing side; null when it fits at none.</summary>
    public static TurnRange? Turns(BlankOutline blank, FinishLobe finish, BandLimits limits, double baseCircleDiameterIn)
    {
        ArgumentNullException.ThrowIfNull(blank);
        ArgumentNullException.ThrowIfNull(finish);
        Require.Length(baseCircleDiameterIn, nameof(baseCircleDiameterIn));
        return new TurnSearch(blank, finish, limits.Checked(), baseCircleDiameterIn / 2).Find();
    }

    private static GrindWindow Open(TurnRange intake, TurnRange exhaust, WindowQuestion question)
    {
        CamPhase from = question.BlankPhase, wanted = question.Phase;
        ImmutableArray<CamPhase> corners =
        [
            from.Turned(intake.MinCamDeg, exhaust.MinCamDeg),
            from.Turned(intake.MaxCamDeg, exhaust.MinCamDeg),
            from.Turned(intake.MaxCamDeg, exhaust.MaxCamDeg),
            from.Turned(intake.MinCamDeg, exhaust.MaxCamDeg),
        ];
        var inside = intake.Contains(wanted.IntakeTurnFrom(from)) && exhaust.Contains(wanted.ExhaustTurnFrom(from));
        return new(intake, exhaust, corners, inside, inside ? wanted : NearestPhase.In(corners, wanted));
    }

    private static void Check(CamPhase phase, string argument)
    {
        Require.Within(phase.LobeSeparationCamDeg, 0, 360, argument);
        Require.Within(phase.IntakeCenterlineCrankDeg, -360, 720, argument);
    }
}
