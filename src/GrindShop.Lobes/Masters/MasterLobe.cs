using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>A base circle and the radius of the grinding wheel on it, in.</summary>
public readonly record struct WheelSetting(double BaseCircleDiameterIn, double WheelRadiusIn);

/// <summary>Duration at a check lift.</summary>
public readonly record struct CheckedDuration(double AtIn, double CrankDeg);

/// <summary>What a master gives at one setting.</summary>
/// <param name="GroundAt">The setting.</param>
/// <param name="LobeLiftIn">Lobe lift under the follower, in.</param>
/// <param name="Durations">Durations under the follower.</param>
/// <param name="IsSound">False when the master's wheel could not reach a hollow of its lobe, or the lobe comes out undercut: do not grind it.</param>
public sealed record MasterResult(WheelSetting GroundAt, double LobeLiftIn, ImmutableArray<CheckedDuration> Durations, bool IsSound);

/// <summary>
/// A stored wheel-centre motion, made for one base circle and wheel, repeated at another base circle or with a worn wheel: the contour
/// changes, and with it the lift under the real follower.
/// </summary>
public static class MasterLobe
{
    private const int SoundPoints = 360;

    /// <summary>Lift under the follower when the master's wheel motion is repeated at another setting.</summary>
    public static LiftLaw Ground(LiftLaw law, Follower follower, WheelSetting madeAt, WheelSetting groundAt)
    {
        var wheelMotion = WheelMotion(law, follower, madeAt);
        return madeAt == groundAt
            ? law
            : new RolledLaw(wheelMotion, Follower.Roller(groundAt.WheelRadiusIn), groundAt.BaseCircleDiameterIn, follower);
    }

    /// <summary>Durations and lift of each setting.</summary>
    public static ImmutableArray<MasterResult> Results(
        LiftLaw law, Follower follower, WheelSetting madeAt, IEnumerable<WheelSetting> groundAt, IReadOnlyList<double> durationsAtIn) =>
        [.. groundAt.Select(setting => Result(Ground(law, follower, madeAt, setting), setting, durationsAtIn, IsSound(law, follower, madeAt, setting)))];

    /// <summary>The wheel-centre motion that a master stores.</summary>
    public static RolledLaw WheelMotion(LiftLaw law, Follower follower, WheelSetting madeAt) =>
        new(law, follower, madeAt.BaseCircleDiameterIn, Follower.Roller(madeAt.WheelRadiusIn));

    private static MasterResult Result(LiftLaw law, WheelSetting setting, IReadOnlyList<double> durationsAtIn, bool isSound) =>
        new(setting, law.LobeLiftIn, [.. durationsAtIn.Select(at => new CheckedDuration(at, law.DurationCrankDeg(at)))], isSound);

    internal static bool IsSound(LiftLaw law, Follower follower, WheelSetting madeAt, WheelSetting groundAt)
    {
        var made = LobeContour.Of(law, follower, madeAt.BaseCircleDiameterIn);
        return !made.IsUndercut && made.WheelReaches(madeAt.WheelRadiusIn) && !LobeContour.Of(
            WheelMotion(law, follower, madeAt), Follower.Roller(groundAt.WheelRadiusIn), groundAt.BaseCircleDiameterIn, SoundPoints).IsUndercut;
    }
}
