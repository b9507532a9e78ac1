using GrindShop.Shop.Buying;
using GrindShop.Shop.Records;

namespace GrindShop.Papers;

/// <summary>What a purchase order is printed from.</summary>
/// <param name="Purchase">The order with vendor, lines, their parts and families.</param>
/// <param name="Shop">The shop's head and time zone.</param>
/// <param name="PrintedAt">The moment of printing.</param>
public sealed record PurchaseOrderFacts(PurchaseOrder Purchase, ShopSettings Shop, DateTimeOffset PrintedAt);
