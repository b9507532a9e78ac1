using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Buying;

/// <summary>Blanks that jobs took and kept.</summary>
public static class KeptBlanks
{
    /// <summary>
    /// The allocations of a lot that were not given back: a release undoes the last one that its job still holds. A release whose allocation
    /// lies before the lines given undoes nothing.
    /// </summary>
    /// <param name="book">Allocations and releases of one lot, the oldest first.</param>
    public static IEnumerable<StockMovement> Of(IEnumerable<StockMovement> book)
    {
        foreach (var job in book.GroupBy(line => line.JobCode))
        {
            var held = new Stack<StockMovement>();
            foreach (var line in job)
                if (line.Kind == StockMovementKind.Allocate)
                    held.Push(line);
                else if (line.Kind == StockMovementKind.Release)
                    held.TryPop(out _);
            foreach (var kept in held)
                yield return kept;
        }
    }
}
