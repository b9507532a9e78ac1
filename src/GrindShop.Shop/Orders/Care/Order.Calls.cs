using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    /// <summary>Calls that may be owed at once.</summary>
    private const int MostCalls = 10, LeastPhoneDigits = 4;

    private readonly List<CallBack> _calls = [];

    /// <summary>Calls the desk owed or owes, the next one first; those that were made last.</summary>
    public IReadOnlyList<CallBack> Calls => [.. _calls.OrderBy(call => call.DoneAt ?? DateTimeOffset.MinValue).ThenBy(call => call.DueAt).ThenBy(call => call.Id)];

    /// <summary>The same key a second time changes nothing.</summary>
    public Outcome<Order> PlanCall(CallEntry entry, ShopSettings shop, string by, DateTimeOffset at)
    {
        if (_calls.Exists(call => call.CommandKey == entry.CommandKey))
            return this;
        if ((Refuse(entry) ?? TimeToCome(entry.Due, shop, at)) is { } refusal)
            return refusal;
        var call = new CallBack(shop.Moment(entry.Due), entry.Number.Trim(), entry.About.Trim(), by, at, entry.CommandKey);
        _calls.Add(call);
        Note(OrderEventKind.CallPlanned, by, at, FormattableString.Invariant($"To be called back from {entry.Due:yyyy-MM-dd HH:mm} at {call.Number}: {call.About}"));
        return this;
    }

    public Outcome<Order> CallDone(int id, string by, DateTimeOffset at)
    {
        var open = OpenCall(id);
        if (!open.Succeeded)
            return open.Refusal;
        var call = open.Value;
        call.Done(by, at);
        Note(OrderEventKind.CalledBack, by, at, $"Called back at {call.Number}: {call.About}");
        return this;
    }

    /// <summary>Nobody answered; the call comes up again after <see cref="CallBack.TryAgainAfter"/>.</summary>
    /// <param name="triesSeen">The number of tries on the caller's screen: somebody else may just have tried.</param>
    public Outcome<Order> CallTried(int id, int triesSeen, string by, DateTimeOffset at)
    {
        var open = OpenCall(id);
        if (!open.Succeeded)
            return open.Refusal;
        var call = open.Value;
        if (call.Tries != triesSeen)
            return new Refusal("stale", $"{_history.FindLast(line => line.Kind == OrderEventKind.CallTried)?.By ?? "Somebody"} has just tried this call; it comes up again later.");
        call.Tried(at);
        Note(OrderEventKind.CallTried, by, at, $"Called back at {call.Number}, no answer ({(call.Tries == 1 ? "first try" : $"{call.Tries} tries")}): {call.About}");
        return this;
    }

    private Outcome<CallBack> OpenCall(int id) => _calls.Find(call => call.Id == id) switch
    {
        null => new Refusal("noSuchCall", $"Order {Number} has no such call."),
        { IsOpen: false } done => new Refusal("called", $"{done.DoneBy} has made this call already."),
        var call => call,
    };

    private Refusal? Refuse(CallEntry entry) =>
        entry.Number.Count(char.IsAsciiDigit) < LeastPhoneDigits ? new Refusal("noNumber", "Write down the number that is to be called.")
        : string.IsNullOrWhiteSpace(entry.About) ? new Refusal("noReason", "Say what the call is about.")
        : (SpecCheck.Text(entry.Number, CallBack.LongestNumber, "number", "The number") ?? SpecCheck.Text(entry.About, CallBack.LongestAbout, "about", "What the call is about")) is { } problem
            ? new Refusal("badText", problem.Message)
        : _calls.Count(call => call.IsOpen) >= MostCalls ? new Refusal("tooMany", $"{MostCalls} calls are owed on this order already; make one of them first.")
        : null;
}
