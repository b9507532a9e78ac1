namespace GrindShop.Lobes;

/// <summary>Lift and its first two derivatives by the cam angle in radians.</summary>
public readonly record struct LiftPoint(double LiftIn, double VelocityInPerRad, double AccelerationInPerRad2)
{
    /// <summary>Follower on the base circle.</summary>
    public static LiftPoint Dwell => default;
}
