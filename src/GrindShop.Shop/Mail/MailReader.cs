using MimeKit;
using MimeKit.IO;

namespace GrindShop.Shop.Mail;

/// <summary>Reads a mail from its bytes, whatever they are.</summary>
public static class MailReader
{
    private const int LongestAddress = 320, LongestId = 320, LongestName = 100, MostAttachments = 50;

    /// <summary>Deeper parts are not opened.</summary>
    private static readonly ParserOptions Careful = new() { MaxMimeDepth = 40 };

    private static readonly string[] MachinePrecedences = ["bulk", "junk", "list", "auto_reply"];

    public static ArrivedMail Read(string source, byte[] bytes)
    {
        try
        {
            using var stream = new MemoryStream(bytes, writable: false);
            using var message = MimeMessage.Load(Careful, stream);
            return new ArrivedMail(source, Of(message), bytes);
        }
        catch (Exception error) when (error is FormatException or ArgumentException or IOException or NotSupportedException or InvalidOperationException)
        {
            return new ArrivedMail(source, ReadMail.Unreadable, bytes, $"It cannot be read as a mail: {error.Message}");
        }
    }

    private static ReadMail Of(MimeMessage message)
    {
        var from = message.From.Mailboxes.FirstOrDefault();
        var address = from?.Address.Trim().ToLowerInvariant() ?? "";
        return new ReadMail
        {
            From = address.Length <= LongestAddress && OutgoingMail.IsAddress(address) ? address : "",
            FromName = MailText.OneLine(from?.Name ?? "", LongestName),
            Subject = MailText.OneLine(message.Subject ?? "", OutgoingMail.LongestSubject),
            Text = MailText.Cut(Words(message).Trim(), OutgoingMail.LongestText),
            MessageId = Id(message.MessageId),
            Answers = [.. message.References.Append(message.InReplyTo ?? "").Select(Id).OfType<string>().Distinct().Take(100)],
            Attachments = [.. message.BodyParts.Where(part => part.IsAttachment || !string.IsNullOrEmpty(Name(part))).Take(MostAttachments).Select(Attachment)],
            IsAutomatic = WrittenByMachine(message, address),
        };
    }

    private static string Words(MimeMessage message) =>
        message.TextBody is { } text && !string.IsNullOrWhiteSpace(text) ? text : HtmlText.Read(message.HtmlBody ?? "");

    /// <summary>RFC 3834 (Auto-Submitted), RFC 3464 (delivery reports), RFC 2076 (Precedence), and addresses nobody reads.</summary>
    private static bool WrittenByMachine(MimeMessage message, string from) =>
        message.Headers[HeaderId.AutoSubmitted] is { } auto && !auto.Trim().StartsWith("no", StringComparison.OrdinalIgnoreCase)
        || message.Headers[HeaderId.Precedence] is { } precedence && MachinePrecedences.Contains(precedence.Trim().ToLowerInvariant())
        || message.Headers[HeaderId.ReturnPath]?.Trim() == "<>"
        || message.Body is MultipartReport
        || from.Split('@')[0] is "mailer-daemon" or "postmaster" or "no-reply" or "noreply";

    private static MailAttachment Attachment(MimeEntity part) => new(
        MailText.OneLine(Name(part) is { Length: > 0 } name ? name : "without a name", 200), MailText.OneLine(part.ContentType.MimeType, 100), Length(part));

    private static string? Name(MimeEntity part) => part.ContentDisposition?.FileName ?? part.ContentType.Name;

    private static long Length(MimeEntity part)
    {
        using var measure = new MeasuringStream();
        if (part is MimePart { Content: { } content })
            content.DecodeTo(measure);
        else
            part.WriteTo(measure, contentOnly: true);
        return measure.Length;
    }

    /// <summary>Only one that may stand in a header of an answer.</summary>
    private static string? Id(string? text) =>
        text?.Trim() is { Length: > 0 and <= LongestId } id && MailText.OneLine(id, LongestId) == id && MimeKit.Utils.MimeUtils.ParseMessageId($"<{id}>") == id ? id : null;
}
