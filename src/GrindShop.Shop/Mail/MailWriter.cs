using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;
using MimeKit;

namespace GrindShop.Shop.Mail;

/// <summary>A paper as it goes with a mail.</summary>
public sealed record PrintedPaper(string FileName, byte[] Pdf);

/// <summary>Prints the papers of this name, as in <see cref="OutgoingMail.Papers"/>, of an order or a purchase order: one, or one for each piece; empty where there is none.</summary>
public delegate Task<IReadOnlyList<PrintedPaper>> PrintPapers(string paper, string number, CancellationToken cancel);

/// <summary>Makes the message that goes out: headers, text, and the papers printed now.</summary>
public sealed class MailWriter(IDbContextFactory<ShopDb> factory, MailSettings settings, PrintPapers print)
{
    public async Task<Outcome<MimeMessage>> WriteAsync(OutgoingMail mail, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var shop = await db.Settings.AsNoTracking().SingleAsync(cancel);
        var body = new BodyBuilder { TextBody = mail.Text };
        foreach (var name in mail.Papers)
        {
            var papers = await print(name, mail.About, cancel);
            if (papers.Count == 0)
                return new Refusal("noPaper", $"The paper {name} of {mail.About} cannot be printed now.");
            foreach (var paper in papers)
                body.Attachments.Add(paper.FileName, paper.Pdf, new ContentType("application", "pdf"));
        }
        return Message(mail, shop, body.ToMessageBody());
    }

    private MimeMessage Message(OutgoingMail mail, ShopSettings shop, MimeEntity body)
    {
        var message = new MimeMessage { MessageId = mail.MessageId, Date = mail.WrittenAt, Subject = mail.Subject, Body = body };
        message.From.Add(new MailboxAddress(shop.ShopName, settings.Sender ?? shop.Email));
        message.To.Add(MailboxAddress.Parse(mail.To));
        message.Headers.Add(HeaderId.AutoSubmitted, "auto-generated");
        if (mail.InReplyTo is not { } answered)
            return message;
        message.InReplyTo = answered;
        message.References.Add(answered);
        return message;
    }
}
