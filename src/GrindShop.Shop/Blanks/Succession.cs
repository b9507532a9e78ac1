namespace GrindShop.Shop.Blanks;

/// <summary>Which parts are used up and not bought again, because a newer one replaces them.</summary>
public sealed class Succession(IEnumerable<BlankPart> parts)
{
    private readonly Dictionary<string, BlankPart> _newer = parts.Where(part => part.Supersedes is not null).GroupBy(part => part.Supersedes!).ToDictionary(newer => newer.Key, newer => newer.First());
    private readonly Dictionary<string, BlankPart> _parts = parts.ToDictionary(part => part.PartNumber);

    public bool IsReplaced(BlankPart part) => _newer.ContainsKey(part.PartNumber);

    /// <summary>The part that is bought instead: the newest of those that replace one another; null where this one is bought.</summary>
    public BlankPart? SuccessorOf(BlankPart part) => Chain(part, at => _newer.GetValueOrDefault(at.PartNumber)).LastOrDefault();

    /// <summary>The parts that this one replaces, the newest first.</summary>
    public IReadOnlyList<BlankPart> ReplacedBy(BlankPart part) => [.. Chain(part, at => at.Supersedes is { } older ? _parts.GetValueOrDefault(older) : null)];

    /// <summary>Ends where a circle would begin.</summary>
    private static IEnumerable<BlankPart> Chain(BlankPart part, Func<BlankPart, BlankPart?> next)
    {
        var seen = new HashSet<string> { part.PartNumber };
        for (var at = next(part); at is not null && seen.Add(at.PartNumber); at = next(at))
            yield return at;
    }
}
