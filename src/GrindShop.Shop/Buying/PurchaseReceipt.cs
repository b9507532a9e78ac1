using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Buying;

/// <summary>Blanks of one part of a purchase order that have come in together.</summary>
public sealed record Delivery
{
    public required string PartNumber { get; init; }

    /// <summary>Blanks counted, whatever the delivery note says.</summary>
    public required int Quantity { get; init; }

    /// <summary>Where the new lot lies.</summary>
    public required string Location { get; init; }

    public string? HeatNumber { get; init; }

    public string? Certificate { get; init; }

    /// <summary>Why more is accepted than was ordered; blank where it is not more.</summary>
    public string? MoreWhy { get; init; }

    /// <summary>The browser's own key: the same delivery a second time changes nothing.</summary>
    public required string Key { get; init; }
}

/// <summary>One delivery as it was booked; it became a lot. Lines are only ever added.</summary>
public sealed class PurchaseReceipt
{
    private PurchaseReceipt()
    {
    }

    internal PurchaseReceipt(BlankLot lot, Delivery delivery, string by, DateTimeOffset at) =>
        (BlankLot, Quantity, By, At, Key) = (lot, delivery.Quantity, by, at, delivery.Key);

    public int Id { get; private set; }

    public int PurchaseLineId { get; private set; }

    public int BlankLotId { get; private set; }

    public BlankLot BlankLot { get; private set; } = null!;

    /// <summary>Blanks.</summary>
    public int Quantity { get; private set; }

    public string By { get; private set; } = "";

    public DateTimeOffset At { get; private set; }

    public string Key { get; private set; } = "";
}
