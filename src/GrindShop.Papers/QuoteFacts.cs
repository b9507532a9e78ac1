using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;

namespace GrindShop.Papers;

/// <summary>What a quote is printed from.</summary>
/// <param name="Order">The order, for customer and reference.</param>
/// <param name="Quote">The quote as it was kept.</param>
/// <param name="Shop">The shop's head and time zone.</param>
/// <param name="TrackUrl">The customer's page, where the quote is accepted.</param>
/// <param name="PrintedAt">The moment of printing.</param>
public sealed record QuoteFacts(Order Order, Quote Quote, ShopSettings Shop, string TrackUrl, DateTimeOffset PrintedAt);
