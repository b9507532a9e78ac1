using System.Text.RegularExpressions;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>How a new part number is written, so that it can be typed, scanned and stand in an address. An older one stays as it is.</summary>
internal static partial class PartNumbers
{
    /// <summary>Pages of the catalog that would hide a part of that name.</summary>
    private static readonly string[] Pages = ["NEW", "IMPORT"];

    public static void Check(CsvRow row, string number)
    {
        if (Pages.Contains(number.ToUpperInvariant()))
            row.Wrong("partNumber", "This is the name of a page of the catalog; choose another part number.");
        else if (!Written().IsMatch(number))
            row.Wrong("partNumber", Written().IsMatch(number.ToUpperInvariant())
                ? $"A part number is written in capitals: {number.ToUpperInvariant()}."
                : "At most 40 capital letters (A to Z), figures, dashes and dots, a letter or figure first.");
    }

    [GeneratedRegex(@"^[A-Z0-9][A-Z0-9.-]{0,39}\z")]
    private static partial Regex Written();
}
