namespace GrindShop.Shop.Buying;

/// <summary>The stock book of one part as buying sees it; every figure is derived from lots, orders and purchase orders.</summary>
/// <param name="OnHand">Blanks in the building.</param>
/// <param name="Allocated">Of those, promised to jobs.</param>
/// <param name="Available">On hand, not promised and not held back.</param>
/// <param name="OnOrder">Sent for and not here yet.</param>
/// <param name="InDrafts">On purchase orders that are not sent.</param>
/// <param name="Waiting">Accepted cams that wait for such a blank.</param>
/// <param name="OfReplaced">What is to count on of the parts that it replaces: available and on order, less those that wait for one.</param>
public sealed record StockPosition(int OnHand, int Allocated, int Available, int OnOrder, int InDrafts, int Waiting, int OfReplaced = 0)
{
    /// <summary>What is there or coming, less what is already wanted; a reorder point is held against it.</summary>
    public int Position => Available + OnOrder - Waiting + OfReplaced;
}
