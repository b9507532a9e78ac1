using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Tests.Feasibility;
using GrindShop.Shop.Tests.Orders;
using GrindShop.Shop.Tests.Records;

namespace GrindShop.Shop.Tests.Buying;

/// <summary>Purchase orders to start from, without a database.</summary>
internal static class SomePurchases
{
    public static readonly BlankPart Part = Shelf.Blank("RV8R-516-08").Part, Other = Shelf.Blank("RV8R-516-09").Part;

    /// <summary>The same part from a supplier that sells no fewer than these.</summary>
    public static BlankPart SoldFrom(int least) => BlankRow.Read(
        new CsvRow("test", 1, new Dictionary<string, string>(BlankColumns.Cells(Part)) { ["leastQuantity"] = $"{least}", ["otherSources"] = "" }, []),
        new Dictionary<string, EngineFamily> { [Part.EngineFamily.Code] = Part.EngineFamily },
        new Dictionary<string, Vendor> { [Part.Supplier.Code] = Part.Supplier })!;

    public static DateOnly Today => SomeOrders.Today;

    public static PurchaseWish Wish(int quantity) => new(quantity, 174m, 0, Today.AddDays(35));

    public static PurchaseOrder Draft(int quantity = 6)
    {
        var purchase = PurchaseOrder.Draft("PO-1", Part.Supplier, "key", "Owner", TestShop.Now, "Drafted.");
        Assert.True(purchase.Want(Part, null, Wish(quantity), Today, "Owner", TestShop.Now).Succeeded);
        return purchase;
    }

    public static PurchaseOrder Sent(int quantity = 6)
    {
        var purchase = Draft(quantity);
        Assert.True(purchase.Send(Today, "Owner", TestShop.Now).Succeeded);
        return purchase;
    }

    public static Delivery Delivery(int quantity, string key = "d1", string? moreWhy = null) =>
        new() { PartNumber = Part.PartNumber, Quantity = quantity, Location = "B1-1", MoreWhy = moreWhy, Key = key };

    public static Outcome<PurchaseReceipt> Receive(PurchaseOrder purchase, Delivery delivery) =>
        purchase.Receive(delivery, BlankLot.Receive(Part, $"L-{delivery.Key}", delivery.Location, delivery.Quantity, "Owner", TestShop.Now), "Owner", TestShop.Now);
}
