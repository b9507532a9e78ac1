using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Buying;

/// <summary>
/// Blanks ordered from one supplier. Every change of state is one method here and one line of history; what is on order follows from the lines.
/// </summary>
public sealed class PurchaseOrder
{
    private readonly List<PurchaseLine> _lines = [];
    private readonly List<PurchaseEvent> _history = [];

    private PurchaseOrder()
    {
    }

    public int Id { get; private set; }

    /// <summary>The number that supplier and shop say, such as PO-1007.</summary>
    public string Number { get; private set; } = "";

    public int VendorId { get; private set; }

    public Vendor Vendor { get; private set; } = null!;

    public PurchaseState State { get; private set; }

    public DateTimeOffset DraftedAt { get; private set; }

    public DateTimeOffset? SentAt { get; private set; }

    /// <summary>The browser's own key for the draft: the same key is the same draft.</summary>
    public string CommandKey { get; private set; } = "";

    public IReadOnlyList<PurchaseLine> Lines => _lines;

    public IReadOnlyList<PurchaseEvent> History => _history;

    /// <summary>Number of history lines; makes every change touch the order's row, so that two writers at once are noticed.</summary>
    public int Changes { get; private set; }

    public uint Version { get; private set; }

    public decimal Amount => _lines.Sum(line => line.Amount);

    /// <summary>What the vendor itself calls the part of a line; empty where nobody has asked. Needs the part's sources.</summary>
    public string VendorsNumber(PurchaseLine line) => line.BlankPart.From(VendorId)?.SupplierPart ?? "";

    /// <summary>The vendor has it and owes blanks.</summary>
    public bool IsOpen => State is PurchaseState.Sent or PurchaseState.PartlyReceived;

    /// <summary>The day the next blanks are expected; null when none are.</summary>
    public DateOnly? NextExpectedOn => IsOpen ? _lines.Where(line => line.Missing > 0).Min(line => (DateOnly?)line.ExpectedOn) : null;

    public int DaysLate(DateOnly today) => IsOpen ? _lines.Select(line => line.DaysLate(today)).DefaultIfEmpty().Max() : 0;

    public static PurchaseOrder Draft(string number, Vendor vendor, string commandKey, string by, DateTimeOffset at, string why)
    {
        var order = new PurchaseOrder { Number = number, Vendor = vendor, VendorId = vendor.Id, DraftedAt = at, CommandKey = commandKey };
        order.Note(PurchaseEventKind.Drafted, by, at, why);
        return order;
    }

    /// <summary>Adds a part to the draft or changes what is wanted of it.</summary>
    public Outcome<PurchaseOrder> Want(BlankPart part, SupplyTerms? terms, PurchaseWish wish, DateOnly today, string by, DateTimeOffset at)
    {
        if (State != PurchaseState.Draft)
            return NotNow("changed");
        if (Refuse(part, terms, wish, today) is { } refusal)
            return refusal;
        Line(part).Set(wish);
        Note(PurchaseEventKind.Changed, by, at, $"{PurchaseWords.Blanks(wish.Quantity)} {part.PartNumber} at {PurchaseWords.Dollars(wish.UnitCost)}, expected {wish.ExpectedOn:yyyy-MM-dd}{Why(wish.UnusualWhy)}.");
        return this;
    }

    /// <summary>Takes a part off the draft.</summary>
    public Outcome<PurchaseOrder> Drop(string partNumber, string by, DateTimeOffset at)
    {
        if (State != PurchaseState.Draft)
            return NotNow("changed");
        if (Find(partNumber) is not { } line)
            return NotOnOrder(partNumber);
        _lines.Remove(line);
        Note(PurchaseEventKind.Changed, by, at, $"{partNumber} taken off.");
        return this;
    }

    public Outcome<PurchaseOrder> Send(DateOnly today, string by, DateTimeOffset at)
    {
        if (State != PurchaseState.Draft)
            return NotNow("sent");
        if (_lines.Count == 0)
            return new Refusal("empty", "There is nothing on the order yet: add a part first.");
        if (_lines.FirstOrDefault(line => line.ExpectedOn < today) is { } past)
            return new Refusal("badDate", $"{past.BlankPart.PartNumber} is expected on {past.ExpectedOn:yyyy-MM-dd}, which has passed: set a new date first.");
        (State, SentAt) = (PurchaseState.Sent, at);
        Note(PurchaseEventKind.Sent, by, at, $"Sent to {Vendor.Name}: {_lines.Count} {(_lines.Count == 1 ? "part" : "parts")}, {PurchaseWords.Dollars(Amount)}.");
        return this;
    }

    /// <summary>It goes to the vendor by mail, with its paper; a second time is written down as such.</summary>
    public Outcome<PurchaseOrder> Mail(string by, DateTimeOffset at)
    {
        if (!IsOpen)
            return NotNow("mailed");
        if (Vendor.Email is not { } to)
            return new Refusal("noAddress", $"{Vendor.Name} has no e-mail address yet: write it down first.");
        Note(PurchaseEventKind.Mailed, by, at, $"{(IsMailed ? "Mailed again" : "Mailed")} to {to}.");
        return this;
    }

    public bool IsMailed => _history.Exists(line => line.Kind == PurchaseEventKind.Mailed);

    /// <summary>Writes down where the vendor is written to; blank: nowhere.</summary>
    public Outcome<PurchaseOrder> WriteTo(string? email, string by, DateTimeOffset at)
    {
        if (Vendor.WriteTo(email).Refusal is { } refusal)
            return refusal;
        Note(PurchaseEventKind.Changed, by, at, Vendor.Email is { } now ? $"{Vendor.Name} is written to at {now}." : $"{Vendor.Name} is not written to by e-mail.");
        return this;
    }

    /// <summary>The supplier names another day for a part.</summary>
    public Outcome<PurchaseOrder> Expect(string partNumber, DateOnly day, string why, DateOnly today, string by, DateTimeOffset at)
    {
        if (!IsOpen)
            return NotNow("given a new date");
        if (Find(partNumber) is not { Missing: > 0 } line)
            return NotOnOrder(partNumber);
        if (RefuseDay(day, today) is { } refusal)
            return refusal;
        var before = line.ExpectedOn;
        line.Expect(day);
        Note(PurchaseEventKind.NewDate, by, at, $"{partNumber} now expected {day:yyyy-MM-dd} instead of {before:yyyy-MM-dd}{Why(why)}.");
        return this;
    }

    /// <summary>The delivery that was booked under this key.</summary>
    public PurchaseReceipt? Receipt(string key) => _lines.SelectMany(line => line.Receipts).FirstOrDefault(receipt => receipt.Key == key);

    /// <summary>Why a delivery cannot be booked: nothing is to come, or more came than was ordered and nobody said why. Null where it can.</summary>
    public Refusal? Refuse(Delivery delivery)
    {
        if (!IsOpen)
            return NotNow("received");
        if (Find(delivery.PartNumber) is not { } line)
            return NotOnOrder(delivery.PartNumber);
        return delivery.Quantity > line.Missing && string.IsNullOrWhiteSpace(delivery.MoreWhy)
            ? new Refusal("tooMany", $"{PurchaseWords.Blanks(line.Missing)} {delivery.PartNumber} are still to come; {delivery.Quantity} would be more than ordered. Count again, or give the reason why more is accepted.")
            : null;
    }

    /// <summary>Books blanks that have come in as a lot.</summary>
    public Outcome<PurchaseReceipt> Receive(Delivery delivery, BlankLot lot, string by, DateTimeOffset at)
    {
        if (Refuse(delivery) is { } refusal)
            return refusal;
        var line = Find(delivery.PartNumber)!;
        var receipt = line.Take(delivery, lot, by, at);
        State = _lines.Any(each => each.Missing > 0) ? PurchaseState.PartlyReceived : PurchaseState.Received;
        var more = line.Received > line.Quantity ? $", {line.Received - line.Quantity} more than ordered{Why(line.MoreWhy)}" : "";
        Note(PurchaseEventKind.Received, by, at, $"{PurchaseWords.Blanks(delivery.Quantity)} {delivery.PartNumber} received as lot {lot.LotNumber}{more}; {line.Missing} to come.");
        return receipt;
    }

    /// <summary>Nothing more is expected: a draft or an order of which nothing came is cancelled, of a partly received one the rest is given up.</summary>
    public Outcome<PurchaseOrder> Close(string why, string by, DateTimeOffset at)
    {
        if (State is PurchaseState.Received or PurchaseState.Cancelled)
            return NotNow("closed");
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say why nothing more is expected.");
        var isShort = State == PurchaseState.PartlyReceived;
        State = isShort ? PurchaseState.Received : PurchaseState.Cancelled;
        Note(isShort ? PurchaseEventKind.ClosedShort : PurchaseEventKind.Cancelled, by, at, $"{(isShort ? "Closed short" : "Cancelled")}: {why.Trim()}");
        return this;
    }

    private Refusal? Refuse(BlankPart part, SupplyTerms? terms, PurchaseWish wish, DateOnly today)
    {
        if (part.From(VendorId) is null)
            return new Refusal("otherVendor", $"{part.PartNumber} is not bought from {Vendor.Name}.");
        if (wish.Quantity is < 1 or > 100_000)
            return new Refusal("badQuantity", "The quantity lies between 1 and 100,000 blanks.");
        if (wish.UnitCost is < 0 or > 1_000_000 || wish.SetupCharge is < 0 or > 10_000_000)
            return new Refusal("badPrice", "Price and set-up charge start at zero.");
        if (string.IsNullOrWhiteSpace(wish.UnusualWhy) && SupplyTerms.Of(part, VendorId, terms).Unusual(wish.Quantity) is { } unusual)
            return unusual;
        return RefuseDay(wish.ExpectedOn, today);
    }

    private static Refusal? RefuseDay(DateOnly day, DateOnly today) => day >= today && day <= today.AddYears(3)
        ? null : new Refusal("badDate", $"The expected date must lie between today ({today:yyyy-MM-dd}) and three years from now.");

    private PurchaseLine Line(BlankPart part)
    {
        if (Find(part.PartNumber) is { } known)
            return known;
        var line = new PurchaseLine(_lines.Select(each => each.Ordinal).DefaultIfEmpty().Max() + 1, part);
        _lines.Add(line);
        return line;
    }

    private PurchaseLine? Find(string partNumber) => _lines.Find(line => line.BlankPart.PartNumber == partNumber);

    private static string Why(string? why) => string.IsNullOrWhiteSpace(why) ? "" : $" ({why.Trim()})";

    private Refusal NotOnOrder(string partNumber) => new("notOnOrder", $"{Number} has no blanks {partNumber} to come.");

    private Refusal NotNow(string wanted) => new("wrongState", $"Purchase order {Number} is {State.Words()}; it cannot be {wanted}.");

    private void Note(PurchaseEventKind kind, string by, DateTimeOffset at, string what)
    {
        _history.Add(new PurchaseEvent(kind, by, at, what));
        Changes++;
    }
}
