using System.Collections.Concurrent;
using GrindShop.Lobes;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Planning;

/// <summary>A wished lobe and the same lobe longer and shorter, drawn; nearest to the wish first.</summary>
internal sealed record LobeVariants(IReadOnlyList<(FinishLobe Lobe, double DurationCrankDeg)> NearestFirst, double FootDiameterIn)
{
    public bool OutgrowsFoot(FinishLobe lobe) => lobe.Follower.Kind == FollowerKind.Flat && lobe.Law.MaxVelocityInPerRad > FootDiameterIn / 2;
}

/// <summary>Draws every lobe of a plan once, whoever wishes for it.</summary>
internal sealed class LobeLibrary(double durationCrankDeg)
{
    private readonly ConcurrentDictionary<(LobeSpec, Follower), Lazy<FinishLobe?>> _drawn = [];

    public LobeVariants Of(LobeSpec wish, GrindSpec grind)
    {
        double[] changes = durationCrankDeg > 0 ? [0, -durationCrankDeg, durationCrankDeg] : [0];
        return new LobeVariants(
            [.. from change in changes
                let lobe = Drawn(Longer(wish, change), grind.Follower())
                where lobe is not null
                select (lobe, change)],
            grind.FollowerDiameterIn);
    }

    private FinishLobe? Drawn(LobeSpec lobe, Follower follower) => _drawn.GetOrAdd((lobe, follower), static key => new(() => Draw(key.Item1, key.Item2))).Value;

    private static FinishLobe? Draw(LobeSpec lobe, Follower follower) =>
        PolynomialLaw.TrySolve(lobe, out var law, out _) ? new FinishLobe(law, follower) : null;

    /// <summary>The ramps stay as they are.</summary>
    private static LobeSpec Longer(LobeSpec lobe, double crankDeg) => crankDeg == 0 ? lobe : lobe with
    {
        DurationAt050CrankDeg = lobe.DurationAt050CrankDeg + crankDeg,
        AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg + crankDeg,
    };
}
