using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What the front desk does with an order. Each act names the version it was decided on; a stale one is refused and nothing changes.</summary>
public sealed class OrderDesk(IDbContextFactory<ShopDb> factory, Catalog catalog, CustomerMail mail, TimeProvider clock)
{
    /// <summary>Everything about one order, or null where there is none of this number.</summary>
    public async Task<Order?> FindAsync(string number, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(order => order.Number == number, cancel);
    }

    public async Task<Order?> FindByQuoteAsync(string quoteNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(order => order.Quotes.Any(quote => quote.Number == quoteNumber), cancel);
    }

    public async Task<Order?> TrackAsync(string trackingCode, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(order => order.TrackingCode == trackingCode, cancel);
    }

    public async Task<Outcome<Order>> CorrectAsync(string number, uint version, CamSpec spec, string why, string by, CancellationToken cancel = default, int cam = 1)
    {
        if ((await FindAsync(number, cancel))?.Cam(cam) is not { } wanted)
            return new Refusal("noSuchCam", $"Order {number} has no cam {cam}.");
        var look = await catalog.LookAsync(wanted.Entry with { Spec = spec }, cancel);
        if (CamLook.Of(look.Spec) is { } refusal)
            return refusal;
        var reason = string.IsNullOrWhiteSpace(why) ? "Specification corrected." : $"Specification corrected: {why.Trim().TrimEnd('.')}.";
        return await ChangeAsync(number, version, order => order.Correct(spec, look.Answer, by, clock.GetUtcNow(), reason, cam), cancel);
    }

    /// <summary>
    /// Takes the customer's answers over into a specification, as <see cref="CorrectAsync"/> does; one that was incomplete before may still be incomplete afterwards,
    /// as long as nothing in it is wrong.
    /// </summary>
    public async Task<Outcome<Order>> TakeAnswersAsync(string number, uint version, CamSpec spec, string why, string by, int cam = 1, CancellationToken cancel = default)
    {
        if ((await FindAsync(number, cancel))?.Cam(cam) is not { } wanted)
            return new Refusal("noSuchCam", $"Order {number} has no cam {cam}.");
        var completed = await catalog.CompleteAsync(spec, cancel);
        if (wanted.Answer is not null || completed.Problems.Count > 0 || !completed.InTheWay.Any())
            return await CorrectAsync(number, version, spec, why, by, cancel, cam);
        return await ChangeAsync(number, version, order => order.Correct(spec, null, by, clock.GetUtcNow(), why, cam), cancel);
    }

    /// <summary>Sends questions to the customer. The same key a second time sends nothing.</summary>
    public Task<Outcome<Order>> AskAsync(string number, uint version, IReadOnlyList<QuestionEntry> questions, string commandKey, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, order => order.Ask(questions, by, clock.GetUtcNow(), commandKey), cancel);

    /// <summary>Adds a cam to the order, judged with the stock of this moment.</summary>
    public async Task<Outcome<Order>> AddCamAsync(string number, uint version, CamEntry entry, string by, CancellationToken cancel = default)
    {
        var look = await catalog.LookAsync(entry, cancel);
        return look.Refusal ?? await ChangeAsync(number, version, order => order.AddCam(entry, look.Answer, by, clock.GetUtcNow()), cancel);
    }

    /// <summary>Another number of pieces, kind of work, received condition, measures or gears of a cam; its specification may still be incomplete.</summary>
    public async Task<Outcome<Order>> SetWorkAsync(string number, uint version, int cam, CamEntry entry, string by, CancellationToken cancel = default)
    {
        var look = await catalog.LookAsync(entry, cancel);
        return CamLook.Of(look.Work) ?? await ChangeAsync(number, version, order => order.SetWork(cam, entry, look.Answer, by, clock.GetUtcNow()), cancel);
    }

    public Task<Outcome<Order>> RemoveCamAsync(string number, uint version, int cam, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, order => order.RemoveCam(cam, by, clock.GetUtcNow()), cancel);

    public async Task<Outcome<Order>> QuoteAsync(string number, uint version, QuoteOffer offer, string by, CancellationToken cancel = default)
    {
        if (await UnfinishedAsync(number, cancel) is { } unfinished)
            return unfinished;
        var today = await TodayAsync(cancel);
        return await ChangeAsync(number, version, async (db, order) =>
        {
            var judged = await JudgedToday.OfAsync(catalog, db, order, offer.Parts, cancel);
            return (judged.Refusal ?? judged.OtherStock(offer.Fits)) is { } refusal ? refusal : order.Quote(offer with { Fits = judged.Fits }, today, by, clock.GetUtcNow());
        }, cancel);
    }

    /// <summary>An order of one cam at what the rules ask.</summary>
    public async Task<Outcome<Order>> QuoteAsync(string number, uint version, string partNumber, IReadOnlyList<PriceLine> lines, string by, CancellationToken cancel = default) =>
        await QuoteAsync(number, version, QuoteOffer.Of(partNumber, lines, await TodayAsync(cancel)), by, cancel);

    /// <summary>What is still missing or wrong before a cam of the order can be priced; nothing where it can.</summary>
    public async Task<IReadOnlyList<FieldProblem>> UnfinishedAsync(OrderCam cam, CancellationToken cancel = default) =>
        cam.Answer is null ? (await catalog.LookAsync(cam.Entry, cancel)).Problems : [];

    /// <summary>A cam that came in must be described before it is priced: no judgement stands against an incomplete one by itself.</summary>
    private async Task<Refusal?> UnfinishedAsync(string number, CancellationToken cancel)
    {
        foreach (var cam in (await FindAsync(number, cancel))?.Cams.Where(cam => !cam.NeedsBlank) ?? [])
            if (await UnfinishedAsync(cam, cancel) is [var problem, ..])
                return new Refusal("incomplete", $"Cam {cam.Ordinal} is not ready to be priced: {problem.Message}");
        return null;
    }

    /// <summary>Writes down money that came in. Two of them at once do no harm to one another; a repeated key is the same payment.</summary>
    public async Task<Outcome<Order>> RecordDepositAsync(string number, uint version, DepositEntry entry, string by, CancellationToken cancel = default)
    {
        var today = await TodayAsync(cancel);
        return await ChangeAsync(number, version, order => order.RecordDeposit(entry, today, by, clock.GetUtcNow()), cancel);
    }

    /// <summary>Prices that ran out before an answer came; each becomes a line of its order's history. Answers with how many.</summary>
    public async Task<int> ExpireQuotesAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.Settings.AsNoTracking().SingleOrDefaultAsync(cancel) is not { } settings)
            return 0;
        var today = settings.Today(clock.GetUtcNow());
        var due = await db.Orders.Where(order => order.State == OrderState.Quoted && order.Quotes.Any(quote => quote.Number == order.CurrentQuoteNumber && quote.ValidUntil < today))
            .Select(order => new { order.Number, order.Version }).ToListAsync(cancel);
        var expired = 0;
        foreach (var order in due)
            expired += (await ChangeAsync(order.Number, order.Version, one => one.Expire(today, "GrindShop", clock.GetUtcNow()), cancel)).Succeeded ? 1 : 0;
        return expired;
    }

    /// <summary>The customer has told the desk yes.</summary>
    /// <param name="suggested">The day that the desk was shown as the shop's own; where it has become later, nothing is promised unseen.</param>
    public async Task<Outcome<Order>> AcceptAsync(string number, uint version, DateOnly promisedOn, string by, DateOnly? suggested = null, CancellationToken cancel = default)
    {
        var today = await TodayAsync(cancel);
        return await ChangeAsync(number, version, async (db, order) =>
        {
            var judged = await JudgedToday.ToPromiseAsync(catalog, db, order, cancel);
            return (judged.Refusal ?? Later(judged.PromisedOn(today), suggested, promisedOn)) is { } refusal ? refusal : order.Accept(promisedOn, today, by, clock.GetUtcNow());
        }, cancel);
    }

    private static Refusal? Later(DateOnly usual, DateOnly? suggested, DateOnly promised) => usual > suggested && usual > promised
        ? new Refusal("laterDay", $"Since this page was shown the shop's own day has become later: {LetterParts.Day(usual)}. Nothing is promised yet; look at the day and promise again.")
        : null;

    public Task<Outcome<Order>> DeclineAsync(string number, uint version, string why, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, order => order.Decline(why, by, clock.GetUtcNow()), cancel);

    /// <summary>Puts name, e-mail address and phone right; letters that are not out yet go to the new address too.</summary>
    /// <param name="newPage">The customer's page gets another address, because somebody else may have the old one.</param>
    public Task<Outcome<Order>> CorrectContactAsync(string number, uint version, Contact contact, string by, bool newPage = false, CancellationToken cancel = default) =>
        ChangeAsync(number, version, (db, order) => ContactChange.DoAsync(db, order, contact, newPage, by, clock.GetUtcNow(), cancel), cancel);

    /// <summary>Writes to the customer in the desk's own words.</summary>
    public Task<Outcome<Order>> WriteToAsync(string number, uint version, string message, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, order => order.WriteTo(message, by, clock.GetUtcNow()), cancel);

    /// <summary>The customer told the desk that nothing is to be made; no letter goes out.</summary>
    public Task<Outcome<Order>> TakeNoAsync(string number, uint version, string why, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, order => order.TakeNo(why, by, clock.GetUtcNow()), cancel);

    /// <summary>The letter that an act would send; nothing is done.</summary>
    /// <param name="act">Does it to a copy of the order, given the day in the shop and the moment.</param>
    public async Task<Outcome<Letter>> PreviewAsync(string number, Func<Order, DateOnly, DateTimeOffset, Outcome<Order>> act, CancellationToken cancel = default)
    {
        if (await FindAsync(number, cancel) is not { } copy)
            return new Refusal("unknown", $"There is no order {number}.");
        var done = act(copy, await TodayAsync(cancel), clock.GetUtcNow());
        return done.Succeeded ? await mail.OfCopyAsync(copy, cancel) : done.Refusal;
    }

    /// <summary>What the shop can say to the order today, on these blanks, or on those that were quoted.</summary>
    public async Task<JudgedToday> JudgeTodayAsync(Order order, IReadOnlyDictionary<int, string>? parts = null, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await JudgedToday.OfAsync(catalog, db, order, parts, cancel);
    }

    /// <summary>The price of the order on the chosen blanks by the shop's rules and stock of today.</summary>
    public async Task<Outcome<PriceByRules>> DraftAsync(Order order, IReadOnlyDictionary<int, CamChoice> choices, CancellationToken cancel = default)
    {
        var parts = choices.Where(choice => choice.Value.PartNumber is not null).ToDictionary(choice => choice.Key, choice => choice.Value.PartNumber!);
        var judged = await JudgeTodayAsync(order, parts, cancel);
        if (judged.Refusal is { } refusal)
            return refusal;
        var lines = QuoteDraft.Lines(order, choices, judged.Fits, await PriceRulesAsync(cancel), await catalog.ContentAsync(cancel));
        return lines.Succeeded ? new PriceByRules(lines.Value, judged.ShipsOn(await TodayAsync(cancel)), judged.Fits, judged.Shortages) : lines.Refusal;
    }

    /// <summary>By how much the rules ask more or less for a cam under another answer, on another blank, in another number; null where they cannot say.</summary>
    public async Task<decimal?> PriceDifferenceAsync(OrderCam cam, FeasibilityAnswer? answer, string? partNumber, int quantity, CancellationToken cancel = default)
    {
        var (rules, content) = (await PriceRulesAsync(cancel), await catalog.ContentAsync(cancel));
        return QuoteDraft.Sum(cam, answer, partNumber, quantity, rules, content) - QuoteDraft.Sum(cam, cam.Answer, cam.QuotedPartNumber, cam.Quantity, rules, content);
    }

    public async Task<PriceRules> PriceRulesAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        return new PriceRules(await db.PriceListAsync(cancel), settings.BlankMarkup);
    }

    internal static IQueryable<Order> Whole(ShopDb db) => db.Orders
        .Include(order => order.Customer)
        .Include(order => order.History.OrderBy(line => line.Id))
        .Include(order => order.Quotes)
        .Include(order => order.Deposits)
        .Include(order => order.Revisions)
        .Include(order => order.Questions)
        .Include(order => order.Calls)
        .AsSplitQuery();

    private async Task<DateOnly> TodayAsync(CancellationToken cancel) => (await catalog.ContentAsync(cancel)).Rules.Settings.Today(clock.GetUtcNow());

    /// <summary>
    /// The order is locked from the reading on: who comes second waits, and is then told what the first has changed.
    /// </summary>
    /// <param name="version">Null where the order's own rule says whether the act still stands.</param>
    internal Task<Outcome<Order>> ChangeAsync(string number, uint? version, Func<Order, Outcome<Order>> change, CancellationToken cancel) =>
        ChangeAsync(number, version, (_, order) => Task.FromResult(change(order)), cancel);

    private async Task<Outcome<Order>> ChangeAsync(string number, uint? version, Func<ShopDb, Order, Task<Outcome<Order>>> change, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE number = {number} FOR UPDATE", cancel);
        if (await Whole(db).SingleOrDefaultAsync(order => order.Number == number, cancel) is not { } order)
            return new Refusal("unknown", $"There is no order {number}.");
        if (version is not null && order.Version != version)
            return Stale(order);
        var outcome = await change(db, order);
        if (!outcome.Succeeded)
            return outcome;
        await mail.TellAsync(db, order, cancel);
        await db.SaveAndTellAsync(number, cancel);
        await transaction.CommitAsync(cancel);
        return outcome;
    }

    internal static Refusal Stale(Order order)
    {
        var last = order.History.OrderBy(line => line.Id).Last();
        return new Refusal("stale", $"{last.By} changed this order in the meantime: {last.What} What you typed is kept; look at the change and save again.");
    }
}
