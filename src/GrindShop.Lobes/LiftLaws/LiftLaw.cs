namespace GrindShop.Lobes;

/// <summary>
/// Lifter lift over the cam angle: nose at 0, opening side negative, periodic over one turn of the cam, zero outside the support.
/// </summary>
public abstract class LiftLaw
{
    private const int CrossingSteps = 180, VelocitySteps = 720;
    private readonly Lazy<double> maxVelocity;

    protected LiftLaw() => maxVelocity = new(FindMaxVelocity);

    /// <summary>Greatest lift, in.</summary>
    public abstract double LobeLiftIn { get; }

    /// <summary>Cam angle where the lift begins, rad, -pi to 0.</summary>
    public abstract double SupportStartRad { get; }

    /// <summary>Cam angle where the lift ends, rad, 0 to pi.</summary>
    public abstract double SupportEndRad { get; }

    /// <summary>Lift, in, and its derivatives by the cam angle, at any cam angle in radians.</summary>
    public abstract LiftPoint At(double camRad);

    /// <summary>Greatest lifter velocity on either flank, in per cam degree.</summary>
    public double MaxVelocityInPerCamDeg => maxVelocity.Value * AngleMath.RadPerDeg;

    /// <summary>Greatest lifter velocity on either flank, in per cam radian (the least foot radius of a flat lifter, in).</summary>
    public double MaxVelocityInPerRad => maxVelocity.Value;

    /// <summary>Crank degrees between the first crossings of a check lift on both sides of the nose; 0 at or above the lobe lift.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The check lift is negative or not a number.</exception>
    public double DurationCrankDeg(double atIn) =>
        (CrossingRad(atIn, closing: true) - CrossingRad(atIn, closing: false)) * AngleMath.CrankDegPerCamRad;

    /// <summary>Cam angle, rad, at which the lift passes a check lift, going from the nose to one side; 0 at or above the lobe lift.</summary>
    public double CrossingRad(double atIn, bool closing)
    {
        Require.LengthOrZero(atIn, nameof(atIn));
        var end = closing ? SupportEndRad : SupportStartRad;
        if (atIn >= LobeLiftIn)
            return 0;
        for (var step = 1; step <= CrossingSteps; step++)
            if (At(end * step / CrossingSteps).LiftIn < atIn)
                return Root.InBracket(x => At(x).LiftIn - atIn, end * (step - 1) / CrossingSteps, end * step / CrossingSteps, 1e-13);
        return end;
    }

    private double FindMaxVelocity()
    {
        double step = (SupportEndRad - SupportStartRad) / VelocitySteps, best = 0, at = 0;
        for (var i = 0; i <= VelocitySteps; i++)
        {
            var speed = Math.Abs(At(SupportStartRad + i * step).VelocityInPerRad);
            if (speed > best)
                (best, at) = (speed, SupportStartRad + i * step);
        }
        return Math.Max(best, -Root.Minimum(x => -Math.Abs(At(x).VelocityInPerRad), at - step, at + step).Value);
    }
}
