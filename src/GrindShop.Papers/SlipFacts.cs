using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;

namespace GrindShop.Papers;

/// <summary>What the slip is printed from.</summary>
/// <param name="Order">The order.</param>
/// <param name="Shop">The shop's head and time zone.</param>
/// <param name="TrackUrl">The absolute address of the customer's page, which the QR code opens.</param>
/// <param name="PrintedAt">The moment of printing.</param>
public sealed record SlipFacts(Order Order, ShopSettings Shop, string TrackUrl, DateTimeOffset PrintedAt);
