namespace GrindShop.Lobes;

/// <summary>
/// When the valves open and close, in crank degrees, all at one check lift measured on one side (lifter or valve).
/// A negative event lies on the other side of its dead centre.
/// </summary>
/// <param name="IntakeOpensBtdc">Before top dead centre: <c>D/2 - ICL</c>.</param>
/// <param name="IntakeClosesAbdc">After bottom dead centre: <c>D/2 + ICL - 180</c>.</param>
/// <param name="ExhaustOpensBbdc">Before bottom dead centre: <c>D/2 + ECL - 180</c>.</param>
/// <param name="ExhaustClosesAtdc">After top dead centre: <c>D/2 - ECL</c>.</param>
/// <param name="OverlapCrankDeg">Intake opening before plus exhaust closing after the same top dead centre.</param>
/// <param name="ExhaustCenterlineCrankDeg">Exhaust lobe centre before overlap top dead centre (ECL).</param>
/// <param name="AdvanceCrankDeg">Lobe separation less intake centreline; positive when the cam stands ahead of "straight up".</param>
public sealed record ValveEvents(
    double IntakeOpensBtdc,
    double IntakeClosesAbdc,
    double ExhaustOpensBbdc,
    double ExhaustClosesAtdc,
    double OverlapCrankDeg,
    double ExhaustCenterlineCrankDeg,
    double AdvanceCrankDeg)
{
    public const double LeastDurationCrankDeg = 20;
    public const double MostDurationCrankDeg = 700;
    public const double LeastSeparationCamDeg = 60;
    public const double MostSeparationCamDeg = 180;
    public const double MostAdvanceCrankDeg = 60;

    public double IntakeDurationCrankDeg => IntakeOpensBtdc + 180 + IntakeClosesAbdc;

    public double ExhaustDurationCrankDeg => ExhaustOpensBbdc + 180 + ExhaustClosesAtdc;

    /// <summary>Intake lobe centre after overlap top dead centre (ICL).</summary>
    public double IntakeCenterlineCrankDeg => ExhaustCenterlineCrankDeg - 2 * AdvanceCrankDeg;

    /// <summary>Half the sum of the two centrelines (LSA): crank degrees halved are cam degrees.</summary>
    public double LobeSeparationCamDeg => ExhaustCenterlineCrankDeg - AdvanceCrankDeg;

    /// <summary>The events of a cam with symmetric lobes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A duration outside 20-700, a separation outside 60-180, or a centreline more than 60 crank degrees off the separation.
    /// </exception>
    public static ValveEvents Of(
        double intakeDurationCrankDeg, double exhaustDurationCrankDeg, double lobeSeparationCamDeg, double intakeCenterlineCrankDeg)
    {
        CheckDuration(intakeDurationCrankDeg, nameof(intakeDurationCrankDeg));
        CheckDuration(exhaustDurationCrankDeg, nameof(exhaustDurationCrankDeg));
        CheckSetting(lobeSeparationCamDeg, intakeCenterlineCrankDeg);
        // The sum of both centrelines is the separation in crank degrees.
        var exhaustCenterline = CamDegrees.FromDegrees(lobeSeparationCamDeg).ToCrank().Value - intakeCenterlineCrankDeg;
        return At(intakeDurationCrankDeg / 2, intakeCenterlineCrankDeg, exhaustDurationCrankDeg / 2, exhaustCenterline);
    }

    /// <summary>The way back, from the four events of a card.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An event outside -180 to 360, or events whose duration, separation or advance is outside what <see cref="Of"/> takes.
    /// </exception>
    public static ValveEvents FromEvents(
        double intakeOpensBtdc, double intakeClosesAbdc, double exhaustOpensBbdc, double exhaustClosesAtdc)
    {
        Require.Within(intakeOpensBtdc, -180, 360);
        Require.Within(intakeClosesAbdc, -180, 360);
        Require.Within(exhaustOpensBbdc, -180, 360);
        Require.Within(exhaustClosesAtdc, -180, 360);
        var intakeDuration = intakeOpensBtdc + 180 + intakeClosesAbdc;
        var exhaustDuration = exhaustOpensBbdc + 180 + exhaustClosesAtdc;
        var intakeCenterline = intakeDuration / 2 - intakeOpensBtdc;
        var exhaustCenterline = exhaustDuration / 2 - exhaustClosesAtdc;
        return Of(intakeDuration, exhaustDuration, (intakeCenterline + exhaustCenterline) / 2, intakeCenterline);
    }

    /// <summary>The same cam turned ahead in its drive (negative: retarded).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The cam would stand more than 60 crank degrees off "straight up".</exception>
    public ValveEvents Advanced(double crankDeg) => Of(
        IntakeDurationCrankDeg,
        ExhaustDurationCrankDeg,
        LobeSeparationCamDeg,
        LobeSeparationCamDeg - Require.Within(AdvanceCrankDeg + crankDeg, -MostAdvanceCrankDeg, MostAdvanceCrankDeg, nameof(crankDeg)));

    /// <summary>Refuses a setting of the cam in its engine that no four-stroke could use.</summary>
    internal static void CheckSetting(double lobeSeparationCamDeg, double intakeCenterlineCrankDeg)
    {
        Require.Within(lobeSeparationCamDeg, LeastSeparationCamDeg, MostSeparationCamDeg);
        Require.Within(
            intakeCenterlineCrankDeg, lobeSeparationCamDeg - MostAdvanceCrankDeg, lobeSeparationCamDeg + MostAdvanceCrankDeg);
    }

    private static void CheckDuration(double crankDeg, string name) =>
        Require.Within(crankDeg, LeastDurationCrankDeg, MostDurationCrankDeg, name);

    private static ValveEvents At(double intakeHalf, double intakeCenterline, double exhaustHalf, double exhaustCenterline) => new(
        intakeHalf - intakeCenterline,
        intakeHalf + intakeCenterline - 180,
        exhaustHalf + exhaustCenterline - 180,
        exhaustHalf - exhaustCenterline,
        intakeHalf - intakeCenterline + exhaustHalf - exhaustCenterline,
        exhaustCenterline,
        (exhaustCenterline - intakeCenterline) / 2);
}
