using System.Globalization;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;

namespace GrindShop.Web.Desk;

/// <summary>How the state of a mail is said and marked.</summary>
public static class MailWords
{
    public static string Words(this MailState state) => state switch
    {
        MailState.Waiting => "waiting to go out",
        MailState.Sending => "going out",
        MailState.Sent => "sent",
        MailState.Filed => "in the folder",
        MailState.Unsure => "may have gone out",
        _ => "not sent",
    };

    public static string Tone(this MailState state) => state switch
    {
        MailState.Sent => "ok",
        MailState.Failed or MailState.Unsure => "no",
        _ => "calm",
    };

    public static string Words(this IncomingMail mail) => mail.Fate switch
    {
        MailFate.NewOrder => "new order",
        MailFate.Added => "from the customer",
        MailFate.FromAnother => "from another address",
        MailFate.Automatic => "automatic",
        _ => "put aside",
    };

    public static string Tone(this IncomingMail mail) => mail.NeedsPerson ? "care" : mail.Fate is MailFate.NewOrder or MailFate.Added ? "ok" : "calm";

    /// <summary>What goes with a letter, as people say it.</summary>
    public static string With(this IReadOnlyCollection<string> papers) => string.Join(", ", papers.Select(paper => paper switch
    {
        VendorLetter.Paper => "the purchase order",
        Letters.SpecCard => "the spec card",
        _ => $"quote {paper}",
    }));

    public static string Size(long bytes) => bytes switch
    {
        < 1_000 => $"{bytes} bytes",
        < 1_000_000 => $"{bytes / 1_000} kB",
        _ => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB"),
    };

    /// <summary>What a person should know about a mail that has not simply been sent.</summary>
    public static string? Advice(this OutgoingMail mail, string nextAttempt) => mail.State switch
    {
        MailState.Waiting when mail.LastError is { } error => $"{error} It is tried again {nextAttempt}; {mail.Attempts} of {RetryRule.MostAttempts} attempts made.",
        MailState.Filed => $"No mail server is set up: it was written into {mail.Via}.",
        MailState.Unsure => $"{mail.LastError} Ask the {(mail.PurchaseNumber is null ? "customer" : "vendor")}, or look at the mail server, before you send it again.",
        MailState.Failed => $"{mail.LastError} It is not tried again by itself.",
        _ => null,
    };
}
