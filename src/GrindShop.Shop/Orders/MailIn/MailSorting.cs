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
        IncomingMail? settled = null;
        var result = await intake.TakeAsync(enquiry, by, async (same, order) =>
        {
            if ((settled = await LockAsync(same, id, cancel)) is null)
                return Settled;
            settled.Settle(MailFate.NewOrder, order.Number, by);
            return null;
        }, cancel);
        return result switch
        {
            { Order: not null } when settled is not null => settled,
            { Refusal: { } refusal } => refusal,
            { Problems: [var problem, ..] } => new Refusal("badMail", problem.Message),
            _ => Settled,
        };
    }

    private static Refusal Settled => new("settled", "Somebody has decided on this mail already.");

    private async Task<Outcome<IncomingMail>> SettleAsync(long id, Func<ShopDb, IncomingMail, Task<Outcome<IncomingMail>>> settle, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        if (await LockAsync(db, id, cancel) is not { } mail)
            return Settled;
        var settled = await settle(db, mail);
        if (!settled.Succeeded)
            return settled;
        await db.SaveAndTellAsync(mail.OrderNumber ?? "mail", cancel);
        await transaction.CommitAsync(cancel);
        return settled;
    }

    /// <summary>The mail, locked until the transaction ends; null where it is decided on already.</summary>
    private static async Task<IncomingMail?> LockAsync(ShopDb db, long id, CancellationToken cancel)
    {
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM incoming_mails WHERE id = {id} FOR UPDATE", cancel);
        return await db.IncomingMails.SingleOrDefaultAsync(mail => mail.Id == id && mail.SettledBy == null, cancel);
    }

    private static ReadMail Read(IncomingMail mail) => new() { From = mail.From, FromName = mail.FromName, Subject = mail.Subject, Text = mail.Text, MessageId = mail.MessageId };
}
