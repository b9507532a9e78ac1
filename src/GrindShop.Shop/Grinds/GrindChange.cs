using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;

namespace GrindShop.Shop.Grinds;

/// <summary>What is otherwise in a newer entry of the shop's list than in an older one.</summary>
public static class GrindChange
{
    public static IReadOnlyList<SpecChange> Between(GrindEntry older, GrindEntry newer) =>
    [
        .. new[]
        {
            new SpecChange("Name", older.Name, newer.Name),
            new SpecChange("Use", older.Use.Words(), newer.Use.Words()),
            new SpecChange("For whom", older.Summary, newer.Summary),
        }.Where(change => change.Was != change.Now),
        .. SpecChange.Between(older.Spec, newer.Spec),
    ];

    /// <summary>The history, newest first, each line with what it changed.</summary>
    public static IEnumerable<(GrindEvent Line, IReadOnlyList<SpecChange> Changes)> Lines(CatalogGrind grind)
    {
        var lines = grind.History.OrderBy(line => line.Id).ToList();
        return Enumerable.Reverse(lines.Select((line, index) => (line, index == 0 ? [] : Between(lines[index - 1].Entry, line.Entry))));
    }

    public static string Words(this GrindEventKind kind) => kind switch
    {
        GrindEventKind.Added => "added",
        GrindEventKind.Changed => "changed",
        GrindEventKind.Retired => "retired",
        _ => "offered again",
    };
}
