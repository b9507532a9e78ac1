namespace GrindShop.Shop.Blanks;

public enum StockMovementKind
{
    Receipt,
    Allocate,
    Consume,
}

/// <summary>One line of the stock book. Lines are only ever added.</summary>
public sealed class StockMovement(StockMovementKind kind, int onHandChange, int allocatedChange, string by, DateTimeOffset at, string reason)
{
    public long Id { get; private set; }

    public int BlankLotId { get; private set; }

    public StockMovementKind Kind { get; private set; } = kind;

    public int OnHandChange { get; private set; } = onHandChange;

    public int AllocatedChange { get; private set; } = allocatedChange;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string Reason { get; private set; } = reason;
}
