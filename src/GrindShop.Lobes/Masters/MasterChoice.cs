using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>A master on the shelf.</summary>
public sealed record StoredMaster(string Name, LiftLaw Law, Follower Follower, WheelSetting MadeAt);

/// <summary>What a master would give, and how far that is from the wish.</summary>
/// <param name="Master">The master.</param>
/// <param name="LobeLiftIn">Lobe lift it gives, in.</param>
/// <param name="DurationCrankDeg">Duration it gives.</param>
/// <param name="DurationErrorCrankDeg">That less the one wanted.</param>
/// <param name="IsSound">Its wheel reaches every hollow and the lobe is not undercut; see <see cref="MasterResult"/>.</param>
public sealed record MasterCandidate(StoredMaster Master, double LobeLiftIn, double DurationCrankDeg, double DurationErrorCrankDeg, bool IsSound);

/// <summary>Picks masters by the duration they give at the base circle and wheel that will be ground, not at the one they were made for.</summary>
public static class MasterChoice
{
    /// <summary>The masters for this follower, those that can be ground first, then nearest duration, then nearest lift.</summary>
    /// <param name="masters">The shelf.</param>
    /// <param name="follower">The engine's follower; masters for others are left out.</param>
    /// <param name="groundAt">Base circle and wheel that will be ground.</param>
    /// <param name="durationCrankDeg">Duration wanted.</param>
    /// <param name="atIn">Check lift of that duration, in.</param>
    /// <param name="lobeLiftIn">Lobe lift wanted, in.</param>
    public static ImmutableArray<MasterCandidate> Rank(
        IEnumerable<StoredMaster> masters, Follower follower, WheelSetting groundAt, double durationCrankDeg, double atIn, double lobeLiftIn) =>
        [.. masters.Where(m => m.Follower == follower)
            .Select(m => Candidate(m, groundAt, durationCrankDeg, atIn))
            .OrderByDescending(c => c.IsSound)
            .ThenBy(c => Math.Abs(c.DurationErrorCrankDeg))
            .ThenBy(c => Math.Abs(c.LobeLiftIn - lobeLiftIn))];

    private static MasterCandidate Candidate(StoredMaster master, WheelSetting groundAt, double wanted, double atIn)
    {
        var law = MasterLobe.Ground(master.Law, master.Follower, master.MadeAt, groundAt);
        var duration = law.DurationCrankDeg(atIn);
        return new(master, law.LobeLiftIn, duration, duration - wanted, MasterLobe.IsSound(master.Law, master.Follower, master.MadeAt, groundAt));
    }
}
