using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>Accepted cams that wait for a blank of this part, and since when.</summary>
public sealed record WaitingCams(string PartNumber, int Count, DateTimeOffset Since);

public static class WaitingSets
{
    extension(ShopDb db)
    {
        public async Task<List<WaitingCams>> WaitingCamsAsync(CancellationToken cancel)
        {
            var orders = await db.Orders.AsNoTracking().Where(order => order.State == OrderState.Accepted && order.QuotedPartNumber != null)
                .Select(order => new { order.QuotedPartNumber, Since = order.History.Where(line => line.Kind == OrderEventKind.Accepted).Max(line => line.At) }).ToListAsync(cancel);
            return [.. orders.Select(order => new WaitingCams(order.QuotedPartNumber!, 1, order.Since))];
        }
    }
}
