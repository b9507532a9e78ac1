using System.Text.RegularExpressions;

namespace GrindShop.Shop.Orders;

/// <summary>The words of a mail that its writer wrote now.</summary>
public static partial class OwnWords
{
    /// <summary>
    /// Without quoted lines, without what stands below the usual signature mark ("-- "; RFC 3676, 4.3 and 4.5), and without an earlier mail that stands below
    /// unquoted (what mail programs write above it: common practice, no source). The whole text where nothing else is in it.
    /// </summary>
    public static string Of(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n').TakeWhile(line => line is not ("-- " or "--")).ToArray();
        var begins = Array.FindIndex([.. lines.Select((_, at) => BeginsEarlierMail(lines, at))], begins => begins);
        return begins >= 0 && Written(lines[..begins]) is { Length: > 0 } above ? above
            : Written(lines) is { Length: > 0 } own ? own
            : text.Trim();
    }

    private static string Written(string[] lines) => string.Join('\n', lines.Where((line, at) => !line.StartsWith('>') && !IntroducesQuote(lines, at))).Trim();

    private static bool BeginsEarlierMail(string[] lines, int at) =>
        Divider().IsMatch(lines[at]) || (Writer().IsMatch(lines[at]) && !IntroducesQuote(lines, at)) || (Sender().IsMatch(lines[at]) && at + 1 < lines.Length && Time().IsMatch(lines[at + 1]));

    /// <summary>The quoted lines that follow are left out by themselves; between and below them the writer may answer.</summary>
    private static bool IntroducesQuote(string[] lines, int at) => Writer().IsMatch(lines[at]) && lines.Skip(at + 1).FirstOrDefault(line => line.Trim().Length > 0)?.StartsWith('>') == true;

    [GeneratedRegex(@"^\s*-{2,}\s*Original Message\s*-{2,}\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Divider();

    [GeneratedRegex(@"^\s*On\s.+\swrote:\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Writer();

    [GeneratedRegex(@"^\s*\**From:", RegexOptions.IgnoreCase)]
    private static partial Regex Sender();

    [GeneratedRegex(@"^\s*\**(Sent|Date):", RegexOptions.IgnoreCase)]
    private static partial Regex Time();
}
