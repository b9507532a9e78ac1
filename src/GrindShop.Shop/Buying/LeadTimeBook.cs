using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Buying;

/// <summary>Days that every delivery took from the day its order was sent.</summary>
internal sealed class LeadTimeBook
{
    private readonly ILookup<(int Part, int Vendor), double> _ofPart;
    private readonly ILookup<int, double> _ofSupplier;

    private LeadTimeBook(ILookup<(int Part, int Vendor), double> ofPart, ILookup<int, double> ofSupplier) => (_ofPart, _ofSupplier) = (ofPart, ofSupplier);

    public static async Task<LeadTimeBook> ReadAsync(ShopDb db, CancellationToken cancel)
    {
        var deliveries = await (
            from order in db.PurchaseOrders
            where order.SentAt != null
            from line in order.Lines
            from receipt in line.Receipts
            let other = line.BlankPart.OtherSources.FirstOrDefault(source => source.SupplierId == order.VendorId)
            select new { order.VendorId, line.BlankPartId, LeadTimeDays = other == null ? line.BlankPart.LeadTimeDays : other.LeadTimeDays, SentAt = order.SentAt!.Value, receipt.At }).ToListAsync(cancel);
        return new LeadTimeBook(
            deliveries.ToLookup(delivery => (delivery.BlankPartId, delivery.VendorId), delivery => (delivery.At - delivery.SentAt).TotalDays),
            deliveries.Where(delivery => delivery.LeadTimeDays > 0).ToLookup(delivery => delivery.VendorId, delivery => (delivery.At - delivery.SentAt).TotalDays / delivery.LeadTimeDays));
    }

    public LeadTime Of(BlankPart part, BlankSource source) => LeadTime.From([.. _ofPart[(part.Id, source.SupplierId)]], [.. _ofSupplier[source.SupplierId]], source.LeadTimeDays);
}
