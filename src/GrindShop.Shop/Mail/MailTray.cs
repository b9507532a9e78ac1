using System.Linq.Expressions;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Mail;

/// <summary>The mails that came in, for the people of the shop.</summary>
public sealed class MailTray(IDbContextFactory<ShopDb> factory, Mailbox mailbox, MailSettings settings)
{
    /// <summary>A person has to decide on it.</summary>
    private static readonly Expression<Func<IncomingMail, bool>> Waits = mail => mail.SettledBy == null && (mail.Fate == MailFate.PutAside || mail.Fate == MailFate.FromAnother);

    /// <summary>Mails of one order, oldest first.</summary>
    public async Task<IReadOnlyList<IncomingMail>> OfOrderAsync(string orderNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.IncomingMails.AsNoTracking().Where(mail => mail.OrderNumber == orderNumber).OrderBy(mail => mail.Id).ToListAsync(cancel);
    }

    /// <summary>The newest mails; those that need a person come first.</summary>
    public async Task<IReadOnlyList<IncomingMail>> NewestAsync(int most, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.IncomingMails.AsNoTracking()
            .OrderByDescending(Waits)
            .ThenByDescending(mail => mail.Id).Take(most).ToListAsync(cancel);
    }

    /// <summary>Mails that a person has to decide on.</summary>
    public async Task<int> WaitingCountAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.IncomingMails.CountAsync(Waits, cancel);
    }

    /// <summary>How far the mailbox has been read; null where none is set up or none was visited yet.</summary>
    public async Task<MailboxMark?> MarkAsync(CancellationToken cancel = default)
    {
        if (settings.Imap is null)
            return null;
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.MailboxMarks.AsNoTracking().SingleOrDefaultAsync(mark => mark.Mailbox == mailbox.Name, cancel);
    }

    /// <summary>The bytes of a mail as they were received; null where none are kept.</summary>
    public async Task<byte[]?> OriginalAsync(long id, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.IncomingMails.Where(mail => mail.Id == id).Select(mail => mail.Original!.Bytes).FirstOrDefaultAsync(cancel);
    }
}
