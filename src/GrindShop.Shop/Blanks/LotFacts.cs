namespace GrindShop.Shop.Blanks;

/// <summary>What is known of a lot when it comes in, beside part and quantity.</summary>
public sealed record LotFacts
{
    public Vendor? Supplier { get; init; }

    public string? HeatNumber { get; init; }

    public string? Certificate { get; init; }

    /// <summary>The line of a purchase order that the lot was received on, in words.</summary>
    public string? PurchaseLine { get; init; }

    public string? ReceiptKey { get; init; }
}
