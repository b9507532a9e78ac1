using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>Days that every delivery took from the day its order was sent.</summary>
internal sealed class LeadTimeBook
{
    private readonly ILookup<int, double> _ofPart, _ofSupplier;

    private LeadTimeBook(ILookup<int, double> ofPart, ILookup<int, double> ofSupplier) => (_ofPart, _ofSupplier) = (ofPart, ofSupplier);

    public static async Task<LeadTimeBook> ReadAsync(ShopDb db, CancellationToken cancel)
    {
        var deliveries = await db.PurchaseOrders.Where(order => order.SentAt != null)
            .SelectMany(order => order.Lines, (order, line) => new { order.VendorId, SentAt = order.SentAt!.Value, line.BlankPartId, line.BlankPart.LeadTimeDays, line.Receipts })
            .SelectMany(line => line.Receipts, (line, receipt) => new { line.VendorId, line.BlankPartId, line.LeadTimeDays, line.SentAt, receipt.At }).ToListAsync(cancel);
        return new LeadTimeBook(
            deliveries.ToLookup(delivery => delivery.BlankPartId, delivery => (delivery.At - delivery.SentAt).TotalDays),
            deliveries.Where(delivery => delivery.LeadTimeDays > 0).ToLookup(delivery => delivery.VendorId, delivery => (delivery.At - delivery.SentAt).TotalDays / delivery.LeadTimeDays));
    }

    public LeadTime Of(BlankPart part) => LeadTime.From([.. _ofPart[part.Id]], [.. _ofSupplier[part.SupplierId]], part.LeadTimeDays);
}
