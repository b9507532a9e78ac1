using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What a customer does with an order on its tracking page. Doing it twice is doing it once.</summary>
public sealed class CustomerDesk(IDbContextFactory<ShopDb> factory, Catalog catalog, CustomerMail mail, TimeProvider clock)
{
    /// <summary>Longest name that is taken as a signature.</summary>
    public const int LongestName = 100;

    /// <summary>The day that is promised if the order's quote is accepted today, or why it cannot be.</summary>
    public async Task<Outcome<DateOnly>> PromiseAsync(Order order, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return Promise(await JudgedToday.OfAsync(catalog, db, order, null, cancel), await TodayAsync(db, cancel));
    }

    /// <summary>Accepts the quote on the customer's screen, if it is still the order's newest and has not run out.</summary>
    /// <param name="shown">The day that the screen says would be promised: a later one is not promised unseen.</param>
    public Task<Outcome<Order>> AcceptAsync(string trackingCode, string quoteNumber, string name, bool agrees, DateOnly? shown = null, CancellationToken cancel = default)
    {
        if (Unsigned(name) is { } refusal)
            return Task.FromResult<Outcome<Order>>(refusal);
        return agrees
            ? AnswerAsync(trackingCode, quoteNumber, (db, order) => AcceptAsync(db, order, name.Trim(), shown, cancel), OrderStates.Agreed, cancel)
            : Task.FromResult<Outcome<Order>>(new Refusal("notTicked", "Tick the box first: it says that you accept this price and specification."));
    }

    public Task<Outcome<Order>> DeclineAsync(string trackingCode, string quoteNumber, string name, string why, CancellationToken cancel = default) =>
        Unsigned(name) is { } refusal
            ? Task.FromResult<Outcome<Order>>(refusal)
            : AnswerAsync(trackingCode, quoteNumber, (_, order) => Task.FromResult(order.DeclineByCustomer(name.Trim(), why, clock.GetUtcNow())), [OrderState.Declined], cancel);

    /// <summary>Answers questions of the shop. Nothing that was answered earlier is lost, and the same key a second time changes nothing.</summary>
    public Task<Outcome<Order>> ReplyAsync(string trackingCode, IReadOnlyList<ReplyEntry> replies, string commandKey, CancellationToken cancel = default) =>
        ChangeAsync(trackingCode, (_, order) => Task.FromResult(order.Reply(replies, order.Contact.Name?.Trim() is { Length: > 0 } name ? name : "customer", clock.GetUtcNow(), commandKey)), cancel);

    private static Refusal? Unsigned(string name) => name.Trim().Length is > 1 and <= LongestName
        ? null
        : new Refusal("noName", "Type your name first; it stands in place of a signature.");

    private Task<Outcome<Order>> AnswerAsync(
        string trackingCode, string quoteNumber, Func<ShopDb, Order, Task<Outcome<Order>>> answer, IReadOnlyList<OrderState> alreadyDone, CancellationToken cancel) =>
        ChangeAsync(trackingCode, async (db, order) => order.CurrentQuoteNumber != quoteNumber
            ? new Refusal("otherQuote", "The shop has changed the price or the specification since this page was shown. Look at it again.")
            : alreadyDone.Contains(order.State) ? order : await answer(db, order), cancel);

    /// <summary>Does one thing to the order while nobody else does, and saves it where it changed something.</summary>
    private async Task<Outcome<Order>> ChangeAsync(string trackingCode, Func<ShopDb, Order, Task<Outcome<Order>>> change, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE tracking_code = {trackingCode} FOR UPDATE", cancel);
        if (await OrderDesk.Whole(db).SingleOrDefaultAsync(one => one.TrackingCode == trackingCode, cancel) is not { } order)
            return new Refusal("unknown", "There is no order of this tracking code.");
        var before = order.Changes;
        var outcome = await change(db, order);
        if (!outcome.Succeeded || order.Changes == before)
            return outcome;
        await mail.TellAsync(db, order, cancel);
        await db.SaveAndTellAsync(order.Number, cancel);
        await transaction.CommitAsync(cancel);
        return outcome;
    }

    /// <summary>The promised day is the quote's, or a later one where blank or time have become scarcer since.</summary>
    private async Task<Outcome<Order>> AcceptAsync(ShopDb db, Order order, string name, DateOnly? shown, CancellationToken cancel)
    {
        var promise = Promise(await JudgedToday.ToPromiseAsync(catalog, db, order, cancel), await TodayAsync(db, cancel));
        if (!promise.Succeeded)
            return promise.Refusal;
        if (promise.Value > shown)
            return new Refusal("laterDay", $"Since this page was shown the day has become later: {LetterParts.Day(promise.Value)}. Nothing is accepted yet; accept once more if that suits you.");
        return order.Accept(promise.Value, await TodayAsync(db, cancel), name, clock.GetUtcNow(), name);
    }

    private static Outcome<DateOnly> Promise(JudgedToday judged, DateOnly today) =>
        judged.Refusal is null
            ? judged.PromisedOn(today)
            : new Refusal("notAsQuoted", "Your cam cannot be made as it was quoted any more: the blank it stands on is gone, or the shop's rules have changed. Call the shop or write to it; it offers you another price.");

    private async Task<DateOnly> TodayAsync(ShopDb db, CancellationToken cancel) => (await catalog.ContentAsync(db, cancel)).Rules.Settings.Today(clock.GetUtcNow());
}
