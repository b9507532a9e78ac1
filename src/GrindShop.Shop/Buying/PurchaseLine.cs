using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Buying;

/// <summary>What is wanted of one part: how many, at what price, by when.</summary>
/// <param name="Quantity">Blanks.</param>
/// <param name="UnitCost">Price of one blank.</param>
/// <param name="SetupCharge">Charged once, whatever the quantity.</param>
/// <param name="ExpectedOn">The day they are expected.</param>
/// <param name="UnusualWhy">Why the quantity is not one that the supplier usually sells; blank where it is.</param>
public sealed record PurchaseWish(int Quantity, decimal UnitCost, decimal SetupCharge, DateOnly ExpectedOn, string? UnusualWhy = null);

/// <summary>One part on a purchase order.</summary>
public sealed class PurchaseLine
{
    private readonly List<PurchaseReceipt> _receipts = [];

    private PurchaseLine()
    {
    }

    internal PurchaseLine(int ordinal, BlankPart part) => (Ordinal, BlankPart, BlankPartId) = (ordinal, part, part.Id);

    public int Id { get; private set; }

    public int PurchaseOrderId { get; private set; }

    public int Ordinal { get; private set; }

    public int BlankPartId { get; private set; }

    public BlankPart BlankPart { get; private set; } = null!;

    /// <summary>Blanks ordered.</summary>
    public int Quantity { get; private set; }

    public decimal UnitCost { get; private set; }

    public decimal SetupCharge { get; private set; }

    /// <summary>As it was when the order was sent; the vendor's later dates stand in <see cref="ExpectedOn"/> and in the history.</summary>
    public DateOnly FirstExpectedOn { get; private set; }

    public DateOnly ExpectedOn { get; private set; }

    /// <summary>Blanks that have come in.</summary>
    public int Received { get; private set; }

    /// <summary>Why the quantity is not one the supplier usually sells.</summary>
    public string? UnusualWhy { get; private set; }

    /// <summary>Why more was accepted than ordered.</summary>
    public string? MoreWhy { get; private set; }

    public IReadOnlyList<PurchaseReceipt> Receipts => _receipts;

    /// <summary>Ordered and not here yet.</summary>
    public int Missing => Math.Max(0, Quantity - Received);

    public decimal Amount => Quantity * UnitCost + SetupCharge;

    public int DaysLate(DateOnly today) => Missing > 0 ? Math.Max(0, today.DayNumber - ExpectedOn.DayNumber) : 0;

    internal void Set(PurchaseWish wish)
    {
        (Quantity, UnitCost, SetupCharge) = (wish.Quantity, wish.UnitCost, wish.SetupCharge);
        FirstExpectedOn = ExpectedOn = wish.ExpectedOn;
        UnusualWhy = string.IsNullOrWhiteSpace(wish.UnusualWhy) ? null : wish.UnusualWhy.Trim();
    }

    internal void Expect(DateOnly day) => ExpectedOn = day;

    internal PurchaseReceipt Take(Delivery delivery, BlankLot lot, string by, DateTimeOffset at)
    {
        var receipt = new PurchaseReceipt(lot, delivery, by, at);
        _receipts.Add(receipt);
        Received += delivery.Quantity;
        if (Received > Quantity)
            MoreWhy = delivery.MoreWhy!.Trim();
        return receipt;
    }
}
