using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>Do the part numbers that a part names exist, in its own engine family, and lead nowhere in a circle?</summary>
internal static class PartLinks
{
    public static void Check(CsvRow row, BlankPart part, IReadOnlyCollection<BlankPart> all) => Check(row, part, all.ToDictionary(other => other.PartNumber));

    /// <param name="row">Where to say what is wrong.</param>
    /// <param name="part">The part.</param>
    /// <param name="all">Every part as it will be, this one too.</param>
    public static void Check(CsvRow row, BlankPart part, IReadOnlyDictionary<string, BlankPart> all)
    {
        if (part.Supersedes is { } older)
            Known(row, "supersedes", older, part, all);
        foreach (var other in part.Alternates)
            Known(row, "alternates", other, part, all);
        if (part.Supersedes is { } replaced && all.Values.Any(other => other != part && other.Supersedes == replaced))
            row.Wrong("supersedes", $"{replaced} has been replaced by another part already.");
        if (GoesInACircle(part, all))
            row.Wrong("supersedes", "The parts would replace each other in a circle.");
    }

    private static void Known(CsvRow row, string column, string number, BlankPart part, IReadOnlyDictionary<string, BlankPart> all)
    {
        if (!all.TryGetValue(number, out var other))
            row.Wrong(column, $"There is no part {CsvRow.Short(number)}.");
        else if (other.EngineFamily.Code != part.EngineFamily.Code)
            row.Wrong(column, $"{number} is for {other.EngineFamily.Code}, not for {part.EngineFamily.Code}.");
    }

    private static bool GoesInACircle(BlankPart part, IReadOnlyDictionary<string, BlankPart> all)
    {
        var seen = new HashSet<string>();
        for (var at = part; at is not null; at = at.Supersedes is { } older ? all.GetValueOrDefault(older) : null)
            if (!seen.Add(at.PartNumber))
                return true;
        return false;
    }
}
