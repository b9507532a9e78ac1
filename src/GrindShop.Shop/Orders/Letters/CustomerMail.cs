using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>Tells customers by e-mail what became of their orders.</summary>
public sealed class CustomerMail(IDbContextFactory<ShopDb> factory, Catalog catalog, MailSettings settings, TimeProvider clock)
{
    /// <summary>
    /// Adds the mail of every history line that is about to be saved and that the customer is told of; the same transaction keeps both.
    /// A customer without an address gets none.
    /// </summary>
    public async Task TellAsync(ShopDb db, Order order, CancellationToken cancel)
    {
        if (EnquiryCheck.Email(order.Contact) is not { } to)
            return;
        var letters = await LettersAsync(db, cancel);
        var answered = await AnsweredAsync(db, order.Number, cancel);
        foreach (var (place, line) in New(order))
            if (letters.Of(order, line) is { } letter)
                db.Add(Write(letters, $"{order.Number}/{place} {line.Kind}", order, to, letter with { InReplyTo = answered }, line.At));
    }

    /// <summary>The customer's last mail, so that the letter stands below it in a mail program: the one being saved now, or the last one kept.</summary>
    private static async Task<string?> AnsweredAsync(ShopDb db, string number, CancellationToken cancel) =>
        db.IncomingMails.Local.LastOrDefault(mail => mail.OrderNumber == number)?.MessageId
        ?? await db.IncomingMails.Where(mail => mail.OrderNumber == number && (mail.Fate == MailFate.NewOrder || mail.Fate == MailFate.Added))
            .OrderByDescending(mail => mail.Id).Select(mail => mail.MessageId).FirstOrDefaultAsync(cancel);

    /// <summary>What would be sent with these questions.</summary>
    public async Task<Letter> PreviewAsync(Order order, IReadOnlyList<QuestionEntry> questions, CancellationToken cancel = default) =>
        (await LettersAsync(cancel)).Questions(order, questions);

    /// <summary>The letter of what was just done to a copy of an order that nobody saves.</summary>
    public async Task<Outcome<Letter>> OfCopyAsync(Order copy, CancellationToken cancel)
    {
        var letters = await LettersAsync(cancel);
        return New(copy).Select(line => letters.Of(copy, line.Line)).OfType<Letter>().LastOrDefault() is { } letter
            ? letter
            : new Refusal("noLetter", "Nothing is written to the customer about this.");
    }

    private async Task<Letters> LettersAsync(CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await LettersAsync(db, cancel);
    }

    /// <summary>The same on the caller's connection: whoever holds one in a transaction must not wait for a second.</summary>
    private async Task<Letters> LettersAsync(ShopDb db, CancellationToken cancel)
    {
        var content = await catalog.ContentAsync(db, cancel);
        var prices = new PriceRules(await db.PriceListAsync(cancel), content.Rules.Settings.BlankMarkup);
        return new Letters(content, settings.PublicAddress, prices, content.Rules.Settings.Today(clock.GetUtcNow()));
    }

    /// <summary>What a customer without an address has to be told by word: the letter of the last event, as it would have gone out; null where there is an address or nothing to tell.</summary>
    public async Task<Letter?> ToTellAsync(Order order, CancellationToken cancel = default)
    {
        if (order.HasAddress)
            return null;
        var letters = await LettersAsync(cancel);
        var last = order.History.OrderByDescending(line => line.Id).TakeWhile(line => line.Kind != OrderEventKind.Corrected);
        return last.Select(line => letters.Of(order, line)).FirstOrDefault(letter => letter is not null);
    }

    /// <summary>Lines that the database has not numbered yet, with their place in the history: together with the order they name the event.</summary>
    private static IEnumerable<(int Place, OrderEvent Line)> New(Order order)
    {
        var lines = order.History.Where(line => line.Id == 0).ToList();
        return lines.Select((line, index) => (order.Changes - lines.Count + index + 1, line));
    }

    private OutgoingMail Write(Letters letters, string eventKey, Order order, string to, Letter letter, DateTimeOffset at) =>
        OutgoingMail.Write(eventKey, order.Number, to, letter, (settings.Sender ?? letters.ShopEmail).Split('@')[^1], at);
}
