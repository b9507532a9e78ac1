using System.Text;

namespace GrindShop.Shop.Mail;

/// <summary>Text that may come from anybody, made harmless for a header and for the database.</summary>
public static class MailText
{
    private const string CutHere = "\n[cut here: the text is longer than the shop keeps]";

    /// <summary>Without line ends and other control characters, so that nothing typed becomes a header of its own; at most so long.</summary>
    public static string OneLine(string text, int longest)
    {
        var line = string.Join(' ', Clean(text).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return Shorten(line, longest);
    }

    /// <summary>Printable text with \n as its line end; what is too long is cut, and says so.</summary>
    public static string Cut(string text, int longest)
    {
        var clean = Clean(text.ReplaceLineEndings("\n"));
        return clean.Length <= longest ? clean : Shorten(clean, longest - CutHere.Length) + CutHere;
    }

    /// <summary>Cut at most so long, never through a surrogate pair.</summary>
    private static string Shorten(string text, int longest) =>
        text.Length <= longest ? text : text[..(char.IsHighSurrogate(text[longest - 1]) ? longest - 1 : longest)];

    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var letter in text.EnumerateRunes())
            clean.Append(Rune.IsControl(letter) && letter.Value is not ('\n' or '\t') ? " " : letter.ToString());
        return clean.ToString();
    }
}
