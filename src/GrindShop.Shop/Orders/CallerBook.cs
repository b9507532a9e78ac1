using GrindShop.Shop.Orders.Finding;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>An earlier order of somebody who calls.</summary>
public sealed record CallerOrder(string Number, OrderState State, DateTimeOffset ReceivedAt, CamSpec Spec);

/// <summary>A customer who may be the one on the phone.</summary>
/// <param name="Sure">Known by the e-mail address or the phone number, not by the name alone.</param>
/// <param name="Orders">The newest, newest first.</param>
public sealed record KnownCaller(Customer Customer, bool Sure, int OrderCount, IReadOnlyList<CallerOrder> Orders)
{
    /// <summary>Open orders that are nearly this cam.</summary>
    public IEnumerable<CallerOrder> Like(CamSpec spec) => Orders.Where(order => order.State.IsOpen() && NearlySame.Is(order.Spec, spec));
}

/// <summary>Who calls? Found by what is known so far of name, phone and e-mail, in any spelling of the number, also one that was only given with an order.</summary>
public sealed class CallerBook(IDbContextFactory<ShopDb> factory)
{
    private const int MostCallers = 4, MostOrders = 12, LeastDigits = 7, LeastLetters = 3;

    public async Task<IReadOnlyList<KnownCaller>> FindAsync(Contact contact, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var sure = await SureAsync(db, contact, cancel);
        var byName = sure.Count > 0 ? [] : await ByNameAsync(db, contact.Name?.Trim() ?? "", cancel);
        var callers = new List<KnownCaller>();
        foreach (var customer in sure.Concat(byName).Take(MostCallers))
            callers.Add(await CallerAsync(db, customer, sure.Contains(customer), cancel));
        return callers;
    }

    /// <summary>The digits of a phone number, without a leading 1 where eleven were given.</summary>
    public static string Digits(string? phone) =>
        string.Concat((phone ?? "").Where(char.IsAsciiDigit)) is var digits && digits is ['1', .. { Length: 10 } local] ? local : digits;

    private static async Task<List<Customer>> SureAsync(ShopDb db, Contact contact, CancellationToken cancel)
    {
        var (email, digits) = (EnquiryCheck.Email(contact), Digits(contact.Phone));
        var backwards = digits.Length >= LeastDigits ? $"{string.Concat(digits.Reverse())}%" : null;
        return await db.Customers.FromSql($"""
            SELECT * FROM customers c WHERE c.email = {email} OR reverse(regexp_replace(c.phone, '[^0-9]', '', 'g')) LIKE {backwards}
                OR c.id IN (SELECT o.customer_id FROM orders o WHERE reverse(regexp_replace(o.contact->>'phone', '[^0-9]', '', 'g')) LIKE {backwards} ORDER BY o.id DESC LIMIT {MostOrders})
            """)
            .AsNoTracking().OrderBy(customer => customer.Id).Take(MostCallers).ToListAsync(cancel);
    }

    private static async Task<List<Customer>> ByNameAsync(ShopDb db, string name, CancellationToken cancel)
    {
        if (name.Length < LeastLetters)
            return [];
        var part = $"%{LikePattern.Literal(name)}%";
        return await db.Customers.AsNoTracking().Where(customer => EF.Functions.ILike(customer.Name, part, @"\")).OrderBy(customer => customer.Name).Take(MostCallers).ToListAsync(cancel);
    }

    private static async Task<KnownCaller> CallerAsync(ShopDb db, Customer customer, bool sure, CancellationToken cancel)
    {
        var orders = db.Orders.AsNoTracking().Where(order => order.CustomerId == customer.Id);
        var newest = await orders.OrderByDescending(order => order.ReceivedAt).Take(MostOrders)
            .Select(order => new CallerOrder(order.Number, order.State, order.ReceivedAt, order.Cams.OrderBy(cam => cam.Ordinal).Select(cam => cam.Spec).First()))
            .ToListAsync(cancel);
        return new KnownCaller(customer, sure, await orders.CountAsync(cancel), newest);
    }
}
