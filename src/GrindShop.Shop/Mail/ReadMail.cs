using MimeKit;

namespace GrindShop.Shop.Mail;

/// <summary>A mail as far as the shop reads it: cut to what can be kept, whatever was in it.</summary>
public sealed record ReadMail
{
    public const int MostAttachments = 50;

    private const int LongestAddress = 320, LongestId = 320, LongestName = 100;

    private static readonly string[] MachinePrecedences = ["bulk", "junk", "list", "auto_reply"];

    /// <summary>Lower case; empty where there is none that could be answered.</summary>
    public required string From { get; init; }

    public required string FromName { get; init; }

    public required string Subject { get; init; }

    public required string Text { get; init; }

    public string? MessageId { get; init; }

    /// <summary>Message-IDs of the mails it answers.</summary>
    public IReadOnlyList<string> Answers { get; init; } = [];

    public IReadOnlyList<MailAttachment> Attachments { get; init; } = [];

    /// <summary>Written by a machine: it must not be answered.</summary>
    public bool IsAutomatic { get; init; }

    /// <summary>A mail of which nothing can be read.</summary>
    public static ReadMail Unreadable => new() { From = "", FromName = "", Subject = "", Text = "" };

    public static ReadMail Of(MimeMessage message)
    {
        var from = message.From.Mailboxes.FirstOrDefault();
        var address = from?.Address.Trim().ToLowerInvariant() ?? "";
        return new ReadMail
        {
            From = address.Length <= LongestAddress && OutgoingMail.IsAddress(address) ? address : "",
            FromName = MailText.OneLine(from?.Name ?? "", LongestName),
            Subject = MailText.OneLine(message.Subject ?? "", OutgoingMail.LongestSubject),
            Text = MailText.Cut((message.TextBody ?? HtmlText.Read(message.HtmlBody ?? "")).Trim(), OutgoingMail.LongestText),
            MessageId = Id(message.MessageId),
            Answers = [.. message.References.Append(message.InReplyTo ?? "").Select(Id).OfType<string>().Distinct().Take(100)],
            Attachments = [.. message.Attachments.Take(MostAttachments).Select(Attachment)],
            IsAutomatic = WrittenByMachine(message, address),
        };
    }

    /// <summary>RFC 3834 (Auto-Submitted), RFC 3464 (delivery reports), RFC 2919 (lists), and the headers that came before them.</summary>
    private static bool WrittenByMachine(MimeMessage message, string from) =>
        message.Headers[HeaderId.AutoSubmitted] is { } auto && !auto.Trim().StartsWith("no", StringComparison.OrdinalIgnoreCase)
        || message.Headers.Contains(HeaderId.ListId) || message.Headers.Contains("X-Autoreply") || message.Headers.Contains("X-Auto-Response-Suppress")
        || message.Headers[HeaderId.Precedence] is { } precedence && MachinePrecedences.Contains(precedence.Trim().ToLowerInvariant())
        || message.Headers[HeaderId.ReturnPath]?.Trim() == "<>"
        || message.Body is MultipartReport
        || from.Split('@')[0] is "mailer-daemon" or "postmaster" or "no-reply" or "noreply";

    private static MailAttachment Attachment(MimeEntity part) => new(
        MailText.OneLine(part.ContentDisposition?.FileName ?? part.ContentType.Name ?? "without a name", 200),
        MailText.OneLine(part.ContentType.MimeType, 100),
        part is MimePart { Content.Stream: { CanSeek: true } stream } ? stream.Length : 0);

    private static string? Id(string? text) => text?.Trim() is { Length: > 0 and <= LongestId } id ? MailText.OneLine(id, LongestId) : null;
}
