using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;

namespace GrindShop.Web.Office;

/// <summary>Finds parts by the words of anything that is known of them.</summary>
public static class BlankFinding
{
    /// <summary>Every fact of the part, as files spell it and in words.</summary>
    public static string Words(BlankPart part) => string.Join(' ', BlankColumns.All.Select(column => column.Write(part)).Concat(
    [
        part.EngineFamily.Name, part.FormWords(), part.Alloy.Words(), part.Hardening.Words(), part.Gear.Words(), part.Supplier.Name,
        .. part.OtherSources.Select(source => source.Supplier.Name),
    ]));

    /// <summary>True where each of the words typed stands somewhere in it.</summary>
    public static bool Finds(string words, string typed) =>
        typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).All(word => words.Contains(word, StringComparison.OrdinalIgnoreCase));
}
