using System.Text.RegularExpressions;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace GrindShop.Shop.Orders;

/// <summary>
/// Takes in mails, each once: an answer goes to its order, anything else a person wrote becomes a new one, complete or not; what machines wrote is kept and
/// never answered.
/// </summary>
public sealed partial class MailIntake(IDbContextFactory<ShopDb> factory, SpecIntake intake, Catalog catalog, MailSettings settings, TimeProvider clock)
{
    /// <param name="source">Names the mail for good, so that it is taken in once.</param>
    /// <param name="problem">Why it could not be read; it is then put aside.</param>
    public async Task<IncomingMail> TakeAsync(string source, ReadMail mail, string? problem, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await KnownAsync(db, source, mail, cancel) is { } known)
            return known;
        if (problem is not null || mail.From.Length == 0)
            return await KeepAsync(db, source, mail, MailFate.PutAside, null, problem ?? "It names no sender who could be answered.", cancel);
        var order = await OrderOfAsync(db, mail, cancel);
        if (mail.IsAutomatic || await IsOwnAsync(mail, cancel))
            return await KeepAsync(db, source, mail, MailFate.Automatic, order, "Written by a machine; it is not answered.", cancel);
        return order is not null ? await AddAsync(db, source, mail, order, cancel) : await MakeOrderAsync(db, source, mail, cancel);
    }

    /// <summary>The same, but a mail that breaks the taking in is put aside with what broke, so that the next one gets its turn.</summary>
    public async Task<IncomingMail> TakeOrPutAsideAsync(string source, ReadMail mail, string? problem, CancellationToken cancel = default)
    {
        try
        {
            return await TakeAsync(source, mail, problem, cancel);
        }
        catch (Exception broken) when (broken is not (OperationCanceledException or NpgsqlException { IsTransient: true }))
        {
            return await TakeAsync(source, ReadMail.Unreadable, $"It could not be taken in: {broken.Message}", cancel);
        }
    }

    private static Task<IncomingMail?> KnownAsync(ShopDb db, string source, ReadMail mail, CancellationToken cancel) =>
        db.IncomingMails.AsNoTracking().FirstOrDefaultAsync(known => known.Source == source || (mail.MessageId != null && known.MessageId == mail.MessageId), cancel);

    /// <summary>The order it answers: by the Message-ID of a mail of ours, or by the number in its subject where the sender is the order's.</summary>
    private static async Task<string?> OrderOfAsync(ShopDb db, ReadMail mail, CancellationToken cancel)
    {
        if (await db.OutgoingMails.Where(sent => mail.Answers.Contains(sent.MessageId)).OrderByDescending(sent => sent.Id).Select(sent => sent.OrderNumber).FirstOrDefaultAsync(cancel) is { } answered)
            return answered;
        foreach (var number in OrderNumber().Matches(mail.Subject).Select(match => match.Value.ToUpperInvariant()).Take(5))
            if (await db.Orders.Include(order => order.Customer).SingleOrDefaultAsync(order => order.Number == number, cancel) is { } order && IsFrom(order, mail))
                return number;
        return null;
    }

    private static bool IsFrom(Order order, ReadMail mail) => EnquiryCheck.Email(order.Contact) == mail.From || order.Customer.Email == mail.From;

    /// <summary>A mail under the shop's own name would be answered to the shop itself.</summary>
    private async Task<bool> IsOwnAsync(ReadMail mail, CancellationToken cancel) =>
        string.Equals(mail.From, settings.Sender ?? (await catalog.ContentAsync(cancel)).Rules.Settings.Email, StringComparison.OrdinalIgnoreCase);

    /// <summary>The order and the mail in one transaction; other work on the order waits for it.</summary>
    private async Task<IncomingMail> AddAsync(ShopDb db, string source, ReadMail mail, string orderNumber, CancellationToken cancel)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE number = {orderNumber} FOR UPDATE", cancel);
        db.ChangeTracker.Clear();
        var order = await OrderDesk.Whole(db).SingleAsync(order => order.Number == orderNumber, cancel);
        order.Wrote(mail.FromName.Length > 0 ? mail.FromName : MailText.OneLine(mail.From, 100), mail.Subject, clock.GetUtcNow());
        var kept = await KeepAsync(db, source, mail, MailFate.Added, orderNumber, null, cancel);
        await transaction.CommitAsync(cancel);
        return kept;
    }

    private async Task<IncomingMail> MakeOrderAsync(ShopDb db, string source, ReadMail mail, CancellationToken cancel)
    {
        var result = await intake.TakeAsync(await EnquiryAsync(source, mail, cancel), "e-mail", cancel);
        return result.Order is { } order
            ? await KeepAsync(db, source, mail, MailFate.NewOrder, order.Number, null, cancel)
            : await KeepAsync(db, source, mail, MailFate.PutAside, null, result.Refusal?.Reason ?? result.Problems[0].Message, cancel);
    }

    private async Task<Enquiry> EnquiryAsync(string source, ReadMail mail, CancellationToken cancel)
    {
        var said = MailWords.Own($"{mail.Subject}\n{mail.Text}").Replace('\uFFFD', '?');
        var reading = SpecEntry.Read(said, (await catalog.ContentAsync(cancel)).Families);
        return new Enquiry
        {
            SubmitKey = $"mail:{Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(mail.MessageId ?? source)))}",
            Channel = OrderChannel.Email,
            Contact = new Contact { Name = (mail.FromName.Length > 0 ? mail.FromName : mail.From.Split('@')[0]).Replace('\uFFFD', '?'), Email = mail.From },
            Spec = reading.Spec with { Notes = MailText.Cut(said, SpecCheck.LongestNote) },
        };
    }

    private async Task<IncomingMail> KeepAsync(ShopDb db, string source, ReadMail mail, MailFate fate, string? orderNumber, string? reason, CancellationToken cancel)
    {
        var kept = IncomingMail.Keep(source, mail, fate, orderNumber, reason, clock.GetUtcNow());
        db.Add(kept);
        try
        {
            await db.SaveAndTellAsync(orderNumber ?? "mail", cancel);
            return kept;
        }
        catch (DbUpdateException twice) when (twice.InnerException is PostgresException { SqlState: PostgresErrorCodes.UniqueViolation })
        {
            await using var fresh = await factory.CreateDbContextAsync(cancel);
            return await KnownAsync(fresh, source, mail, cancel) ?? throw new InvalidOperationException("A mail that was taken in at the same moment has gone.", twice);
        }
    }

    [GeneratedRegex(@"\bC\d{1,9}\b", RegexOptions.IgnoreCase)]
    private static partial Regex OrderNumber();
}
