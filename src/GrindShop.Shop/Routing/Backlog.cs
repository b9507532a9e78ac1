using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Routing;

/// <summary>One cam that is not out of the door yet. <see cref="Stage"/> is null while it waits for its blank.</summary>
public sealed record BacklogRow(string OrderNumber, string? JobCode, string Customer, string EngineFamily, Stage? Stage, DateTimeOffset Since, DateTimeOffset ReceivedAt, DateOnly DueOn, int DaysLate)
{
    public bool IsLate => DaysLate > 0;
}

/// <summary>Accepted orders and open jobs: where each stands, how old, when due; the latest first.</summary>
public sealed class Backlog(IDbContextFactory<ShopDb> factory, Feasibility.Catalog catalog, TimeProvider clock)
{
    public async Task<IReadOnlyList<BacklogRow>> RowsAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var today = (await catalog.ContentAsync(cancel)).Rules.Settings.Today(clock.GetUtcNow());
        var jobs = await db.Jobs.AsNoTrackingWithIdentityResolution().Where(job => job.ShippedAt == null && job.EndedAt == null)
            .Include(job => job.Steps).Include(job => job.Cam).Include(job => job.Order).ThenInclude(order => order.Customer).ToListAsync(cancel);
        var waiting = await db.Orders.AsNoTracking().Where(order => (order.State == OrderState.Accepted || order.State == OrderState.InWork) && order.Cams.Any(cam => cam.Started < cam.Quantity))
            .Include(order => order.Customer).Include(order => order.History).ToListAsync(cancel);
        return [.. jobs.Select(job => Row(job, today)).Concat(waiting.SelectMany(order => Waiting(order, today))).OrderBy(row => row.DueOn).ThenBy(row => row.OrderNumber)];
    }

    private static BacklogRow Row(Job job, DateOnly today) => new(
        job.Order.Number, job.Code, job.Order.Customer.Name, job.Cam.Spec.EngineFamily ?? "", job.Current?.Stage, job.AtStageSince, job.Order.ReceivedAt, job.DueOn, Late(job.DueOn, today));

    /// <summary>A row for each piece that has no job yet.</summary>
    private static IEnumerable<BacklogRow> Waiting(Order order, DateOnly today) => order.Cams.SelectMany(cam => Enumerable.Repeat(Row(order, cam, today), cam.Waiting));

    private static BacklogRow Row(Order order, OrderCam cam, DateOnly today) => new(
        order.Number, null, order.Customer.Name, cam.Spec.EngineFamily ?? "", null,
        order.History.Last(line => line.Kind == OrderEventKind.Accepted).At, order.ReceivedAt, order.PromisedOn!.Value, Late(order.PromisedOn.Value, today));

    private static int Late(DateOnly due, DateOnly today) => Math.Max(0, today.DayNumber - due.DayNumber);
}
