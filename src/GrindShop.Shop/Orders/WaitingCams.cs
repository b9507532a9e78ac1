using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>Accepted cams of an order that wait for a blank of this part, and since when.</summary>
public sealed record WaitingCams(string Order, string PartNumber, int Count, DateTimeOffset Since);

public static class WaitingSets
{
    /// <summary>Blanks of the part that accepted orders other than this one wait for: they lie free, and are as good as taken.</summary>
    internal static int PromisedToOthers(this IEnumerable<WaitingCams> waiting, string part, string order) =>
        waiting.Where(cams => cams.PartNumber == part && cams.Order != order).Sum(cams => cams.Count);

    /// <summary>Why what lies on the shelf is not enough, and what follows.</summary>
    internal static string Shortage(string part, int needed, int free, int promised, int days) =>
        $"Blank {part}: {needed} needed, {free} free{(promised > 0 ? $", and accepted orders wait for {promised} of them" : "")}. What is missing is bought, {days} days.";

    extension(ShopDb db)
    {
        public Task<List<WaitingCams>> WaitingCamsAsync(CancellationToken cancel) => (
            from order in db.Orders
            where order.State == OrderState.Accepted || order.State == OrderState.InWork
            let since = order.History.Where(line => line.Kind == OrderEventKind.Accepted).Max(line => line.At)
            from cam in order.Cams
            where cam.Started < cam.Quantity && cam.QuotedPartNumber != null
            select new WaitingCams(order.Number, cam.QuotedPartNumber!, cam.Quantity - cam.Started, since)).ToListAsync(cancel);
    }
}
