using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What the front desk does with an order. Each act names the version it was decided on; a stale one is refused and nothing changes.</summary>
public sealed class OrderDesk(IDbContextFactory<ShopDb> factory, Catalog catalog, TimeProvider clock)
{
    /// <summary>Open orders, the longest waiting first; with <paramref name="closed"/> the finished ones, newest first.</summary>
    public async Task<IReadOnlyList<InboxRow>> InboxAsync(bool closed, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var orders = db.Orders.AsNoTracking().Where(order => OrderStates.Closed.Contains(order.State) == closed);
        orders = closed ? orders.OrderByDescending(order => order.ReceivedAt) : orders.OrderBy(order => order.ReceivedAt);
        return await orders.Select(order => new InboxRow(
            order.Number, order.State, order.StateSince, order.Channel, order.Customer.Name, order.CustomerReference,
            order.Cams.OrderBy(cam => cam.Ordinal).Select(cam => cam.Spec).First(), order.Cams.OrderBy(cam => cam.Ordinal).Select(cam => cam.Verdict).First(),
            order.Cams.Count, order.Price, order.ReceivedAt, order.PromisedOn)).ToListAsync(cancel);
    }

    /// <summary>Everything about one order, or null where there is none of this number.</summary>
    public async Task<Order?> FindAsync(string number, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(order => order.Number == number, cancel);
    }

    public async Task<Order?> TrackAsync(string trackingCode, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(order => order.TrackingCode == trackingCode, cancel);
    }

    public async Task<Outcome<Order>> CorrectAsync(string number, uint version, CamSpec spec, string why, string by, CancellationToken cancel = default, int cam = 1)
    {
        var completed = await catalog.CompleteAsync(spec, cancel);
        if (completed.InTheWay.FirstOrDefault() is { } problem)
            return new Refusal("badSpec", problem.Message);
        var answer = await catalog.JudgeAsync(completed.Grind!, cancel);
        var reason = string.IsNullOrWhiteSpace(why) ? "Specification corrected." : $"Specification corrected: {why.Trim().TrimEnd('.')}.";
        return await ChangeAsync(number, version, order => order.Correct(spec, answer, by, clock.GetUtcNow(), reason, cam), cancel);
    }

    public Task<Outcome<Order>> QuoteAsync(string number, uint version, string partNumber, IReadOnlyList<PriceLine> lines, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, order => order.Quote(partNumber, lines, by, clock.GetUtcNow()), cancel);

    public async Task<Outcome<Order>> AcceptAsync(string number, uint version, DateOnly promisedOn, string by, CancellationToken cancel = default)
    {
        var today = (await catalog.ContentAsync(cancel)).Rules.Settings.Today(clock.GetUtcNow());
        return await ChangeAsync(number, version, order => order.Accept(promisedOn, today, by, clock.GetUtcNow()), cancel);
    }

    public Task<Outcome<Order>> DeclineAsync(string number, uint version, string why, string by, CancellationToken cancel = default) =>
        ChangeAsync(number, version, order => order.Decline(why, by, clock.GetUtcNow()), cancel);

    /// <summary>The price of the order on a blank by the shop's rules of today.</summary>
    public async Task<Outcome<IReadOnlyList<PriceLine>>> PriceAsync(Order order, string partNumber, IReadOnlyCollection<string> manualCodes, CancellationToken cancel = default)
    {
        if (order.First.Answer is not { } answer || answer.Blanks.FirstOrDefault(blank => blank.PartNumber == partNumber) is not { } fit)
            return new Refusal("notJudged", "Complete the specification first: the price stands on a blank that was judged for it.");
        var content = await catalog.ContentAsync(cancel);
        if (content.Blank(partNumber) is not { } blank)
            return new Refusal("unknownBlank", $"Blank {partNumber} is not in the catalog any more.");
        return (await PriceRulesAsync(cancel)).Lines(answer.Grind, blank.Part.EngineFamily, blank.Part, fit, manualCodes);
    }

    public async Task<PriceRules> PriceRulesAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var settings = (await catalog.ContentAsync(cancel)).Rules.Settings;
        return new PriceRules(await db.BasePrices.AsNoTracking().ToListAsync(cancel), await db.PriceAdders.AsNoTracking().OrderBy(adder => adder.Id).ToListAsync(cancel), settings.BlankMarkup);
    }

    internal static IQueryable<Order> Whole(ShopDb db) => db.Orders
        .Include(order => order.Customer)
        .Include(order => order.History.OrderBy(line => line.Id))
        .AsSplitQuery();

    private async Task<Outcome<Order>> ChangeAsync(string number, uint version, Func<Order, Outcome<Order>> change, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await db.Orders.Include(order => order.History).SingleOrDefaultAsync(order => order.Number == number, cancel) is not { } order)
            return new Refusal("unknown", $"There is no order {number}.");
        if (order.Version != version)
            return Stale(order);
        var outcome = change(order);
        if (!outcome.Succeeded)
            return outcome;
        try
        {
            await db.SaveAndTellAsync(number, cancel);
        }
        catch (DbUpdateConcurrencyException)
        {
            return await FindAsync(number, cancel) is { } current ? Stale(current) : new Refusal("unknown", $"There is no order {number}.");
        }
        return outcome;
    }

    private static Refusal Stale(Order order)
    {
        var last = order.History.OrderBy(line => line.Id).Last();
        return new Refusal("stale", $"{last.By} changed this order in the meantime: {last.What} What you typed is kept; look at the change and save again.");
    }
}

/// <summary>One line of the inbox; <see cref="Spec"/> and <see cref="Verdict"/> are those of the first of <see cref="Cams"/> cams.</summary>
public sealed record InboxRow(
    string Number, OrderState State, DateTimeOffset StateSince, OrderChannel Channel, string Customer, string? Reference,
    CamSpec Spec, Verdict? Verdict, int Cams, decimal Price, DateTimeOffset ReceivedAt, DateOnly? PromisedOn);
