using System.Collections.Concurrent;

namespace GrindShop.Lobes;

internal sealed class MilledOutline(Rolling nominal, double stockIn) : BlankOutline(() => PolarBody.Of(nominal, stockIn))
{
    private readonly ConcurrentDictionary<Follower, RidePath> paths = new();
    private RidePath? latest;

    /// <summary>The path of a follower over this surface, made on first use and kept.</summary>
    public RidePath Ridden(Follower follower)
    {
        if (latest is { } path && path.Follower == follower)
            return path;
        return latest = paths.GetOrAdd(follower, f => RidePath.Over(nominal, stockIn, f));
    }
}
