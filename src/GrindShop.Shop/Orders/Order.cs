using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

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
public sealed partial class Order
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

    public DateTimeOffset StateSince { get; private set; }

    public int CustomerId { get; private set; }

    public Customer Customer { get; private set; } = null!;

    /// <summary>Name and addresses as they were given with this order; a known customer may have given others.</summary>
    public Contact Contact { get; private set; } = new();

    /// <summary>The customer can be written to.</summary>
    public bool HasAddress => EnquiryCheck.Email(Contact) is not null;

    /// <summary>The customer's own name or number for this cam.</summary>
    public string? CustomerReference { get; private set; }

    /// <summary>How many jobs were ever opened; the next one's code follows from it.</summary>
    public int JobsOpened { get; private set; }

    public decimal Price { get; private set; }

    public DateOnly? PromisedOn { get; private set; }

    public DateTimeOffset ReceivedAt { get; private set; }

    public IReadOnlyList<OrderEvent> History => _history;

    /// <summary>Number of history lines; makes every change touch the order's row, so that two writers at once are noticed.</summary>
    public int Changes { get; private set; }

    /// <summary>Changes with every write; the writer who holds an older one is told instead of overwriting.</summary>
    public uint Version { get; private set; }

    public bool IsOpen => State.IsOpen();

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
            ReceivedAt = at,
            StateSince = at,
        };
        order._cams.Add(new OrderCam(1, enquiry.Cam, answer));
        order.Note(OrderEventKind.Received, by, at, enquiry.AsSaid is { } said ? $"Taken in ({enquiry.Channel.Words()}). As said: {said}" : $"Specification received ({enquiry.Channel.Words()}).");
        return order;
    }

    /// <summary>The shop needs something from the customer before it can go on.</summary>
    public Outcome<Order> AskCustomer(string what, string by, DateTimeOffset at)
    {
        if (State is not (OrderState.New or OrderState.WaitingForCustomer))
            return NotNow("held for the customer");
        if (string.IsNullOrWhiteSpace(what))
            return new Refusal("noQuestion", "Say what the customer is asked.");
        Enter(OrderState.WaitingForCustomer, OrderEventKind.Asked, by, at, what.Trim());
        return this;
    }

    public Outcome<Order> Decline(string why, string by, DateTimeOffset at)
    {
        if (!State.IsBeforeAcceptance())
            return NotNow("declined");
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say why the order is declined; the customer sees it.");
        Enter(OrderState.Declined, OrderEventKind.Declined, by, at, why.Trim());
        return this;
    }

    /// <summary>The customer said no to the desk; nothing is written about it. Whoever took that word has read what the customer wrote before.</summary>
    public Outcome<Order> TakeNo(string why, string by, DateTimeOffset at)
    {
        if (!State.IsBeforeAcceptance())
            return NotNow("declined");
        if (Unheard.Count > 0)
            Note(OrderEventKind.Seen, by, at, "Read what came in.");
        Enter(OrderState.Declined, OrderEventKind.DeclinedByCustomer, by, at, string.IsNullOrWhiteSpace(why) ? NoReason : why.Trim());
        return this;
    }

    /// <summary>It was the customer who said no, not the shop.</summary>
    public bool IsDeclinedByCustomer => State == OrderState.Declined
        && _history.FindLast(line => line.Kind is OrderEventKind.Declined or OrderEventKind.DeclinedByCustomer)?.Kind == OrderEventKind.DeclinedByCustomer;

    /// <summary>The code that the next job gets: that of the order, and from the second on a number behind it.</summary>
    internal string NextJobCode => JobsOpened == 0 ? $"J{Number[1..]}" : $"J{Number[1..]}-{JobsOpened + 1}";

    /// <summary>A blank has been allocated and a job opened on the floor for one piece of a cam.</summary>
    internal Outcome<Order> PutToWork(OrderCam cam, string what, string by, DateTimeOffset at)
    {
        if (State is not (OrderState.Accepted or OrderState.InWork))
            return NotNow("put to work");
        if (cam.Waiting == 0)
            return new Refusal("allStarted", $"Every piece of this cam of order {Number} has its job already.");
        cam.Started++;
        JobsOpened++;
        if (State == OrderState.Accepted)
            Enter(OrderState.InWork, OrderEventKind.PutToWork, by, at, what);
        else
            Note(OrderEventKind.PutToWork, by, at, what);
        return this;
    }

    /// <summary>The customer's cam is here: how it looks counts, not what was told of it.</summary>
    internal void Receive(OrderCam cam, string condition, string by, DateTimeOffset at)
    {
        cam.Receive(condition);
        Note(OrderEventKind.CameIn, by, at, $"Cam {cam.Ordinal} came in like this: {condition.Trim()}");
    }

    /// <summary>A piece was spoilt and has to be made again; with no other piece in work the order waits for its blank again.</summary>
    internal void LosePiece(OrderCam cam, string what, string by, DateTimeOffset at)
    {
        cam.Started--;
        if (_cams.TrueForAll(one => one.Started == one.Shipped))
            Enter(OrderState.Accepted, OrderEventKind.PieceLost, by, at, what);
        else
            Note(OrderEventKind.PieceLost, by, at, what);
    }

    /// <summary>One piece has left the shop; the order has when the last one did.</summary>
    internal void Ship(OrderCam cam, string jobCode, string by, DateTimeOffset at)
    {
        cam.Shipped++;
        if (_cams.TrueForAll(one => one.Shipped == one.Quantity))
            Enter(OrderState.Shipped, OrderEventKind.Shipped, by, at, "Shipped.");
        else
            Note(OrderEventKind.PartShipped, by, at, $"{jobCode} shipped.");
    }

    private Refusal NotNow(string wanted) => new("wrongState", $"Order {Number} is {State.Words()}; it cannot be {wanted} now.");

    private void Enter(OrderState state, OrderEventKind kind, string by, DateTimeOffset at, string what, string? told = null)
    {
        (State, StateSince) = (state, at);
        WakeUp();
        Note(kind, by, at, what, told);
    }

    private void Note(OrderEventKind kind, string by, DateTimeOffset at, string what, string? told = null)
    {
        _history.Add(new OrderEvent(kind, by, at, what, told));
        Changes++;
    }
}
