namespace GrindShop.Shop.Buying;

public enum PurchaseEventKind
{
    Drafted,
    Changed,
    Sent,

    /// <summary>Mailed to the vendor with its paper.</summary>
    Mailed,
    NewDate,
    Received,
    ClosedShort,
    Cancelled,
}

/// <summary>One line of a purchase order's history: who, when, what. Lines are only ever added.</summary>
public sealed class PurchaseEvent(PurchaseEventKind kind, string by, DateTimeOffset at, string what)
{
    public long Id { get; private set; }

    public int PurchaseOrderId { get; private set; }

    public PurchaseEventKind Kind { get; private set; } = kind;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string What { get; private set; } = what;
}
