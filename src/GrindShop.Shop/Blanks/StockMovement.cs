namespace GrindShop.Shop.Blanks;

public enum StockMovementKind
{
    Receipt,
    Allocate,

    /// <summary>An allocated blank goes back to the shelf.</summary>
    Release,
    Consume,

    /// <summary>Blanks that can become no cam leave the shop.</summary>
    Scrap,

    /// <summary>A stock-take; changes nothing where the book was right.</summary>
    Count,

    /// <summary>The book is put right without a count.</summary>
    Adjust,

    /// <summary>The lot is held back.</summary>
    Quarantine,

    /// <summary>The lot may be used again.</summary>
    Clear,

    /// <summary>The lot lies in another place.</summary>
    Relocate,

    /// <summary>What was written down at the receipt is put right.</summary>
    Correct,

    /// <summary>A sample of the lot was measured.</summary>
    Measure,
}

/// <summary>One line of the stock book. Lines are only ever added.</summary>
public sealed class StockMovement(StockMovementKind kind, int onHandChange, int allocatedChange, string by, DateTimeOffset at, string reason, string? jobCode)
{
    public long Id { get; private set; }

    public int BlankLotId { get; private set; }

    public StockMovementKind Kind { get; private set; } = kind;

    public int OnHandChange { get; private set; } = onHandChange;

    public int AllocatedChange { get; private set; } = allocatedChange;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    public string Reason { get; private set; } = reason;

    /// <summary>The job that the blank is promised to, taken for or given back by; null for any other line.</summary>
    public string? JobCode { get; private set; } = jobCode;

    /// <summary>The browser's own key for the command; unique in its lot, so that a repeated command is known.</summary>
    public string? CommandKey { get; internal set; }
}
