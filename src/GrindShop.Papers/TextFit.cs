using System.Globalization;
using System.Text;

namespace GrindShop.Papers;

/// <summary>Makes any text fit its place: one clean line, cut with an ellipsis, or broken into lines.</summary>
internal static class TextFit
{
    private const string Ellipsis = "…";

    /// <summary>Stands for a character that the typeface does not have.</summary>
    private static readonly Rune Unknown = new('?');

    /// <summary>One line without control characters, every character one that the typeface has.</summary>
    public static string Clean(string? text)
    {
        var clean = new StringBuilder();
        foreach (var rune in Composed(text ?? "").EnumerateRunes())
            if (!IsUnseen(rune))
                clean.Append(PaperFonts.Coverage.Has(rune) ? rune : Unknown);
            else if (clean.Length > 0 && clean[^1] != ' ')
                clean.Append(' ');
        return clean.ToString().Trim();
    }

    /// <summary>The text, or as much of it as is no wider than <paramref name="width"/> with an ellipsis.</summary>
    public static string Clip(string text, double width, Func<string, double> measure) =>
        measure(text) <= width ? text : text[..Longest(text, width, head => measure(head.TrimEnd() + Ellipsis))].TrimEnd() + Ellipsis;

    /// <summary>At most <paramref name="mostLines"/> lines; the last one is clipped where the text is longer.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width, int mostLines, Func<string, double> measure)
    {
        var lines = new List<string>();
        while (text.Length > 0 && lines.Count < mostLines - 1 && measure(text) > width)
        {
            var end = LineEnd(text, width, measure);
            lines.Add(text[..end].TrimEnd());
            text = text[end..].TrimStart();
        }
        if (text.Length > 0)
            lines.Add(Clip(text, width, measure));
        return lines;
    }

    /// <summary>The last blank that still fits; inside a word only where the word alone is too long.</summary>
    private static int LineEnd(string text, double width, Func<string, double> measure)
    {
        var most = Math.Max(1, Longest(text, width, measure));
        var blank = text[..Math.Min(most + 1, text.Length)].LastIndexOf(' ');
        return blank > 0 ? blank : most;
    }

    private static int Longest(string text, double width, Func<string, double> measure)
    {
        int low = 0, high = text.Length;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = measure(text[..middle]) <= width ? (middle, high) : (low, middle - 1);
        }
        return low > 0 && char.IsHighSurrogate(text[low - 1]) ? low - 1 : low;
    }

    /// <summary>Letter and accent as one character; broken surrogates become the replacement character first.</summary>
    private static string Composed(string text) => string.Concat(text.EnumerateRunes()).Normalize();

    private static bool IsUnseen(Rune rune) =>
        Rune.IsControl(rune) || Rune.IsWhiteSpace(rune) || Rune.GetUnicodeCategory(rune) is UnicodeCategory.Format;
}
