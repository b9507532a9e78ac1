using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;

namespace GrindShop.Web.Public;

/// <summary>One step on the way of an order, as its customer sees it: no names, no notes, only what and when.</summary>
public sealed record TrackStep(string Words, DateTimeOffset? DoneAt, bool IsNow)
{
    /// <summary>All steps of an order: the desk's first, then the route of its job, or where each of its pieces stands.</summary>
    public static IReadOnlyList<TrackStep> Of(Order order, IReadOnlyList<Job> jobs)
    {
        List<(string Words, DateTimeOffset? DoneAt)> steps =
        [
            (order.ToldCams.Any(cam => cam.NeedsBlank) ? "Specification received" : "Request received", order.ReceivedAt),
            ("Priced", Done(order, OrderEventKind.Quoted, order.State == OrderState.Quoted || order.State.IsAgreed())),
            ("Accepted", Done(order, OrderEventKind.Accepted, order.State.IsAgreed())),
            (order.ToldCams.All(cam => cam.NeedsBlank) ? "Blank set aside" : "Put to work", Done(order, OrderEventKind.PutToWork, order.State is OrderState.InWork or OrderState.Shipped)),
            .. order.Pieces == 1 ? Route(jobs.LastOrDefault(job => job.EndedAs is null) ?? jobs.LastOrDefault()) : Pieces(order, jobs),
        ];
        var now = !order.IsOpen ? -1 : steps.FindIndex(step => step.DoneAt is null);
        return [.. steps.Select((step, index) => new TrackStep(step.Words, step.DoneAt, index == now))];
    }

    /// <summary>A price that fell away with a corrected specification is not done any more.</summary>
    private static DateTimeOffset? Done(Order order, OrderEventKind kind, bool isReached) =>
        isReached ? order.History.LastOrDefault(line => line.Kind == kind)?.At : null;

    /// <summary>Of several pieces only the next thing that happens to each, and when it left.</summary>
    private static IEnumerable<(string, DateTimeOffset?)> Pieces(Order order, IReadOnlyList<Job> jobs) =>
    [
        .. jobs.Where(job => job.IsOpen || job.ShippedAt is not null).OrderBy(job => job.Cam.Ordinal).Select(job => ($"{(order.ToldCams.Count > 1 ? $"Cam {job.Cam.Ordinal}, " : "")}{job.Code}: {(job.Current is { } step ? $"next, {TrackWords.Of(step.Stage).ToLowerInvariant()}" : "shipped")}", job.ShippedAt)),
        .. Enumerable.Repeat(("Ground, finished and inspected", (DateTimeOffset?)null), order.ToldCams.Sum(cam => cam.Waiting)),
    ];

    private static IEnumerable<(string, DateTimeOffset?)> Route(Job? job) => job is not null
        ? job.Steps.OrderBy(step => step.Ordinal).Select(step => (TrackWords.Of(step.Stage), step.DoneAt))
        : [("Ground, finished and inspected", null), ("Shipped", null)];
}
