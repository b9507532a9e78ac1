using System.Text.RegularExpressions;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>The order that a mail speaks of.</summary>
/// <param name="IsCustomers">It comes from the address of the order's customer. Numbers can be guessed and senders' mails passed on: nothing else counts as theirs.</param>
public sealed partial record OrderOfMail(string Number, bool IsCustomers)
{
    private const int MostNumbers = 5;

    /// <summary>Found by the Message-ID of a letter of ours, or else by the number in its subject; null where it names none.</summary>
    internal static async Task<OrderOfMail?> FindAsync(ShopDb db, ReadMail mail, CancellationToken cancel)
    {
        var answered = await db.OutgoingMails.Where(sent => mail.Answers.Contains(sent.MessageId)).OrderByDescending(sent => sent.Id).Select(sent => sent.OrderNumber).FirstOrDefaultAsync(cancel);
        string[] numbers = answered is not null ? [answered] : [.. Numbers().Matches(mail.Subject).Select(match => match.Value.ToUpperInvariant()).Distinct().Take(MostNumbers)];
        var orders = await db.Orders.AsNoTracking().Include(order => order.Customer).Where(order => numbers.Contains(order.Number)).OrderByDescending(order => order.Id).ToListAsync(cancel);
        var found = orders.Find(order => IsFrom(order, mail)) ?? orders.FirstOrDefault();
        return found is null ? null : new OrderOfMail(found.Number, IsFrom(found, mail));
    }

    private static bool IsFrom(Order order, ReadMail mail) => mail.From.Length > 0 && (EnquiryCheck.Email(order.Contact) == mail.From || order.Customer.Email == mail.From);

    [GeneratedRegex(@"\bC\d{4,9}\b", RegexOptions.IgnoreCase)]
    private static partial Regex Numbers();
}
