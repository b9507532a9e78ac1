namespace GrindShop.Shop.Mail;

public enum MailFate
{
    /// <summary>A new order was made of it.</summary>
    NewOrder,

    /// <summary>It belongs to an order that was there already.</summary>
    Added,

    /// <summary>Written by a machine (absence note, bounce, list): nobody is answered.</summary>
    Automatic,

    /// <summary>It could not be used; a person has to look.</summary>
    PutAside,
}

/// <summary>A file that came with a mail; it is listed, never opened.</summary>
public sealed record MailAttachment(string Name, string Type, long Bytes);

/// <summary>One mail that came in, kept as it was; written once and never changed.</summary>
public sealed class IncomingMail
{
    private IncomingMail()
    {
    }

    public long Id { get; private set; }

    /// <summary>Where it lies in the mailbox, or the key of a pasted one; unique, so that no mail is taken in twice.</summary>
    public string Source { get; private set; } = "";

    /// <summary>Its own Message-ID; null where it has none.</summary>
    public string? MessageId { get; private set; }

    public string From { get; private set; } = "";

    public string FromName { get; private set; } = "";

    public string Subject { get; private set; } = "";

    /// <summary>Its words; of HTML only those that are shown.</summary>
    public string Text { get; private set; } = "";

    public IReadOnlyList<MailAttachment> Attachments { get; private set; } = [];

    public DateTimeOffset TakenInAt { get; private set; }

    public MailFate Fate { get; private set; }

    /// <summary>Why it was put aside, or what it was taken for.</summary>
    public string? Reason { get; private set; }

    public string? OrderNumber { get; private set; }

    public static IncomingMail Keep(string source, ReadMail mail, MailFate fate, string? orderNumber, string? reason, DateTimeOffset at) => new()
    {
        Source = source,
        MessageId = mail.MessageId,
        From = mail.From,
        FromName = mail.FromName,
        Subject = mail.Subject,
        Text = mail.Text,
        Attachments = mail.Attachments,
        TakenInAt = at,
        Fate = fate,
        Reason = reason is null ? null : MailText.OneLine(reason, OutgoingMail.LongestError),
        OrderNumber = orderNumber,
    };
}
