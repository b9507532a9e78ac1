using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What became of a submitted enquiry: an order, wrong fields, or a refusal.</summary>
public sealed record SubmitResult(Order? Order, IReadOnlyList<FieldProblem> Problems, Refusal? Refusal = null);

/// <summary>Takes in enquiries. The same key sent again answers with the same order.</summary>
public sealed class SpecIntake(IDbContextFactory<ShopDb> factory, Catalog catalog, CustomerMail mail, TimeProvider clock)
{
    public async Task<SubmitResult> SubmitAsync(Enquiry enquiry, string by, CancellationToken cancel = default)
    {
        var look = await catalog.LookAsync(enquiry.Cam, cancel);
        var problems = EnquiryCheck.Problems(enquiry, look.Problems);
        if (problems.Count > 0)
            return new SubmitResult(null, problems);
        return await ReceiveAsync(enquiry, look.Answer, by, (_, _) => Task.FromResult<Refusal?>(null), cancel);
    }

    /// <summary>The desk takes in what was said, complete or not; nothing that was said is lost, and what is missing is asked later.</summary>
    public Task<SubmitResult> TakeAsync(Enquiry enquiry, string by, CancellationToken cancel = default) =>
        TakeAsync(enquiry, by, (_, _) => Task.FromResult<Refusal?>(null), cancel);

    /// <summary>The same, and in the same transaction something beside it that stands or falls with the order.</summary>
    internal async Task<SubmitResult> TakeAsync(Enquiry enquiry, string by, Func<ShopDb, Order, Task<Refusal?>> beside, CancellationToken cancel)
    {
        var look = await catalog.LookAsync(enquiry.Cam, cancel);
        var problems = EnquiryCheck.DeskProblems(enquiry, look.Problems);
        return problems.Count > 0 ? new SubmitResult(null, problems) : await ReceiveAsync(enquiry, look.Answer, by, beside, cancel);
    }

    private async Task<SubmitResult> ReceiveAsync(Enquiry enquiry, FeasibilityAnswer? answer, string by, Func<ShopDb, Order, Task<Refusal?>> beside, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.Enquiries})", cancel);
        if (await db.Orders.SingleOrDefaultAsync(order => order.SubmitKey == enquiry.SubmitKey, cancel) is { } earlier)
            return earlier.SubmitDigest == enquiry.Digest()
                ? new SubmitResult(earlier, [])
                : new SubmitResult(null, [], new Refusal("keyReused", "This key was used for another enquiry; send a new one for a new enquiry."));
        var now = clock.GetUtcNow();
        var order = Order.Receive(await db.NextOrderNumbersAsync(cancel), enquiry, await CustomerAsync(db, enquiry, now, cancel), answer, by, now);
        db.Add(order);
        if (await beside(db, order) is { } refusal)
            return new SubmitResult(null, [], refusal);
        await mail.TellAsync(db, order, cancel);
        await db.SaveAndTellAsync(order.Number, cancel);
        await transaction.CommitAsync(cancel);
        return new SubmitResult(order, []);
    }

    private static async Task<Customer> CustomerAsync(ShopDb db, Enquiry enquiry, DateTimeOffset now, CancellationToken cancel)
    {
        var (email, phone) = (EnquiryCheck.Email(enquiry.Contact), EnquiryCheck.Phone(enquiry.Contact));
        var known = (email, phone) switch
        {
            ({ } address, _) => await db.Customers.SingleOrDefaultAsync(customer => customer.Email == address, cancel),
            (_, { } number) => await db.Customers.OrderBy(customer => customer.Id).FirstOrDefaultAsync(customer => customer.Email == null && customer.Phone == number, cancel),
            _ => null,
        };
        if (known is not null)
            known.Phone ??= phone;
        return known ?? await ChosenAsync(db, enquiry.KnownCustomer, email, phone, cancel)
            ?? db.Customers.Add(new Customer { Name = enquiry.Contact.Name!.Trim(), Email = email, Phone = phone, Since = now }).Entity;
    }

    /// <summary>The customer that the desk knows by name, with the address they give now; null where the desk chose none.</summary>
    private static async Task<Customer?> ChosenAsync(ShopDb db, int? id, string? email, string? phone, CancellationToken cancel)
    {
        if (await db.Customers.SingleOrDefaultAsync(customer => customer.Id == id && customer.Email == null, cancel) is not { } chosen)
            return null;
        (chosen.Email, chosen.Phone) = (email, chosen.Phone ?? phone);
        return chosen;
    }
}
