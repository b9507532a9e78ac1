using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What follows when the desk puts a contact right: whose order it is, and where letters go that are not out yet.</summary>
internal static class ContactChange
{
    /// <summary>Stands where letters that wait have nowhere to go any more.</summary>
    private const string Nowhere = "no address";

    /// <param name="newPage">The order's page gets another address, because somebody else may have the old one.</param>
    public static async Task<Outcome<Order>> DoAsync(ShopDb db, Order order, Contact contact, bool newPage, string by, DateTimeOffset at, CancellationToken cancel)
    {
        if (EnquiryCheck.ContactProblems(contact, order.Channel).FirstOrDefault() is { } problem)
            return new Refusal("badContact", problem.Message);
        var (was, now) = (EnquiryCheck.Email(order.Contact), EnquiryCheck.Email(contact));
        var code = order.TrackingCode;
        var outcome = order.CorrectContact(contact, await CustomerAsync(db, order, contact, at, cancel), newPage ? OrderNumbers.DrawTrackingCode() : null, by, at);
        if (outcome.Succeeded && newPage)
            await Unsent(db, order.Number).ExecuteUpdateAsync(set => set.SetProperty(mail => mail.Text, mail => mail.Text.Replace(code, order.TrackingCode)), cancel);
        if (outcome.Succeeded && was != now)
            await RedirectAsync(db, order.Number, now, cancel);
        return outcome;
    }

    /// <summary>Who has the right address already; else the same customer, unless other orders show that the old address was somebody else's.</summary>
    private static async Task<Customer> CustomerAsync(ShopDb db, Order order, Contact contact, DateTimeOffset at, CancellationToken cancel)
    {
        var (customer, email, phone) = (order.Customer, EnquiryCheck.Email(contact), EnquiryCheck.Phone(contact));
        var isOnly = !await db.Orders.AnyAsync(other => other.CustomerId == customer.Id && other.Id != order.Id, cancel);
        if (email != customer.Email && email is not null && await db.Customers.SingleOrDefaultAsync(one => one.Email == email, cancel) is { } known)
            return known;
        if (email != customer.Email && customer.Email is not null && !isOnly)
            return db.Customers.Add(new Customer { Name = contact.Name!.Trim(), Email = email, Phone = phone, Since = at }).Entity;
        (customer.Email, customer.Phone) = (email, isOnly ? phone : customer.Phone ?? phone);
        if (isOnly)
            customer.Name = contact.Name!.Trim();
        return customer;
    }

    /// <summary>Letters of the order that are not out yet, or may not be.</summary>
    private static IQueryable<OutgoingMail> Unsent(ShopDb db, string number) =>
        db.OutgoingMails.Where(mail => mail.OrderNumber == number && (mail.State == MailState.Waiting || mail.State == MailState.Failed || mail.State == MailState.Unsure));

    private static Task RedirectAsync(ShopDb db, string number, string? to, CancellationToken cancel)
    {
        var unsent = Unsent(db, number);
        return to is not null
            ? unsent.ExecuteUpdateAsync(set => set.SetProperty(mail => mail.To, to), cancel)
            : unsent.ExecuteUpdateAsync(set => set.SetProperty(mail => mail.To, Nowhere).SetProperty(mail => mail.State, MailState.Failed)
                .SetProperty(mail => mail.LastError, "The address was taken out before it was sent."), cancel);
    }
}
