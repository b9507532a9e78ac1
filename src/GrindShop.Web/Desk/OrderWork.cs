using GrindShop.Shop;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Desk;

/// <summary>
/// One order on one person's screen: the state that person decides on, what was refused, and what somebody else changed meanwhile.
/// Every act names the version on the screen, so that nobody overwrites what they have not seen.
/// </summary>
public sealed class OrderWork(OrderDesk desk, string number)
{
    private readonly OneHand _hand = new();

    public string Number { get; } = number;

    /// <summary>What the screen shows; null where there is no such order.</summary>
    public Order? Order { get; private set; }

    /// <summary>A newer state that the person has not taken over yet, because something is being typed or was refused as stale.</summary>
    public Order? Newer { get; private set; }

    public Refusal? Refusal { get; private set; }

    /// <summary>What the last act did, or what somebody else did to the order since it was opened.</summary>
    public string? Said { get; private set; }

    /// <summary>The fields that changed with the newer state: waiting to be taken over, or just taken over.</summary>
    public IReadOnlyList<SpecChange> Changes { get; private set; } = [];

    /// <summary>The price that is being made here.</summary>
    public PriceDraft Prices { get; } = new();

    /// <summary>The specification is being edited: a newer state waits until it is asked for.</summary>
    public bool IsTyping { get; set; }

    /// <summary>Reads the order again; takes the newer state over unless that would pull away what is being typed.</summary>
    public async Task HearAsync()
    {
        var (isToShow, found) = await _hand.ReadAsync(() => desk.FindAsync(Number));
        if (!isToShow)
            return;
        if (found is not null && Order is { } shown && found.Version != shown.Version)
            Meet(shown, found);
        else
            Order = found;
    }

    /// <summary>Does one act on the version shown. True when it was done; otherwise <see cref="Refusal"/> says why not and everything typed stays.</summary>
    public Task<bool> ActAsync<T>(Func<Order, Task<Outcome<T>>> act, string said) => _hand.ActAsync(async () =>
    {
        var outcome = await act(Order!);
        var found = outcome.Succeeded || outcome.Refusal.IsStale ? await desk.FindAsync(Number) : null;
        (Refusal, Said) = (outcome.Refusal, outcome.Succeeded ? said : null);
        if (outcome.Succeeded)
            (Order, Newer, Changes) = (found, null, []);
        else if (found is not null)
            Wait(Order!, found);
        return outcome.Succeeded;
    });

    /// <summary>Something is missing before the act can be tried.</summary>
    public void Refuse(Refusal refusal) => (Refusal, Said) = (refusal, null);

    /// <summary>Takes the newer state over; the list of changes stays to be read.</summary>
    public void TakeNewer()
    {
        if (Newer is not { } newer)
            return;
        (Order, Newer, Refusal) = (newer, null, null);
        Said = $"The newer state is loaded. {LastWords(newer)}";
    }

    /// <summary>The editor is closed without saving; nothing holds a newer state back any more.</summary>
    public void StopTyping()
    {
        IsTyping = false;
        Refusal = null;
        TakeNewer();
    }

    private void Meet(Order shown, Order found)
    {
        if (IsTyping || Newer is not null)
            Wait(shown, found);
        else
            (Order, Refusal, Said, Changes) = (found, null, LastWords(found), OrderChange.Between(shown, found));
    }

    private void Wait(Order shown, Order found) => (Newer, Changes) = (found, OrderChange.Between(shown, found));

    private static string LastWords(Order order) => order.History[^1] is { } last ? $"{last.By}: {last.What}" : "";
}
