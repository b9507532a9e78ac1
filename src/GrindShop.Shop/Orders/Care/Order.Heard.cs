namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    /// <summary>What the customer said since the desk last did anything with the order, oldest first; nothing once the desk has.</summary>
    public IReadOnlyList<OrderEvent> Unheard => [.. _history.Where(line => !OrderEventKinds.WithoutDesk.Contains(line.Kind) && !IsCustomersYes(line)).Reverse().TakeWhile(line => OrderEventKinds.Said.Contains(line.Kind)).Reverse()];

    /// <summary>The customer accepted on the tracking page: the name typed there stands on the line.</summary>
    private bool IsCustomersYes(OrderEvent line) => line.Kind == OrderEventKind.Accepted && line.By == AcceptedBy;

    /// <summary>The desk has read what the customer said. A second time changes nothing.</summary>
    /// <param name="line">Id of the last line that was read: what came in after it has not been.</param>
    public Outcome<Order> Seen(long line, string by, DateTimeOffset at)
    {
        if (Unheard is not [.., var last])
            return this;
        if (last.Id != line)
            return new Refusal("stale", $"{last.By} has said something more in the meantime: {last.What}");
        Note(OrderEventKind.Seen, by, at, "Read what came in.");
        return this;
    }
}
