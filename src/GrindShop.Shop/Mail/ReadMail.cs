using System.Security.Cryptography;
using System.Text;

namespace GrindShop.Shop.Mail;

/// <summary>A mail as far as the shop reads it: cut to what can be kept, whatever was in it.</summary>
public sealed record ReadMail
{
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

    /// <summary>SHA-256 of who says what, hexadecimal.</summary>
    public string Digest() => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes($"{From}\n{Subject}\n{Text}")));
}
