using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    public const int LongestReason = 200;

    private const int MostDaysAway = 366;

    /// <summary>Who of the desk looks after it; null while nobody does.</summary>
    public string? AssignedTo { get; private set; }

    /// <summary>Until then it is out of the working list; it comes back by itself, and earlier when something happens to it.</summary>
    public DateTimeOffset? SnoozedUntil { get; private set; }

    public string? SnoozeReason { get; private set; }

    public bool IsSnoozed(DateTimeOffset now) => SnoozedUntil > now;

    /// <summary>Gives it to somebody of the desk, or with null back to all of them.</summary>
    public Outcome<Order> Assign(string? to, string by, DateTimeOffset at)
    {
        if (!IsOpen)
            return NotNow("given to anybody");
        if (AssignedTo == to)
            return this;
        var what = to is null ? $"Given back by {AssignedTo}: nobody has it." : to == by ? $"Taken{From}." : $"Given to {to}{From}.";
        AssignedTo = to;
        Note(OrderEventKind.Assigned, by, at, what);
        return this;
    }

    /// <param name="until">By the clock on the shop's wall.</param>
    public Outcome<Order> Snooze(DateTime until, string why, ShopSettings shop, string by, DateTimeOffset at)
    {
        if (!IsOpen)
            return NotNow("snoozed");
        if (TimeToCome(until, shop, at) is { } refusal)
            return refusal;
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say what it waits for; the next who sees it wants to know.");
        if (SpecCheck.Text(why, LongestReason, "why", "What it waits for") is { } problem)
            return new Refusal("badText", problem.Message);
        (SnoozedUntil, SnoozeReason) = (shop.Moment(until), why.Trim());
        Note(OrderEventKind.Snoozed, by, at, FormattableString.Invariant($"Snoozed until {until:yyyy-MM-dd HH:mm}: {SnoozeReason}"));
        return this;
    }

    /// <summary>Takes it back into the working list before its time.</summary>
    public Outcome<Order> Wake(string by, DateTimeOffset at)
    {
        if (!IsSnoozed(at))
            return new Refusal("awake", $"Order {Number} is not snoozed any more.");
        WakeUp();
        Note(OrderEventKind.Woken, by, at, "Back in the working list before its time.");
        return this;
    }

    private string From => AssignedTo is null ? "" : $" from {AssignedTo}";

    private void WakeUp() => (SnoozedUntil, SnoozeReason) = (null, null);

    /// <summary>Far-off times are settled by the difference alone: next to the end of the calendar a moment cannot be told.</summary>
    private static Refusal? TimeToCome(DateTime shopTime, ShopSettings shop, DateTimeOffset now)
    {
        var (clock, away) = (shop.ShopTime(now), shopTime - shop.ShopTime(now));
        return away.TotalDays > MostDaysAway ? new Refusal("farOff", "That is more than a year away. Choose a nearer time.")
            : away.TotalDays < -1 || shop.Moment(shopTime) <= now ? new Refusal("past", FormattableString.Invariant($"{shopTime:yyyy-MM-dd HH:mm} has passed; in the shop it is {clock:yyyy-MM-dd HH:mm}. Choose a time to come."))
            : null;
    }
}
