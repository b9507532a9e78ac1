using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;

namespace GrindShop.Web.Desk;

/// <summary>A mail while it is being pasted in; kept by the browser until it is taken in.</summary>
public sealed class PasteDraft
{
    /// <summary>The same key taken in again is the same mail.</summary>
    public string Key { get; set; } = Guid.NewGuid().ToString("N");

    public string Text { get; set; } = "";

    public string Email { get; set; } = "";

    public string Name { get; set; } = "";

    public string Subject { get; set; } = "";

    public Contact Contact => new() { Name = Name.Trim() is { Length: > 0 } name ? name : null, Email = Email.Trim() is { Length: > 0 } email ? email : null };

    public ReadMail Mail => new()
    {
        From = Email.Trim().ToLowerInvariant(),
        FromName = MailText.OneLine(Name, 100),
        Subject = MailText.OneLine(Subject, OutgoingMail.LongestSubject),
        Text = MailText.Cut(Text.Trim(), OutgoingMail.LongestText),
    };

    /// <summary>Sender and subject that stand above a pasted text move to their fields, unless another sender was typed.</summary>
    public void Paste(string text)
    {
        Text = text;
        if (PastedMail.Of(text) is not { From.Length: > 0 } pasted || (Email.Length > 0 && Mail.From != pasted.From))
            return;
        (Email, Name, Subject, Text) = (pasted.From, Name.Length > 0 ? Name : pasted.FromName, Subject.Length > 0 ? Subject : pasted.Subject, pasted.Text);
    }
}
