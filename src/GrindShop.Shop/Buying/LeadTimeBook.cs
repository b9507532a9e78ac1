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
        var deliveries = await (
            from order in db.PurchaseOrders
            where order.SentAt != null
            from line in order.Lines
            from receipt in line.Receipts
            select new { order.VendorId, line.BlankPartId, line.BlankPart.LeadTimeDays, SentAt = order.SentAt!.Value, receipt.At }).ToListAsync(cancel);
        return new LeadTimeBook(
            deliveries.ToLookup(delivery => delivery.BlankPartId, delivery => (delivery.At - delivery.SentAt).TotalDays),
            deliveries.Where(delivery => delivery.LeadTimeDays > 0).ToLookup(delivery => delivery.VendorId, delivery => (delivery.At - delivery.SentAt).TotalDays / delivery.LeadTimeDays));
    }

    public LeadTime Of(BlankPart part) => LeadTime.From([.. _ofPart[part.Id]], [.. _ofSupplier[part.SupplierId]], part.LeadTimeDays);
}
