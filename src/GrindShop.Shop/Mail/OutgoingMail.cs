using System.Security.Cryptography;
using MimeKit;

namespace GrindShop.Shop.Mail;

public enum MailState
{
    /// <summary>Goes out as soon as <see cref="OutgoingMail.NextAttemptAt"/> has come.</summary>
    Waiting,

    /// <summary>One node has it in hand until <see cref="OutgoingMail.LeaseUntil"/>.</summary>
    Sending,

    /// <summary>The mail server took it.</summary>
    Sent,

    /// <summary>Written into the folder: no mail server is set up.</summary>
    Filed,

    /// <summary>The sending broke off at a point where it may have gone out; only a person sends it again.</summary>
    Unsure,

    /// <summary>It will not be tried again by itself.</summary>
    Failed,
}

/// <summary>One e-mail to a customer about an order, or to a vendor about a purchase order: written in the transaction of the event it tells of, sent afterwards. One event, one mail.</summary>
public sealed class OutgoingMail
{
    public const int LongestSubject = 200;
    public const int LongestText = 100_000;
    public const int LongestError = 500;

    private OutgoingMail()
    {
    }

    public long Id { get; private set; }

    /// <summary>What it tells of; unique, so that no event is told twice.</summary>
    public string EventKey { get; private set; } = "";

    /// <summary>The customer's order it is about; null where it is about a purchase order.</summary>
    public string? OrderNumber { get; private set; }

    /// <summary>The purchase order it is about; null where it is about a customer's order.</summary>
    public string? PurchaseNumber { get; private set; }

    /// <summary>The number of what it is about.</summary>
    public string About => OrderNumber ?? PurchaseNumber!;

    public string To { get; private set; } = "";

    public string Subject { get; private set; } = "";

    public string Text { get; private set; } = "";

    /// <summary>Papers to print and attach when it is sent, such as "spec-card".</summary>
    public string[] Papers { get; private set; } = [];

    /// <summary>Drawn once: the same mail sent again can be recognised.</summary>
    public string MessageId { get; private set; } = "";

    /// <summary>The Message-ID of the customer's mail it answers.</summary>
    public string? InReplyTo { get; private set; }

    public MailState State { get; private set; }

    public DateTimeOffset WrittenAt { get; private set; }

    public int Attempts { get; private set; }

    public DateTimeOffset NextAttemptAt { get; private set; }

    public DateTimeOffset? LeaseUntil { get; private set; }

    public string? LastError { get; private set; }

    public DateTimeOffset? SentAt { get; private set; }

    /// <summary>The server that took it, or the folder it lies in.</summary>
    public string? Via { get; private set; }

    public uint Version { get; private set; }

    /// <param name="host">Right half of the Message-ID: the domain of the shop's address.</param>
    public static OutgoingMail Write(string eventKey, string orderNumber, string to, Letter letter, string host, DateTimeOffset at) =>
        Write(eventKey, orderNumber, null, to, letter, host, at);

    /// <inheritdoc cref="Write(string, string, string, Letter, string, DateTimeOffset)"/>
    public static OutgoingMail ToVendor(string eventKey, string purchaseNumber, string to, Letter letter, string host, DateTimeOffset at) =>
        Write(eventKey, null, purchaseNumber, to, letter, host, at);

    private static OutgoingMail Write(string eventKey, string? orderNumber, string? purchaseNumber, string to, Letter letter, string host, DateTimeOffset at)
    {
        var mail = new OutgoingMail
        {
            EventKey = eventKey,
            OrderNumber = orderNumber,
            PurchaseNumber = purchaseNumber,
            To = to.Trim(),
            Subject = MailText.OneLine(letter.Subject, LongestSubject),
            Text = MailText.Cut(letter.Text, LongestText),
            Papers = [.. letter.Papers],
            MessageId = $"{RandomNumberGenerator.GetHexString(24, lowercase: true)}.{(orderNumber ?? purchaseNumber)!.ToLowerInvariant()}@{host}",
            InReplyTo = letter.InReplyTo,
            WrittenAt = at,
            NextAttemptAt = at,
        };
        if (!IsAddress(mail.To))
            mail.Fail($"\"{mail.To}\" is not an e-mail address.");
        return mail;
    }

    /// <summary>One address and nothing else: no list, no line end, no second recipient.</summary>
    public static bool IsAddress(string text) =>
        !text.Any(letter => char.IsControl(letter) || letter is ',' or ';') && MailboxAddress.TryParse(text, out var address) && address.Address == text && address.Domain.Length > 0;

    internal void Claim(DateTimeOffset now, TimeSpan lease)
    {
        (State, LeaseUntil) = (MailState.Sending, now + lease);
        Attempts++;
    }

    internal void Done(MailState how, string via, DateTimeOffset at) => (State, LeaseUntil, Via, SentAt, LastError) = (how, null, via, at, null);

    internal void TryLater(string error, DateTimeOffset at) => (State, LeaseUntil, LastError, NextAttemptAt) = (MailState.Waiting, null, Error(error), at);

    internal void Fail(string error) => (State, LeaseUntil, LastError) = (MailState.Failed, null, Error(error));

    internal void MayHaveGone(string error) => (State, LeaseUntil, LastError) = (MailState.Unsure, null, Error(error));

    /// <summary>A person has it sent once more.</summary>
    public Outcome<OutgoingMail> SendAgain(DateTimeOffset now)
    {
        if (State is not (MailState.Failed or MailState.Unsure))
            return new Refusal("notStuck", "This mail is not stuck; there is nothing to try again.");
        if (!IsAddress(To))
            return new Refusal("badAddress", $"\"{To}\" is not an e-mail address: it cannot be sent there.");
        (State, Attempts, NextAttemptAt) = (MailState.Waiting, 0, now);
        return this;
    }

    private static string Error(string text) => MailText.OneLine(text, LongestError);
}
