namespace GrindShop.Shop.Orders;

/// <summary>A call the desk owes a customer: when, which number, about what.</summary>
public sealed class CallBack(DateTimeOffset dueAt, string number, string about, string by, DateTimeOffset at, string commandKey)
{
    public const int LongestNumber = 40, LongestAbout = 200;

    /// <summary>A call that nobody answered comes up again after this time. Common practice, no source.</summary>
    public static readonly TimeSpan TryAgainAfter = TimeSpan.FromHours(1);

    public int Id { get; private set; }

    public int OrderId { get; private set; }

    /// <summary>Not before this; overdue afterwards.</summary>
    public DateTimeOffset DueAt { get; private set; } = dueAt;

    public string Number { get; private set; } = number;

    public string About { get; private set; } = about;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    /// <summary>The browser's own key for the command, so that a repeated one is known.</summary>
    public string CommandKey { get; private set; } = commandKey;

    /// <summary>How often it was tried in vain.</summary>
    public int Tries { get; private set; }

    public DateTimeOffset? LastTriedAt { get; private set; }

    public DateTimeOffset? DoneAt { get; private set; }

    public string? DoneBy { get; private set; }

    public bool IsOpen => DoneAt is null;

    internal void Done(string by, DateTimeOffset now) => (DoneAt, DoneBy) = (now, by);

    internal void Tried(DateTimeOffset now) => (Tries, LastTriedAt, DueAt) = (Tries + 1, now, now + TryAgainAfter);
}

/// <summary>A call as the desk plans it.</summary>
/// <param name="Due">By the clock on the shop's wall.</param>
public sealed record CallEntry(DateTime Due, string Number, string About, string CommandKey);
