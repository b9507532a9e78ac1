using System.Text.RegularExpressions;
using MimeKit;

namespace GrindShop.Shop.Mail;

/// <summary>A mail as somebody copies it out of a mail program: its text, and often the lines that name sender and subject above it.</summary>
/// <param name="From">Address; empty where none is named.</param>
public sealed partial record PastedMail(string From, string FromName, string Subject, string Text)
{
    /// <summary>
    /// Lines at the top that name something about the mail, in the words of RFC 5322, 3.6 (and "Sent", which mail programs write when they pass one on), with an
    /// empty line below them.
    /// </summary>
    public static PastedMail Of(string pasted)
    {
        var lines = pasted.ReplaceLineEndings("\n").TrimStart('\n').Split('\n');
        var heads = lines.TakeWhile(line => Head().IsMatch(line)).Select(line => Head().Match(line)).ToList();
        if (!heads.Exists(head => Is(head, "From")) || lines.Length <= heads.Count + 1 || lines[heads.Count].Trim().Length > 0)
            return new PastedMail("", "", "", pasted);
        var sender = Value(heads, "From");
        var from = MailboxAddress.TryParse(sender, out var mailbox) && OutgoingMail.IsAddress(mailbox.Address) ? mailbox : null;
        return new PastedMail(from?.Address.ToLowerInvariant() ?? "", from?.Name ?? "", Value(heads, "Subject"), string.Join('\n', lines[heads.Count..]).TrimStart('\n'));
    }

    private static bool Is(Match head, string name) => string.Equals(head.Groups["name"].Value, name, StringComparison.OrdinalIgnoreCase);

    private static string Value(List<Match> heads, string name) => heads.Find(head => Is(head, name))?.Groups["value"].Value.Trim() ?? "";

    [GeneratedRegex(@"^\s*(?<name>From|Sent|Date|To|Cc|Subject|Reply-To|Message-ID):(?<value>.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Head();
}
