using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

public enum OrderState
{
    New,
    Quoted,
    Accepted,
    InWork,
    Shipped,
    Declined,
}

public enum OrderChannel
{
    Web,
    Phone,
    Email,
    WalkIn,
}

/// <summary>
/// A customer's enquiry and the order it becomes. It keeps the specification, the shop's answer and the price as they were on the day.
/// Every change of state is one method here and one line of history.
/// </summary>
public sealed class Order
{
    private readonly List<OrderEvent> _history = [];

    private Order()
    {
    }

    public int Id { get; private set; }

    /// <summary>The number people say on the phone, such as C1042.</summary>
    public string Number { get; private set; } = "";

    /// <summary>The unguessable code of the customer's tracking page.</summary>
    public string TrackingCode { get; private set; } = "";

    /// <summary>The sender's own key: the same key is the same enquiry.</summary>
    public string SubmitKey { get; private set; } = "";

    /// <summary>Digest of what was sent under the key, so that a key used for another enquiry is noticed.</summary>
    public string SubmitDigest { get; private set; } = "";

    public OrderChannel Channel { get; private set; }

    public OrderState State { get; private set; }

    public int CustomerId { get; private set; }

    public Customer Customer { get; private set; } = null!;

    /// <summary>Name and addresses as they were given with this order; a known customer may have given others.</summary>
    public Contact Contact { get; private set; } = new();

    /// <summary>The customer's own name or number for this cam.</summary>
    public string? CustomerReference { get; private set; }

    public CamSpec Spec { get; private set; } = new();

    /// <summary>The shop's answer to <see cref="Spec"/> as it was computed when the specification was last set; null while it is incomplete.</summary>
    public FeasibilityAnswer? Answer { get; private set; }

    /// <summary>The verdict of <see cref="Answer"/>, for lists.</summary>
    public Verdict? Verdict { get; private set; }

    /// <summary>The blank the price stands on.</summary>
    public string? QuotedPartNumber { get; private set; }

    public IReadOnlyList<PriceLine> PriceLines { get; private set; } = [];

    public decimal Price { get; private set; }

    public DateOnly? PromisedOn { get; private set; }

    public DateTimeOffset ReceivedAt { get; private set; }

    public IReadOnlyList<OrderEvent> History => _history;

    /// <summary>Number of history lines; makes every change touch the order's row, so that two writers at once are noticed.</summary>
    public int Changes { get; private set; }

    /// <summary>Changes with every write; the writer who holds an older one is told instead of overwriting.</summary>
    public uint Version { get; private set; }

    public bool IsOpen => State is not (OrderState.Shipped or OrderState.Declined);

    public static Order Receive(OrderNumbers numbers, Enquiry enquiry, Customer customer, FeasibilityAnswer? answer, string by, DateTimeOffset at)
    {
        var order = new Order
        {
            Number = numbers.Number,
            TrackingCode = numbers.TrackingCode,
            SubmitKey = enquiry.SubmitKey,
            SubmitDigest = enquiry.Digest(),
            Channel = enquiry.Channel,
            Customer = customer,
            Contact = enquiry.Contact,
            CustomerReference = enquiry.CustomerReference,
            Spec = enquiry.Spec,
            Answer = answer,
            Verdict = answer?.Verdict,
            ReceivedAt = at,
        };
        order.Note(OrderEventKind.Received, by, at, $"Specification received ({enquiry.Channel.Words()}).");
        return order;
    }

    /// <summary>The desk corrects the specification; a price that stood on the old one falls away.</summary>
    public Outcome<Order> Correct(CamSpec spec, FeasibilityAnswer? answer, string by, DateTimeOffset at, string why)
    {
        if (State is not (OrderState.New or OrderState.Quoted))
            return NotNow("corrected");
        Spec = spec;
        Answer = answer;
        Verdict = answer?.Verdict;
        DropPrice();
        State = OrderState.New;
        Note(OrderEventKind.Corrected, by, at, why);
        return this;
    }

    public Outcome<Order> Quote(string partNumber, IReadOnlyList<PriceLine> lines, string by, DateTimeOffset at)
    {
        if (State is not (OrderState.New or OrderState.Quoted))
            return NotNow("priced");
        if (FeasibilityAnswer.Refuse(Answer, partNumber) is { } refusal)
            return refusal;
        if (lines.Count == 0 || lines.Sum(line => line.Amount) <= 0)
            return new Refusal("emptyPrice", "A price needs at least one line and a sum above zero.");
        QuotedPartNumber = partNumber;
        PriceLines = lines;
        Price = lines.Sum(line => line.Amount);
        State = OrderState.Quoted;
        Note(OrderEventKind.Quoted, by, at, FormattableString.Invariant($"Priced at ${Price:N2} on blank {partNumber}."));
        return this;
    }

    public Outcome<Order> Accept(DateOnly promisedOn, DateOnly today, string by, DateTimeOffset at)
    {
        if (State != OrderState.Quoted)
            return NotNow("accepted");
        if (promisedOn < today || promisedOn > today.AddYears(2))
            return new Refusal("badPromise", $"The promised date must lie between today ({today:yyyy-MM-dd}) and two years from now.");
        PromisedOn = promisedOn;
        State = OrderState.Accepted;
        Note(OrderEventKind.Accepted, by, at, $"Accepted; promised for {promisedOn:yyyy-MM-dd}.");
        return this;
    }

    public Outcome<Order> Decline(string why, string by, DateTimeOffset at)
    {
        if (State is not (OrderState.New or OrderState.Quoted))
            return NotNow("declined");
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say why the order is declined; the customer sees it.");
        State = OrderState.Declined;
        Note(OrderEventKind.Declined, by, at, why.Trim());
        return this;
    }

    /// <summary>A blank has been allocated and a job opened on the floor.</summary>
    internal Outcome<Order> PutToWork(string what, string by, DateTimeOffset at)
    {
        if (State != OrderState.Accepted)
            return NotNow("put to work");
        State = OrderState.InWork;
        Note(OrderEventKind.PutToWork, by, at, what);
        return this;
    }

    internal void Shipped(string by, DateTimeOffset at)
    {
        State = OrderState.Shipped;
        Note(OrderEventKind.Shipped, by, at, "Shipped.");
    }

    private void DropPrice()
    {
        QuotedPartNumber = null;
        PriceLines = [];
        Price = 0;
    }

    private Refusal NotNow(string wanted) => new("wrongState", $"Order {Number} is {State.Words()}; it can no longer be {wanted}.");

    private void Note(OrderEventKind kind, string by, DateTimeOffset at, string what)
    {
        _history.Add(new OrderEvent(kind, by, at, what));
        Changes++;
    }
}
