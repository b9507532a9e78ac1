using GrindShop.Shop;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Office;

/// <summary>
/// One purchase order on one person's screen: the state that person decides on, what was refused, and what somebody else changed meanwhile. What is
/// typed lives in the forms and outlasts every newer state.
/// </summary>
public sealed class BuyingWork(Purchasing purchasing, string number)
{
    private readonly OneHand _hand = new();

    public string Number { get; } = number;

    /// <summary>What the screen shows; null where there is no such order.</summary>
    public PurchaseOrder? Order { get; private set; }

    public Refusal? Refusal { get; private set; }

    /// <summary>What the last act did, or what somebody else did since the page was opened.</summary>
    public string? Said { get; private set; }

    /// <summary>The lot that was booked in last on this screen.</summary>
    public BlankLot? Arrived { get; set; }

    public async Task HearAsync()
    {
        var (isToShow, found) = await _hand.ReadAsync(() => purchasing.FindAsync(Number));
        if (!isToShow)
            return;
        if (Order is { } shown && found is not null && found.Version != shown.Version)
            (Refusal, Said) = (null, $"{found.History[^1].By}: {found.History[^1].What}");
        Order = found;
    }

    /// <summary>Does one act on the version shown; what was refused is said, and a newer state is shown.</summary>
    public Task<bool> ActAsync<T>(Func<PurchaseOrder, Task<Outcome<T>>> act, string said) => _hand.ActAsync(async () =>
    {
        var outcome = await act(Order!);
        Order = await purchasing.FindAsync(Number);
        (Refusal, Said) = (outcome.Refusal, outcome.Succeeded ? said : null);
        return outcome.Succeeded;
    });
}
