namespace GrindShop.Shop.Blanks;

/// <summary>Blanks of one part number that were received together; the unit in which stock is held, allocated and used.</summary>
public sealed class BlankLot
{
    private BlankLot()
    {
    }

    public int Id { get; private set; }

    public string LotNumber { get; private set; } = "";

    public int BlankPartId { get; private set; }

    public BlankPart BlankPart { get; private set; } = null!;

    public string Location { get; private set; } = "";

    public DateTimeOffset ReceivedAt { get; private set; }

    /// <summary>Blanks in the building, allocated ones included.</summary>
    public int OnHand { get; private set; }

    /// <summary>Of those on hand, the ones promised to a job.</summary>
    public int Allocated { get; private set; }

    public int Available => OnHand - Allocated;

    public List<StockMovement> Movements { get; private set; } = [];

    public static BlankLot Receive(BlankPart part, string lotNumber, string location, int quantity, string by, DateTimeOffset at)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(quantity);
        var lot = new BlankLot { BlankPart = part, LotNumber = lotNumber, Location = location, ReceivedAt = at };
        lot.Move(StockMovementKind.Receipt, quantity, 0, by, at, "received");
        return lot;
    }

    /// <summary>Sets one blank aside for a job. Call with the row locked.</summary>
    public Outcome<StockMovement> Allocate(string jobCode, string by, DateTimeOffset at) =>
        Available > 0
            ? Move(StockMovementKind.Allocate, 0, 1, by, at, $"for {jobCode}")
            : new Refusal("noStock", $"Lot {LotNumber} has no blank left that is not promised to a job.");

    /// <summary>The allocated blank leaves the shelf for the grinder. Call with the row locked.</summary>
    public Outcome<StockMovement> Consume(string jobCode, string by, DateTimeOffset at) =>
        Allocated > 0
            ? Move(StockMovementKind.Consume, -1, -1, by, at, $"ground as {jobCode}")
            : new Refusal("notAllocated", $"Lot {LotNumber} has no allocated blank to take.");

    private StockMovement Move(StockMovementKind kind, int onHand, int allocated, string by, DateTimeOffset at, string reason)
    {
        OnHand += onHand;
        Allocated += allocated;
        var movement = new StockMovement(kind, onHand, allocated, by, at, reason);
        Movements.Add(movement);
        return movement;
    }
}
