namespace GrindShop.Shop.Mail;

public enum MailFate
{
    /// <summary>A new order was made of it.</summary>
    NewOrder,

    /// <summary>The customer's word on an order that was there already.</summary>
    Added,

    /// <summary>It names an order, but comes from an address that is not the customer's; a person says whether it counts.</summary>
    FromAnother,

    /// <summary>Written by a machine (absence note, bounce) or by the shop itself: nobody is answered.</summary>
    Automatic,

    /// <summary>It could not be used; a person has to look.</summary>
    PutAside,
}

/// <summary>A file that came with a mail; it is listed, never opened.</summary>
public sealed record MailAttachment(string Name, string Type, long Bytes);

/// <summary>A mail as it arrived.</summary>
/// <param name="Source">Names it for good: its place in the mailbox, or the key of a pasted one.</param>
/// <param name="Original">Its bytes as received; null where there are none.</param>
/// <param name="Problem">Why it could not be read; it is then put aside.</param>
public sealed record ArrivedMail(string Source, ReadMail Mail, byte[]? Original = null, string? Problem = null);

/// <summary>One mail that came in. What it says never changes; what became of it may, once, by a person.</summary>
public sealed class IncomingMail
{
    private IncomingMail()
    {
    }

    public long Id { get; private set; }

    /// <summary>See <see cref="ArrivedMail.Source"/>; unique, so that no mail is taken in twice.</summary>
    public string Source { get; private set; } = "";

    /// <summary>Its own Message-ID; null where it has none.</summary>
    public string? MessageId { get; private set; }

    /// <summary>Digest of sender, subject and text: unique together with the Message-ID, which anybody could write on another mail.</summary>
    public string Digest { get; private set; } = "";

    /// <summary>Lower case; empty where there is none that could be answered.</summary>
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

    /// <summary>Who said what becomes of it, where a person had to.</summary>
    public string? SettledBy { get; private set; }

    /// <summary>The bytes as received; read only where they are asked for.</summary>
    public OriginalMail? Original { get; private set; }

    /// <summary>Length of the original; 0 where there is none.</summary>
    public int OriginalBytes { get; private set; }

    public uint Version { get; private set; }

    /// <summary>Nobody has decided on it yet.</summary>
    public bool NeedsPerson => SettledBy is null && Fate is MailFate.PutAside or MailFate.FromAnother;

    public bool MayBecomeOrder => SettledBy is null && From.Length > 0 && Fate is not MailFate.NewOrder;

    public static IncomingMail Keep(ArrivedMail arrived, MailFate fate, string? orderNumber, string? reason, DateTimeOffset at) => new()
    {
        Source = arrived.Source,
        MessageId = arrived.Mail.MessageId,
        Digest = arrived.Mail.Digest(),
        From = arrived.Mail.From,
        FromName = arrived.Mail.FromName,
        Subject = arrived.Mail.Subject,
        Text = arrived.Mail.Text,
        Attachments = arrived.Mail.Attachments,
        Original = arrived.Original is { } bytes ? new OriginalMail(bytes) : null,
        OriginalBytes = arrived.Original?.Length ?? 0,
        TakenInAt = at,
        Fate = fate,
        Reason = reason is null ? null : MailText.OneLine(reason, OutgoingMail.LongestError),
        OrderNumber = orderNumber,
    };

    /// <summary>A person has decided.</summary>
    internal void Settle(MailFate fate, string? orderNumber, string by) => (Fate, OrderNumber, SettledBy) = (fate, orderNumber, by);
}

/// <summary>The bytes of a mail as they were received.</summary>
public sealed class OriginalMail(byte[] bytes)
{
    public long MailId { get; private set; }

    public byte[] Bytes { get; private set; } = bytes;
}
