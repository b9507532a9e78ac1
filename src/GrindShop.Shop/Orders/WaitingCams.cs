using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Orders;

/// <summary>Accepted cams of an order that wait for a blank of this part, and since when.</summary>
public sealed record WaitingCams(string Order, string PartNumber, int Count, DateTimeOffset Since);

public static class WaitingSets
{
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
