using System.Globalization;
using System.Text.RegularExpressions;

namespace GrindShop.Web.Public;

/// <summary>Numbers as people type them: ".335", "0,335", "222 deg", ".5 in".</summary>
internal static partial class NumberText
{
    /// <summary>True for a number or a blank (then null); false where the text is no number.</summary>
    public static bool TryRead(string? text, out double? value)
    {
        value = null;
        if (string.IsNullOrWhiteSpace(text))
            return true;
        if (Shape().Match(text.Trim()) is not { Success: true } match)
            return false;
        value = double.Parse(match.Groups["number"].Value.Replace(',', '.'), CultureInfo.InvariantCulture);
        return true;
    }

    public static string Write(double? value) => value?.ToString("0.######", CultureInfo.InvariantCulture) ?? "";

    [GeneratedRegex("""^(?<number>[+-]?(\d{1,9}([.,]\d{0,9})?|[.,]\d{1,9}))\s*(in|"|”|deg|°)?\.?$""", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Shape();
}
