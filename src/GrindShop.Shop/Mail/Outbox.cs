using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Mail;

/// <summary>The mails that went out or wait to, for the people of the shop.</summary>
public sealed class Outbox(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>Mails of one order, oldest first.</summary>
    public async Task<IReadOnlyList<OutgoingMail>> OfOrderAsync(string orderNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.OutgoingMails.AsNoTracking().Where(mail => mail.OrderNumber == orderNumber).OrderBy(mail => mail.Id).ToListAsync(cancel);
    }

    /// <summary>Mails of one purchase order, oldest first.</summary>
    public async Task<IReadOnlyList<OutgoingMail>> OfPurchaseAsync(string purchaseNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.OutgoingMails.AsNoTracking().Where(mail => mail.PurchaseNumber == purchaseNumber).OrderBy(mail => mail.Id).ToListAsync(cancel);
    }

    /// <summary>The newest mails; those that need a person come first.</summary>
    public async Task<IReadOnlyList<OutgoingMail>> NewestAsync(int most, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.OutgoingMails.AsNoTracking()
            .OrderByDescending(mail => mail.State == MailState.Failed || mail.State == MailState.Unsure).ThenByDescending(mail => mail.Id)
            .Take(most).ToListAsync(cancel);
    }

    /// <summary>Mails that go out only when a person says so.</summary>
    public async Task<int> StuckCountAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.OutgoingMails.CountAsync(mail => mail.State == MailState.Failed || mail.State == MailState.Unsure, cancel);
    }

    /// <summary>A person has a mail that is stuck sent once more.</summary>
    public async Task<Outcome<OutgoingMail>> SendAgainAsync(long id, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.OutgoingMails.FindAsync([id], cancel) is not { } mail)
            return new Refusal("unknown", "There is no such mail.");
        var outcome = mail.SendAgain(clock.GetUtcNow());
        if (!outcome.Succeeded)
            return outcome;
        try
        {
            await db.SaveAndTellAsync(mail.About, cancel);
            return outcome;
        }
        catch (DbUpdateConcurrencyException)
        {
            return new Refusal("stale", "Somebody else has just had this mail sent again.");
        }
    }
}
