using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>
/// Takes in mails, each once: an answer goes to its order, anything else that a person wrote becomes a new one, complete or not; what machines wrote is kept
/// and never answered.
/// </summary>
public sealed class MailIntake(IDbContextFactory<ShopDb> factory, SpecIntake intake, Catalog catalog, MailSettings settings, TimeProvider clock)
{
    /// <summary>New orders that one address may open by mail in a day. Two machines that answer one another end here.</summary>
    public const int MostOrdersADay = 5;

    /// <summary>The order that a mail would go to; null: it would become a new one.</summary>
    public async Task<OrderOfMail?> LookAsync(ReadMail mail, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await OrderOfMail.FindAsync(db, mail, cancel);
    }

    /// <summary>A person of the shop pastes a mail in. The same key a second time is the same mail.</summary>
    public async Task<Outcome<IncomingMail>> PasteAsync(string key, ReadMail mail, string by, CancellationToken cancel = default)
    {
        var arrived = new ArrivedMail($"paste:{key}", mail);
        if (mail.Text.Length == 0)
            return new Refusal("noText", "Paste the text of the mail first.");
        if (EnquiryCheck.DeskProblems(MailEnquiry.Of(arrived, (await catalog.ContentAsync(cancel)).Families), []) is [var problem, ..])
            return new Refusal("badMail", problem.Message);
        return await MachineAsync(mail, true, cancel) is { } reason ? new Refusal("ownMail", reason) : await TakeAsync(arrived, true, by, cancel);
    }

    /// <param name="byHand">A person has just looked at it: it is neither a machine's nor a vendor's nor too many.</param>
    public async Task<IncomingMail> TakeAsync(ArrivedMail arrived, bool byHand = false, string by = "e-mail", CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await KnownAsync(db, arrived, cancel) is { } known)
            return known;
        try
        {
            return await SortAsync(db, arrived, byHand, by, cancel);
        }
        catch (DbUpdateException error) when (error.IsFasterWriter())
        {
            await using var fresh = await factory.CreateDbContextAsync(cancel);
            return await KnownAsync(fresh, arrived, cancel) ?? throw new InvalidOperationException("A mail could not be kept.", error);
        }
    }

    private static Task<IncomingMail?> KnownAsync(ShopDb db, ArrivedMail arrived, CancellationToken cancel)
    {
        var (source, id, digest) = (arrived.Source, arrived.Mail.MessageId, arrived.Mail.Digest());
        return db.IncomingMails.AsNoTracking().FirstOrDefaultAsync(known => known.Source == source || (id != null && known.MessageId == id && known.Digest == digest), cancel);
    }

    private async Task<IncomingMail> SortAsync(ShopDb db, ArrivedMail arrived, bool byHand, string by, CancellationToken cancel)
    {
        var mail = arrived.Mail;
        if (arrived.Problem is not null || mail.From.Length == 0)
            return await KeepAsync(db, arrived, MailFate.PutAside, null, arrived.Problem ?? "It names no sender who could be answered.", cancel);
        var order = await OrderOfMail.FindAsync(db, mail, cancel);
        if (order is null && !byHand && await OfVendorAsync(db, mail, cancel) is { } vendors)
            return await KeepAsync(db, arrived, MailFate.PutAside, null, vendors, cancel);
        if (await MachineAsync(mail, byHand, cancel) is { } reason)
            return await KeepAsync(db, arrived, MailFate.Automatic, order?.Number, reason, cancel);
        if (order is not null)
            return await AddAsync(db, arrived, order, cancel);
        return !byHand && await IsTooManyAsync(db, mail, cancel)
            ? await KeepAsync(db, arrived, MailFate.PutAside, null, $"More than {MostOrdersADay} mails of this address in a day asked for something new; no more are answered by themselves.", cancel)
            : await MakeOrderAsync(db, arrived, by, cancel);
    }

    private async Task<string?> MachineAsync(ReadMail mail, bool byHand, CancellationToken cancel)
    {
        string?[] own = [settings.Sender, (await catalog.ContentAsync(cancel)).Rules.Settings.Email.Trim()];
        return own.Contains(mail.From, StringComparer.OrdinalIgnoreCase) ? "It comes from the shop's own address; it is not answered."
            : mail.IsAutomatic && !byHand ? "Written by a machine; it is not answered."
            : null;
    }

    /// <summary>It is a vendor's, not a customer's; null where it is not.</summary>
    private static async Task<string?> OfVendorAsync(ShopDb db, ReadMail mail, CancellationToken cancel)
    {
        if (await db.OutgoingMails.Where(sent => mail.Answers.Contains(sent.MessageId)).Select(sent => sent.PurchaseNumber).FirstOrDefaultAsync(cancel) is { } number)
            return $"It answers the mail about purchase order {number}.";
        return await db.Vendors.Where(vendor => vendor.Email != null && vendor.Email.ToLower() == mail.From).Select(vendor => vendor.Name).FirstOrDefaultAsync(cancel) is { } name
            ? $"It comes from the vendor {name}."
            : null;
    }

    private async Task<bool> IsTooManyAsync(ShopDb db, ReadMail mail, CancellationToken cancel)
    {
        var since = clock.GetUtcNow().AddDays(-1);
        return await db.IncomingMails.CountAsync(one => one.From == mail.From && one.TakenInAt > since && one.Fate == MailFate.NewOrder, cancel) >= MostOrdersADay;
    }

    /// <summary>The order and the mail in one transaction; other work on the order waits for it.</summary>
    private async Task<IncomingMail> AddAsync(ShopDb db, ArrivedMail arrived, OrderOfMail found, CancellationToken cancel)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var order = await db.LockOrderAsync(found.Number, cancel);
        order.Wrote(arrived.Mail, found.IsCustomers, clock.GetUtcNow());
        var kept = found.IsCustomers
            ? await KeepAsync(db, arrived, MailFate.Added, order.Number, null, cancel)
            : await KeepAsync(db, arrived, MailFate.FromAnother, order.Number, "It names this order, but does not come from the customer's address.", cancel);
        await transaction.CommitAsync(cancel);
        return kept;
    }

    private async Task<IncomingMail> MakeOrderAsync(ShopDb db, ArrivedMail arrived, string by, CancellationToken cancel)
    {
        var enquiry = MailEnquiry.Of(arrived, (await catalog.ContentAsync(cancel)).Families);
        IncomingMail? kept = null;
        var result = await intake.TakeAsync(enquiry, by, (same, order) =>
        {
            kept = same.Add(IncomingMail.Keep(arrived, MailFate.NewOrder, order.Number, null, clock.GetUtcNow())).Entity;
            return Task.FromResult<Refusal?>(null);
        }, cancel);
        if (result.Order is not { } order)
            return await KeepAsync(db, arrived, MailFate.PutAside, null, result.Refusal?.Reason ?? result.Problems[0].Message, cancel);
        return kept ?? await KnownAsync(db, arrived, cancel) ?? await KeepAsync(db, arrived, MailFate.NewOrder, order.Number, null, cancel);
    }

    private async Task<IncomingMail> KeepAsync(ShopDb db, ArrivedMail arrived, MailFate fate, string? orderNumber, string? reason, CancellationToken cancel)
    {
        var kept = IncomingMail.Keep(arrived, fate, orderNumber, reason, clock.GetUtcNow());
        db.Add(kept);
        await db.SaveAndTellAsync(orderNumber ?? "mail", cancel);
        return kept;
    }
}
