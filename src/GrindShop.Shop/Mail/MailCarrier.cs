using MimeKit;

namespace GrindShop.Shop.Mail;

public enum Carried
{
    Done,

    /// <summary>Surely not sent; trying again may help.</summary>
    NotNow,

    /// <summary>Surely not sent, and trying again does not help.</summary>
    Never,

    /// <summary>It broke off after the text had begun to flow: it may have been taken.</summary>
    Unsure,
}

/// <summary>What became of one attempt.</summary>
public sealed record CarryResult(Carried How, string? Error = null);

/// <summary>Takes a finished message to where it goes: a mail server, or the folder.</summary>
public interface IMailCarrier
{
    MailState WhenDone { get; }

    /// <summary>The server or folder, for people.</summary>
    string Via { get; }

    Task<CarryResult> CarryAsync(MimeMessage message, CancellationToken cancel);
}
