using System.Collections.Concurrent;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Planning;

/// <summary>The regions of a family's blanks, computed once for a catalog and kept while it stays the same.</summary>
public sealed class BlankMap(Catalog catalog)
{
    private const int Cores = 2;
    private readonly ConcurrentDictionary<(string Family, FollowerKind Kind, double GivenUpIn), (CatalogContent Content, Lazy<IReadOnlyList<BlankRegion>> Regions)> _known = [];

    /// <param name="family">The family.</param>
    /// <param name="kind">Blanks milled for this kind of follower.</param>
    /// <param name="mostGivenUpIn">How far a base circle may end below the blank's nominal one, in.</param>
    /// <param name="cancel">Ends the wait for the catalog.</param>
    public async Task<IReadOnlyList<BlankRegion>> RegionsAsync(EngineFamily family, FollowerKind kind, double mostGivenUpIn, CancellationToken cancel = default)
    {
        var content = await catalog.ContentAsync(cancel);
        var known = _known.AddOrUpdate((family.Code, kind, mostGivenUpIn), _ => New(content, family, kind, mostGivenUpIn),
            (_, last) => ReferenceEquals(last.Content, content) ? last : New(content, family, kind, mostGivenUpIn));
        return await Task.Run(() => known.Regions.Value, cancel);
    }

    private static (CatalogContent, Lazy<IReadOnlyList<BlankRegion>>) New(CatalogContent content, EngineFamily family, FollowerKind kind, double mostGivenUpIn) =>
        (content, new(() => [.. content.Blanks.Where(blank => blank.Part.EngineFamily.Code == family.Code && blank.Part.Nominal?.FollowerKind == kind)
            .AsParallel().AsOrdered().WithDegreeOfParallelism(Cores).Select(blank => BlankRegion.Of(blank, family, content.Rules, mostGivenUpIn))]));
}
