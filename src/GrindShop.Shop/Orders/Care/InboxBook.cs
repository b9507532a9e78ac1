using System.Linq.Expressions;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>What the desk's lists are read from.</summary>
public sealed class InboxBook(IDbContextFactory<ShopDb> factory)
{
    public const int PageLength = 50;

    /// <summary>
    /// Every open order, and the closed ones whose customers said something that the desk has not heard yet. Unheard ones stand first; then the longest waiting.
    /// Resting ones too.
    /// </summary>
    public async Task<IReadOnlyList<InboxRow>> OpenAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var unheard = Unheard(db);
        var rows = await db.Orders.AsNoTracking().Where(order => !OrderStates.Closed.Contains(order.State) || unheard.Select(line => line.OrderId).Contains(order.Id))
            .OrderBy(order => order.ReceivedAt).Select(Row(unheard)).ToListAsync(cancel);
        return [.. rows.OrderBy(row => row.WroteAt ?? DateTimeOffset.MaxValue)];
    }

    /// <summary>One page of the closed orders, the last closed first. A page behind the end is the last one.</summary>
    public async Task<ClosedPage> ClosedAsync(int page, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var closed = db.Orders.AsNoTracking().Where(order => OrderStates.Closed.Contains(order.State));
        var total = await closed.CountAsync(cancel);
        var there = Math.Clamp(page, 1, Math.Max(1, ClosedPage.PagesOf(total)));
        var rows = await closed.OrderByDescending(order => order.StateSince).ThenByDescending(order => order.Id)
            .Skip((there - 1) * PageLength).Take(PageLength).Select(Row(Unheard(db))).ToListAsync(cancel);
        return new ClosedPage(total, there, rows);
    }

    public async Task<int> ClosedCountAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.Orders.CountAsync(order => OrderStates.Closed.Contains(order.State), cancel);
    }

    /// <summary>Every call the desk owes, the longest overdue first.</summary>
    public async Task<IReadOnlyList<CallRow>> CallsAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await (from order in db.Orders.AsNoTracking()
                      from call in order.Calls
                      where call.DoneAt == null
                      orderby call.DueAt, call.Id
                      select new CallRow(order.Number, order.State, order.Customer.Name, order.AssignedTo, call.Id, call.DueAt, call.Number, call.About, call.Tries, call.LastTriedAt, call.By))
            .ToListAsync(cancel);
    }

    /// <summary>The last line of each order that <see cref="Order.Unheard"/> speaks of.</summary>
    private static IQueryable<OrderEvent> Unheard(ShopDb db)
    {
        var (lines, orders) = (db.Set<OrderEvent>(), db.Orders);
        return lines.Where(said => OrderEventKinds.Said.Contains(said.Kind)
            && !lines.Any(later => later.OrderId == said.OrderId && later.Id > said.Id && !OrderEventKinds.WithoutDesk.Contains(later.Kind)
                && !(later.Kind == OrderEventKind.Accepted && orders.Any(order => order.Id == later.OrderId && order.AcceptedBy == later.By))));
    }

    private static Expression<Func<Order, InboxRow>> Row(IQueryable<OrderEvent> unheard) => order => new InboxRow(
        order.Number, order.State, order.StateSince, order.Channel, order.Customer.Name, order.CustomerReference,
        order.Cams.OrderBy(cam => cam.Ordinal).Select(cam => cam.Spec).First(), order.Cams.OrderBy(cam => cam.Ordinal).Select(cam => cam.Verdict).First(),
        order.Cams.Count, order.Price, order.ReceivedAt, order.PromisedOn, order.Cams.OrderBy(cam => cam.Ordinal).Select(cam => cam.Kind).First(),
        order.AssignedTo, order.SnoozedUntil, order.SnoozeReason, order.Version,
        unheard.Where(line => line.OrderId == order.Id).Max(line => (DateTimeOffset?)line.At));
}

/// <summary>One line of the inbox; <see cref="Spec"/>, <see cref="Verdict"/> and <see cref="Kind"/> are those of the first of <see cref="Cams"/> cams.</summary>
/// <param name="WroteAt">When the customer said something that the desk has not heard yet.</param>
public sealed record InboxRow(
    string Number, OrderState State, DateTimeOffset StateSince, OrderChannel Channel, string Customer, string? Reference,
    CamSpec Spec, Verdict? Verdict, int Cams, decimal Price, DateTimeOffset ReceivedAt, DateOnly? PromisedOn, WorkKind Kind,
    string? AssignedTo, DateTimeOffset? SnoozedUntil, string? SnoozeReason, uint Version, DateTimeOffset? WroteAt)
{
    public bool IsSnoozed(DateTimeOffset now) => SnoozedUntil > now;
}

/// <param name="Page">From 1.</param>
public sealed record ClosedPage(int Total, int Page, IReadOnlyList<InboxRow> Rows)
{
    public int Pages => PagesOf(Total);

    public static int PagesOf(int total) => (total + InboxBook.PageLength - 1) / InboxBook.PageLength;
}

/// <summary>A call that is owed, with the order it belongs to.</summary>
public sealed record CallRow(
    string Order, OrderState State, string Customer, string? AssignedTo, int Id, DateTimeOffset DueAt, string Number, string About, int Tries, DateTimeOffset? LastTriedAt, string By);
