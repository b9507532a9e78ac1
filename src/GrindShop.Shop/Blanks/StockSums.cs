namespace GrindShop.Shop.Blanks;

/// <summary>The figures of a shelf as sums of its stock book, each with the sums that it is made of.</summary>
public sealed record StockSums
{
    public required int Received { get; init; }

    /// <summary>Taken to the grinder; each of them was allocated before.</summary>
    public required int Taken { get; init; }

    public required int Scrapped { get; init; }

    /// <summary>By stock-takes and by putting the book right, up or down.</summary>
    public required int PutRight { get; init; }

    /// <summary>Set aside for jobs, ever.</summary>
    public required int SetAside { get; init; }

    public required int GivenBack { get; init; }

    /// <summary>Free blanks in lots that are in quarantine.</summary>
    public required int HeldBack { get; init; }

    public int OnHand => Received - Taken - Scrapped + PutRight;

    public int Allocated => SetAside - GivenBack - Taken;

    public int Available => OnHand - Allocated - HeldBack;

    /// <summary>Sums of lots with their books.</summary>
    public static StockSums Of(IEnumerable<BlankLot> lots)
    {
        var all = lots.ToList();
        var onHand = all.SelectMany(lot => lot.Movements).ToLookup(line => line.Kind, line => line.OnHandChange);
        var allocated = all.SelectMany(lot => lot.Movements).ToLookup(line => line.Kind, line => line.AllocatedChange);
        return new StockSums
        {
            Received = onHand[StockMovementKind.Receipt].Sum(),
            Taken = -onHand[StockMovementKind.Consume].Sum(),
            Scrapped = -onHand[StockMovementKind.Scrap].Sum(),
            PutRight = onHand[StockMovementKind.Count].Sum() + onHand[StockMovementKind.Adjust].Sum(),
            SetAside = allocated[StockMovementKind.Allocate].Sum(),
            GivenBack = -allocated[StockMovementKind.Release].Sum(),
            HeldBack = all.Where(lot => lot.IsQuarantined).Sum(lot => lot.Movements.Sum(line => line.OnHandChange - line.AllocatedChange)),
        };
    }
}
