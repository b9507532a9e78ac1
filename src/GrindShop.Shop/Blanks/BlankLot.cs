namespace GrindShop.Shop.Blanks;

/// <summary>
/// Blanks of one part number that were received together; the unit in which stock is held, allocated and used. Every act is one line of the
/// stock book, and the counters are its sums. Call the acts with the lot locked, see <see cref="LotSets"/>.
/// </summary>
public sealed class BlankLot
{
    public const int LongestLocation = 40, LongestHeatNumber = 60, LongestCertificate = 100, LongestReason = 300;

    private BlankLot()
    {
    }

    public int Id { get; private set; }

    public string LotNumber { get; private set; } = "";

    public int BlankPartId { get; private set; }

    public BlankPart BlankPart { get; private set; } = null!;

    public string Location { get; private set; } = "";

    public DateTimeOffset ReceivedAt { get; private set; }

    public int? SupplierId { get; private set; }

    public Vendor? Supplier { get; private set; }

    /// <summary>The melt or furnace heat that the supplier names; empty where it names none.</summary>
    public string HeatNumber { get; private set; } = "";

    /// <summary>The supplier's certificate that came with the lot; empty where none came.</summary>
    public string Certificate { get; private set; } = "";

    /// <summary>The line of a purchase order that the lot was received on.</summary>
    public string? PurchaseLine { get; private set; }

    /// <summary>The key of the command that received it, so that a repeated receipt is known.</summary>
    public string? ReceiptKey { get; private set; }

    /// <summary>Blanks in the building, allocated ones included.</summary>
    public int OnHand { get; private set; }

    /// <summary>Of those on hand, the ones promised to a job.</summary>
    public int Allocated { get; private set; }

    /// <summary>Why nothing may be taken from the lot; null where it may.</summary>
    public string? QuarantineReason { get; private set; }

    public bool IsQuarantined => QuarantineReason is not null;

    /// <summary>On hand and promised to nobody, held back or not.</summary>
    public int Free => OnHand - Allocated;

    /// <summary>What may be promised to a job now.</summary>
    public int Available => IsQuarantined ? 0 : Free;

    /// <summary>Grinding stock per side by the newest sample, in; null where none was measured.</summary>
    public double? MeasuredStockIn { get; private set; }

    /// <summary>Case depth by the newest sample, in; null where none was measured.</summary>
    public double? MeasuredCaseIn { get; private set; }

    /// <summary>What may be counted on. Needs the part.</summary>
    public LotMetal Metal => LotMetal.Of(BlankPart, MeasuredStockIn, MeasuredCaseIn);

    public List<LotSample> Samples { get; private set; } = [];

    public List<StockMovement> Movements { get; private set; } = [];

    /// <summary>Jobs that hold a blank of the lot. Needs the book to be loaded.</summary>
    public IReadOnlyList<string> HeldBy =>
    [
        .. Movements.Where(line => line.JobCode is not null).GroupBy(line => line.JobCode!)
            .Where(job => job.Sum(line => line.AllocatedChange) > 0).Select(job => job.Key).Order(),
    ];

    public static BlankLot Receive(BlankPart part, string lotNumber, string location, int quantity, string by, DateTimeOffset at, LotFacts? facts = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(quantity);
        var lot = new BlankLot
        {
            BlankPart = part,
            LotNumber = lotNumber,
            Location = location,
            ReceivedAt = at,
            Supplier = facts?.Supplier,
            HeatNumber = facts?.HeatNumber ?? "",
            Certificate = facts?.Certificate ?? "",
            PurchaseLine = facts?.PurchaseLine,
            ReceiptKey = facts?.ReceiptKey,
        };
        lot.Move(StockMovementKind.Receipt, quantity, 0, by, at, lot.PurchaseLine is { } line ? $"received on {line}" : "received");
        return lot;
    }

    /// <summary>Sets one blank aside for a job.</summary>
    public Outcome<StockMovement> Allocate(string jobCode, string by, DateTimeOffset at) =>
        IsQuarantined ? HeldBack()
        : Available > 0 ? Move(StockMovementKind.Allocate, 0, 1, by, at, $"for {jobCode}", jobCode)
        : new Refusal("noStock", $"Lot {LotNumber} has no blank left that is not promised to a job.");

    /// <summary>The job gives its blank back to the shelf, unground. Needs the book to be loaded.</summary>
    public Outcome<StockMovement> Release(string jobCode, string by, DateTimeOffset at, string reason) =>
        HeldBy.Contains(jobCode)
            ? Move(StockMovementKind.Release, 0, -1, by, at, reason, jobCode)
            : new Refusal("notAllocated", $"Job {jobCode} holds no blank of lot {LotNumber}.");

    /// <summary>The allocated blank leaves the shelf for the grinder.</summary>
    public Outcome<StockMovement> Consume(string jobCode, string by, DateTimeOffset at) =>
        IsQuarantined ? new Refusal("quarantined", $"{HeldBack().Reason} Or give the blank back, and the cam waits for another.")
        : Allocated > 0 ? Move(StockMovementKind.Consume, -1, -1, by, at, $"ground as {jobCode}", jobCode)
        : new Refusal("notAllocated", $"Lot {LotNumber} has no allocated blank to take.");

    /// <summary>Blanks that nobody was promised are thrown out. Needs the book to be loaded.</summary>
    public Outcome<StockMovement> Scrap(int quantity, string reason, string by, DateTimeOffset at)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(quantity);
        return (Why(reason) ?? Promised(OnHand - quantity)) is { } refusal ? refusal : Move(StockMovementKind.Scrap, -quantity, 0, by, at, reason.Trim());
    }

    /// <summary>The book follows what was counted. A difference needs its reason. Needs the book to be loaded.</summary>
    public Outcome<StockMovement> Count(int counted, string reason, string by, DateTimeOffset at)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(counted);
        var difference = counted - OnHand;
        if ((Promised(counted) ?? (difference == 0 ? null : Why(reason))) is { } refusal)
            return refusal;
        return Move(StockMovementKind.Count, difference, 0, by, at, string.IsNullOrWhiteSpace(reason) ? "as the book says" : reason.Trim());
    }

    /// <summary>The book is put right by a difference, up or down. Needs the book to be loaded.</summary>
    public Outcome<StockMovement> Adjust(int change, string reason, string by, DateTimeOffset at)
    {
        ArgumentOutOfRangeException.ThrowIfZero(change);
        return (Why(reason) ?? Promised(OnHand + change)) is { } refusal ? refusal : Move(StockMovementKind.Adjust, change, 0, by, at, reason.Trim());
    }

    /// <summary>Nothing is taken from the lot until it is cleared; blanks already promised stay promised.</summary>
    public Outcome<StockMovement> Quarantine(string reason, string by, DateTimeOffset at)
    {
        if (Why(reason) is { } refusal)
            return refusal;
        if (IsQuarantined)
            return HeldBack();
        QuarantineReason = reason.Trim();
        return Move(StockMovementKind.Quarantine, 0, 0, by, at, QuarantineReason);
    }

    /// <summary>The lot may be used again.</summary>
    public Outcome<StockMovement> Clear(string reason, string by, DateTimeOffset at)
    {
        if (Why(reason) is { } refusal)
            return refusal;
        if (!IsQuarantined)
            return new Refusal("notQuarantined", $"Lot {LotNumber} is not in quarantine.");
        QuarantineReason = null;
        return Move(StockMovementKind.Clear, 0, 0, by, at, reason.Trim());
    }

    public Outcome<StockMovement> Relocate(string location, string by, DateTimeOffset at)
    {
        if (string.IsNullOrWhiteSpace(location))
            return new Refusal("noLocation", "Say where the lot lies now.");
        if (TooLong(location, HeatNumber, Certificate) is { } refusal)
            return refusal;
        var from = Location;
        Location = location.Trim();
        return Move(StockMovementKind.Relocate, 0, 0, by, at, $"from {from} to {Location}");
    }

    /// <summary>What was written down at the receipt is put right; the book keeps what stood there.</summary>
    public Outcome<StockMovement> Correct(string heatNumber, string certificate, string reason, string by, DateTimeOffset at)
    {
        if ((Why(reason) ?? TooLong(Location, heatNumber, certificate)) is { } refusal)
            return refusal;
        var before = $"heat {Named(HeatNumber)}, certificate {Named(Certificate)}";
        (HeatNumber, Certificate) = (heatNumber.Trim(), certificate.Trim());
        return Move(StockMovementKind.Correct, 0, 0, by, at, $"{reason.Trim().TrimEnd('.')}; before: {before}");
    }

    /// <summary>Writes a sample down; its figures count from now on. Needs the part.</summary>
    public Outcome<StockMovement> Measure(SampleFigures figures, string by, DateTimeOffset at)
    {
        var sample = LotSample.Of(BlankPart, figures, by, at);
        if (!sample.Succeeded)
            return sample.Refusal;
        Samples.Add(sample.Value);
        (MeasuredStockIn, MeasuredCaseIn) = (figures.StockIn ?? MeasuredStockIn, figures.CaseDepthIn ?? MeasuredCaseIn);
        return Move(StockMovementKind.Measure, 0, 0, by, at, sample.Value.Words());
    }

    /// <summary>What the book has no room for.</summary>
    internal static Refusal? TooLong(string location, string? heatNumber, string? certificate) =>
        location.Trim().Length > LongestLocation ? new Refusal("tooLong", $"A place has at most {LongestLocation} letters.")
        : heatNumber?.Trim().Length > LongestHeatNumber ? new Refusal("tooLong", $"A heat number has at most {LongestHeatNumber} letters.")
        : certificate?.Trim().Length > LongestCertificate ? new Refusal("tooLong", $"A certificate has at most {LongestCertificate} letters; name it by its number.")
        : null;

    private static string Named(string text) => text.Length == 0 ? "none" : text;

    private Refusal HeldBack() => new("quarantined", $"Lot {LotNumber} is in quarantine: {QuarantineReason} The owner clears it.");

    private Refusal? Promised(int left) => left >= Allocated ? null
        : Allocated == 0 ? new Refusal("notThere", $"The book has {OnHand} of lot {LotNumber}; no more than that can leave it.")
        : new Refusal("promised", $"{Allocated} of lot {LotNumber} are promised to {string.Join(", ", HeldBy)}; {Math.Max(0, left)} would be left. Give a job's blank back first, on the page of the job or of its order.");

    private static Refusal? Why(string reason) => string.IsNullOrWhiteSpace(reason) ? new Refusal("noReason", "Say why, in a few words.")
        : reason.Trim().Length > LongestReason ? new Refusal("tooLong", $"Say why in at most {LongestReason} letters.")
        : null;

    private StockMovement Move(StockMovementKind kind, int onHand, int allocated, string by, DateTimeOffset at, string reason, string? jobCode = null)
    {
        OnHand += onHand;
        Allocated += allocated;
        var movement = new StockMovement(kind, onHand, allocated, by, at, reason, jobCode);
        Movements.Add(movement);
        return movement;
    }
}
