namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    /// <summary>Ends an accepted order; before acceptance it is declined instead.</summary>
    /// <param name="why">The shop's reason, for its own people.</param>
    /// <param name="told">What the customer is told of it; blank: only that the order is cancelled.</param>
    /// <param name="consequence">What becomes of blanks and jobs, in words.</param>
    internal Outcome<Order> Cancel(string why, string? told, string consequence, string by, DateTimeOffset at)
    {
        if (State is not (OrderState.Accepted or OrderState.InWork))
            return NotNow("cancelled");
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say why the order is cancelled.");
        string[] words = [$"{why.Trim().TrimEnd('.')}.", consequence, ShippedWords(), MoneyWords()];
        Enter(OrderState.Cancelled, OrderEventKind.Cancelled, by, at, string.Join(' ', words.Where(part => part.Length > 0)), string.IsNullOrWhiteSpace(told) ? null : told.Trim());
        return this;
    }

    private string ShippedWords() => _cams.Sum(cam => cam.Shipped) is > 0 and var shipped ? $"{shipped} of {Pieces} pieces had shipped." : "";

    private string MoneyWords() => Received == 0 ? "No deposit was received." : FormattableString.Invariant($"A deposit of ${Received:N2} was received: settle it with the customer.");
}
