using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;

namespace GrindShop.Papers;

/// <summary>What a lot's label is printed from.</summary>
/// <param name="Lot">The lot with its part, family and book.</param>
/// <param name="Shop">The shop's name and time zone.</param>
/// <param name="LotUrl">The absolute address that the QR code opens.</param>
/// <param name="PrintedAt">The moment of printing.</param>
public sealed record LotLabelFacts(BlankLot Lot, ShopSettings Shop, string LotUrl, DateTimeOffset PrintedAt);
