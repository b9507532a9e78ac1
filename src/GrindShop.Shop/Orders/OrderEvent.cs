namespace GrindShop.Shop.Orders;

public enum OrderEventKind
{
    Received,
    Corrected,
    Asked,
    Answered,

    /// <summary>A mail about the order came in.</summary>
    Wrote,
    Quoted,
    Accepted,
    Declined,
    DeclinedByCustomer,
    Expired,
    /// <summary>A cam was drawn up, changed or dropped in an accepted order, and nothing is agreed of it yet.</summary>
    DrawnUp,
    Revised,
    Cancelled,
    Deposit,

    /// <summary>A cam of the customer's is here.</summary>
    CameIn,
    PutToWork,
    PartShipped,

    /// <summary>A piece was spoilt on the floor.</summary>
    PieceLost,
    Shipped,

    /// <summary>Somebody of the desk has it now, or nobody any more.</summary>
    Assigned,
    Snoozed,
    Woken,
    CallPlanned,

    /// <summary>Called back, but nobody answered.</summary>
    CallTried,
    CalledBack,

    /// <summary>Somebody of the desk has read what the customer wrote.</summary>
    Seen,

    /// <summary>The desk put name or addresses of the customer right.</summary>
    ContactCorrected,

    /// <summary>The desk wrote to the customer in words of its own.</summary>
    WroteTo,
}

public static class OrderEventKinds
{
    /// <summary>The customer has said something.</summary>
    public static readonly IReadOnlyList<OrderEventKind> Said = [OrderEventKind.Wrote, OrderEventKind.Answered];

    /// <summary>These come about without anybody of the desk reading what the customer said before.</summary>
    public static readonly IReadOnlyList<OrderEventKind> WithoutDesk =
        [OrderEventKind.DeclinedByCustomer, OrderEventKind.Expired, OrderEventKind.CameIn, OrderEventKind.PieceLost, OrderEventKind.PartShipped, OrderEventKind.Shipped];
}

/// <summary>One line of an order's history: who, when, what. Lines are only ever added.</summary>
public sealed class OrderEvent(OrderEventKind kind, string by, DateTimeOffset at, string what, string? told = null)
{
    public long Id { get; private set; }

    public int OrderId { get; private set; }

    public OrderEventKind Kind { get; private set; } = kind;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string What { get; private set; } = what;

    /// <summary>Words for the customer, where they are others than the shop's own.</summary>
    public string? Told { get; private set; } = told;
}
