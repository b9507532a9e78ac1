using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>A base circle and the radius of the grinding wheel on it, in.</summary>
public readonly record struct WheelSetting(double BaseCircleDiameterIn, double WheelRadiusIn);

/// <summary>Duration at a check lift.</summary>
public readonly record struct CheckedDuration(double AtIn, double CrankDeg);

/// <summary>What a master gives at one setting.</summary>
public sealed record MasterResult(WheelSetting GroundAt, double LobeLiftIn, ImmutableArray<CheckedDuration> Durations);

/// <summary>
/// A stored wheel-centre motion, made for one base circle and wheel, repeated at another base circle or with a worn wheel: the contour
/// changes, and with it the lift under the real follower.
/// </summary>
public static class MasterLobe
{
    /// <summary>Lift under the follower when the master's wheel motion is repeated at another setting.</summary>
    public static LiftLaw Ground(LiftLaw law, Follower follower, WheelSetting madeAt, WheelSetting groundAt)
    {
        if (madeAt == groundAt)
            return law;
        var wheelMotion = new RolledLaw(law, follower, madeAt.BaseCircleDiameterIn, Follower.Roller(madeAt.WheelRadiusIn));
        return new RolledLaw(wheelMotion, Follower.Roller(groundAt.WheelRadiusIn), groundAt.BaseCircleDiameterIn, follower);
    }

    /// <summary>Durations and lift of each setting.</summary>
    public static ImmutableArray<MasterResult> Results(
        LiftLaw law, Follower follower, WheelSetting madeAt, IEnumerable<WheelSetting> groundAt, IReadOnlyList<double> durationsAtIn) =>
        [.. groundAt.Select(setting => Result(Ground(law, follower, madeAt, setting), setting, durationsAtIn))];

    private static MasterResult Result(LiftLaw law, WheelSetting setting, IReadOnlyList<double> durationsAtIn) =>
        new(setting, law.LobeLiftIn, [.. durationsAtIn.Select(at => new CheckedDuration(at, law.DurationCrankDeg(at)))]);
}
