using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Buying;

/// <summary>What a vendor is written about a purchase order; the order itself goes with it as a paper.</summary>
public static class VendorLetter
{
    /// <summary>The purchase order, printed when the mail goes out.</summary>
    public const string Paper = "purchase-order";

    public static Letter Of(PurchaseOrder order, ShopSettings shop) => new($"Purchase order {order.Number} of {shop.ShopName}", $"""
        Hello {order.Vendor.Name},

        please find our purchase order {order.Number} attached.

        {string.Join('\n', order.Lines.Select(line => $"- {PurchaseWords.Blanks(line.Quantity)} {line.BlankPart.PartNumber}{Yours(order, line)}, expected {line.ExpectedOn:yyyy-MM-dd}"))}

        Please confirm it, and tell us at once if a date or a price cannot stand. Deliver to {shop.ShopName}, {shop.Address}.

        {shop.ShopName}
        {shop.Address}
        {shop.Phone}

        """)
    {
        Papers = [Paper],
    };

    private static string Yours(PurchaseOrder order, PurchaseLine line) => order.VendorsNumber(line) is { Length: > 0 } yours ? $", your number {yours}" : "";
}
