namespace GrindShop.Lobes;

/// <summary>What presses a follower onto its lobe.</summary>
/// <param name="SeatLoadLbf">Spring force at the valve, valve closed.</param>
/// <param name="SpringRateLbfPerIn">Rise of that force with valve lift.</param>
/// <param name="RockerRatio">Valve lift over lobe lift.</param>
/// <param name="LashIn">Lash at the valve; 0 under a hydraulic lifter.</param>
/// <param name="MovingWeightLbf">
/// Weight of everything that moves, brought to the lifter: lifter, pushrod and the rocker's share, plus rocker ratio squared times
/// the valve, retainer and a third of the spring (the third: common practice, no source).
/// </param>
public sealed record ValveTrain(
    double SeatLoadLbf, double SpringRateLbfPerIn, double RockerRatio, double LashIn, double MovingWeightLbf)
{
    public const double MostEngineRpm = 30_000;

    /// <summary>
    /// Force normal to the lobe: spring force at the valve times rocker ratio, plus mass times lifter acceleration, over the cosine of the
    /// pressure angle. Negative means that contact is lost. The spring counts as soon as the lash is closed.
    /// </summary>
    /// <param name="lobeLiftIn">Lifter lift, 0-3 in.</param>
    /// <param name="accelerationInPerCamRad2">Second derivative of the lift by the cam angle in radians; negative over the nose.</param>
    /// <param name="pressureAngleDeg">0 under a flat follower, either sign, up to 80.</param>
    /// <param name="engineRpm">Crank speed, 0-30000; the cam turns at half of it.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument or a field of the train is outside its range.</exception>
    public double NormalForceLbf(
        double lobeLiftIn, double accelerationInPerCamRad2, double pressureAngleDeg, double engineRpm)
    {
        Require.Within(SeatLoadLbf, 0, 5_000);
        Require.Within(SpringRateLbfPerIn, 0, 10_000);
        Require.Within(MovingWeightLbf, 0, 50);
        Require.Within(accelerationInPerCamRad2, -100, 100);
        Require.Within(pressureAngleDeg, -80, 80);
        Require.Within(engineRpm, 0, MostEngineRpm);
        var alongLifter = RockerRatio * SpringForceLbf(lobeLiftIn) + InertiaLbf(accelerationInPerCamRad2, engineRpm);
        return alongLifter / Math.Cos(double.DegreesToRadians(pressureAngleDeg));
    }

    private double SpringForceLbf(double lobeLiftIn)
    {
        var valveLift = ValveLift.AtValve(lobeLiftIn, RockerRatio, LashIn);
        return lobeLiftIn < ValveLift.AtLobe(0, RockerRatio, LashIn) ? 0 : SeatLoadLbf + SpringRateLbfPerIn * valveLift;
    }

    private double InertiaLbf(double accelerationInPerCamRad2, double engineRpm)
    {
        var camRadPerS = 2 * Math.PI * engineRpm / 2 / 60;
        return MovingWeightLbf / Si.GravityInPerS2 * accelerationInPerCamRad2 * camRadPerS * camRadPerS;
    }
}
