using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What a person says becomes of a mail that the shop did not dare to sort by itself. Each mail is settled once.</summary>
public sealed class MailSorting(IDbContextFactory<ShopDb> factory, SpecIntake intake, Catalog catalog, TimeProvider clock)
{
    /// <summary>It is the customer's after all: it counts as their answer.</summary>
    public Task<Outcome<IncomingMail>> IsCustomersAsync(long id, string by, CancellationToken cancel = default) => SettleAsync(id, async (db, mail) =>
    {
        if (mail.Fate != MailFate.FromAnother)
            return new Refusal("notForeign", "This mail is not from another address.");
        var order = await db.LockOrderAsync(mail.OrderNumber!, cancel);
        order.Wrote(Read(mail), true, clock.GetUtcNow());
        mail.Settle(MailFate.Added, mail.OrderNumber, by);
        return mail;
    }, cancel);

    /// <summary>Nothing has to be done with it.</summary>
    public Task<Outcome<IncomingMail>> LeaveAsync(long id, string by, CancellationToken cancel = default) => SettleAsync(id, (_, mail) =>
    {
        mail.Settle(mail.Fate, mail.OrderNumber, by);
        return Task.FromResult<Outcome<IncomingMail>>(mail);
    }, cancel);

    /// <summary>It asks for something new.</summary>
    public async Task<Outcome<IncomingMail>> AsNewOrderAsync(long id, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.IncomingMails.AsNoTracking().SingleOrDefaultAsync(mail => mail.Id == id, cancel) is not { MayBecomeOrder: true } mail)
            return Settled;
        var enquiry = MailEnquiry.Of(new ArrivedMail(mail.Source, Read(mail)), (await catalog.ContentAsync(cancel)).Families);
        var result = await intake.TakeAsync(enquiry, by, cancel);
        return result.Order is { } order
            ? await SettleAsync(id, (_, one) =>
            {
                one.Settle(MailFate.NewOrder, order.Number, by);
                return Task.FromResult<Outcome<IncomingMail>>(one);
            }, cancel)
            : result.Refusal ?? new Refusal("badMail", result.Problems[0].Message);
    }

    private static Refusal Settled => new("settled", "Somebody has decided on this mail already.");

    private async Task<Outcome<IncomingMail>> SettleAsync(long id, Func<ShopDb, IncomingMail, Task<Outcome<IncomingMail>>> settle, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM incoming_mails WHERE id = {id} FOR UPDATE", cancel);
        if (await db.IncomingMails.SingleOrDefaultAsync(mail => mail.Id == id, cancel) is not { SettledBy: null } mail)
            return Settled;
        var settled = await settle(db, mail);
        if (!settled.Succeeded)
            return settled;
        await db.SaveAndTellAsync(mail.OrderNumber ?? "mail", cancel);
        await transaction.CommitAsync(cancel);
        return settled;
    }

    private static ReadMail Read(IncomingMail mail) => new() { From = mail.From, FromName = mail.FromName, Subject = mail.Subject, Text = mail.Text, MessageId = mail.MessageId };
}
