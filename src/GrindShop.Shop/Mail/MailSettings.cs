using System.Globalization;
using MailKit.Security;
using Microsoft.Extensions.Configuration;

namespace GrindShop.Shop.Mail;

/// <summary>A mail server and how it is reached.</summary>
public sealed record MailServer(string Host, int Port, SecureSocketOptions Tls, string? User, string? Password)
{
    public override string ToString() => $"{Host}:{Port}";
}

/// <summary>How the shop sends and receives e-mail. Everything is optional: without a server, mails are written into a folder.</summary>
public sealed record MailSettings
{
    /// <summary>The server that takes mail; null: mails are written into <see cref="Folder"/>.</summary>
    public MailServer? Smtp { get; init; }

    /// <summary>The mailbox that is read; null: none is.</summary>
    public MailServer? Imap { get; init; }

    /// <summary>Folder of the mailbox that is read.</summary>
    public string ImapFolder { get; init; } = "INBOX";

    /// <summary>Pause between two visits to the mailbox.</summary>
    public TimeSpan ImapEvery { get; init; } = TimeSpan.FromMinutes(1);

    public string Folder { get; init; } = Path.Combine(".data", "mail");

    /// <summary>The sender's address; null: the shop's own from its settings.</summary>
    public string? Sender { get; init; }

    /// <summary>Start of the links in mails.</summary>
    public string PublicAddress { get; init; } = "http://127.0.0.1:5080";

    /// <exception cref="MailSettingsException">A setting cannot be used; the message says which and why.</exception>
    public static MailSettings From(IConfiguration settings, string publicAddress) => new()
    {
        Smtp = Server(settings, "GRINDSHOP_SMTP", 587),
        Imap = Server(settings, "GRINDSHOP_IMAP", 993),
        ImapFolder = Text(settings, "GRINDSHOP_IMAP_FOLDER") ?? "INBOX",
        ImapEvery = TimeSpan.FromSeconds(Whole(settings, "GRINDSHOP_IMAP_SECONDS", 60, 5, 86_400)),
        Folder = Text(settings, "GRINDSHOP_MAIL_FOLDER") ?? Path.Combine(Text(settings, Records.PrivatePostgresOptions.DataSetting) ?? ".data", "mail"),
        Sender = Address(settings, "GRINDSHOP_MAIL_FROM"),
        PublicAddress = publicAddress,
    };

    private static MailServer? Server(IConfiguration settings, string name, int usualPort)
    {
        if (Text(settings, $"{name}_HOST") is not { } host)
            return null;
        var port = Whole(settings, $"{name}_PORT", usualPort, 1, 65_535);
        return new MailServer(host, port, Tls(settings, $"{name}_TLS", port), Text(settings, $"{name}_USER"), settings[$"{name}_PASSWORD"]);
    }

    /// <summary>Encrypted unless somebody says otherwise.</summary>
    private static SecureSocketOptions Tls(IConfiguration settings, string name, int port) => Text(settings, name)?.ToLowerInvariant() switch
    {
        null => port is 465 or 993 ? SecureSocketOptions.SslOnConnect : SecureSocketOptions.StartTls,
        "tls" => SecureSocketOptions.SslOnConnect,
        "starttls" => SecureSocketOptions.StartTls,
        "none" => SecureSocketOptions.None,
        var other => throw new MailSettingsException($"{name} is \"{other}\"; it must be tls, starttls or none"),
    };

    private static string? Address(IConfiguration settings, string name) => Text(settings, name) is not { } text ? null
        : OutgoingMail.IsAddress(text) ? text
        : throw new MailSettingsException($"{name} is \"{text}\", which is not an e-mail address");

    private static int Whole(IConfiguration settings, string name, int usual, int least, int most) => Text(settings, name) is not { } text ? usual
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most ? number
        : throw new MailSettingsException($"{name} is \"{text}\"; it must be a whole number from {least} to {most}");

    private static string? Text(IConfiguration settings, string name) => settings[name] is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;
}

/// <summary>A mail setting that cannot be used.</summary>
public sealed class MailSettingsException(string message) : Exception(message);
