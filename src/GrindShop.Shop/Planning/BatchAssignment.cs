using Google.OrTools.Graph;

namespace GrindShop.Shop.Planning;

/// <summary>Blanks that a waiting cam can be ground from, all alike: what comes off one at most, in, and what it costs.</summary>
/// <param name="Supply">The caller's own key of these blanks: a part number, or a part number and the metal.</param>
public sealed record BatchFit(string Supply, double RemovalIn, decimal Cost);

/// <summary>A cam that waits for a blank. Its key is the caller's own (an order number, or number and cam); each may occur once.</summary>
public sealed record BatchWish(string Key, IReadOnlyList<BatchFit> Fits);

/// <summary>The blank that a cam gets.</summary>
public sealed record BatchGrant(string Key, BatchFit Fit);

/// <summary>Who gets which blank, in the order of the wishes, and who has to wait.</summary>
/// <param name="Grants">One a served cam.</param>
/// <param name="Left">Keys of the cams that get none.</param>
public sealed record BatchPlan(IReadOnlyList<BatchGrant> Grants, IReadOnlyList<string> Left)
{
    /// <summary>Sum of the greatest removals, in.</summary>
    public double RemovalIn => Grants.Sum(grant => grant.Fit.RemovalIn);

    /// <summary>Sum of the blanks' costs.</summary>
    public decimal Cost => Grants.Sum(grant => grant.Fit.Cost);
}

/// <summary>
/// Which of the blanks at hand goes to which waiting cam: as many cams served as the blanks allow, and among all ways to do that the one with the
/// least sum of blank cost and removal valued in money. Exact (a minimum-cost flow from cams to supplies of like blanks). The same question gets the same
/// answer, in whatever order supplies and fits are given; where it is all one, cams earlier in the list come first.
/// </summary>
public static class BatchAssignment
{
    private const int MostWishes = 10_000;

    /// <summary>What a thousandth of an inch of metal to grind off counts for, where the caller names nothing else.</summary>
    public const decimal UsualDollarsPerThousandth = 1;

    /// <param name="wishes">Waiting cams, the first to serve first.</param>
    /// <param name="available">Blanks free to take, by the key of their supply.</param>
    /// <param name="dollarsPerThousandth">Value of a thousandth of an inch of removal, not negative.</param>
    /// <exception cref="ArgumentException">A key twice, a supply twice in one wish, a negative figure, or more than 10,000 wishes.</exception>
    public static BatchPlan Solve(
        IReadOnlyList<BatchWish> wishes, IReadOnlyDictionary<string, int> available, decimal dollarsPerThousandth = UsualDollarsPerThousandth)
    {
        Check(wishes, dollarsPerThousandth);
        var supplies = available.Where(supply => supply.Value > 0).OrderBy(supply => supply.Key, StringComparer.Ordinal).ToList();
        var flow = new MinCostFlow();
        var arcs = new Dictionary<int, BatchGrant>();
        int source = wishes.Count + supplies.Count, sink = source + 1;
        for (var i = 0; i < wishes.Count; i++)
        {
            flow.AddArcWithCapacityAndUnitCost(source, i, 1, i);
            foreach (var (fit, supply) in Usable(wishes[i], supplies))
                arcs.Add(flow.AddArcWithCapacityAndUnitCost(i, wishes.Count + supply, 1, Units(fit, dollarsPerThousandth, wishes.Count)), new BatchGrant(wishes[i].Key, fit));
        }
        for (var supply = 0; supply < supplies.Count; supply++)
            flow.AddArcWithCapacityAndUnitCost(wishes.Count + supply, sink, Math.Min(supplies[supply].Value, wishes.Count), 0);
        return arcs.Count == 0 ? new BatchPlan([], [.. wishes.Select(wish => wish.Key)]) : Read(flow, arcs, wishes, source, sink);
    }

    private static IEnumerable<(BatchFit Fit, int Supply)> Usable(BatchWish wish, List<KeyValuePair<string, int>> supplies) =>
        from fit in wish.Fits
        let place = supplies.FindIndex(supply => supply.Key == fit.Supply)
        where place >= 0
        orderby place
        select (fit, place);

    /// <summary>Hundredths of a cent, above all sums of places in the list, which only break ties.</summary>
    private static long Units(BatchFit fit, decimal dollarsPerThousandth, long wishes) =>
        decimal.ToInt64(Math.Round((fit.Cost + (decimal)fit.RemovalIn * 1000 * dollarsPerThousandth) * 10_000)) * (wishes * wishes + 1);

    private static BatchPlan Read(MinCostFlow flow, Dictionary<int, BatchGrant> arcs, IReadOnlyList<BatchWish> wishes, int source, int sink)
    {
        flow.SetNodeSupply(source, wishes.Count);
        flow.SetNodeSupply(sink, -wishes.Count);
        if (flow.SolveMaxFlowWithMinCost() is var status && status != MinCostFlowBase.Status.OPTIMAL)
            throw new InvalidOperationException($"The assignment ended as {status}.");
        var grants = arcs.Where(arc => flow.Flow(arc.Key) > 0).Select(arc => arc.Value).ToDictionary(grant => grant.Key);
        return new BatchPlan(
            [.. wishes.Where(wish => grants.ContainsKey(wish.Key)).Select(wish => grants[wish.Key])],
            [.. wishes.Where(wish => !grants.ContainsKey(wish.Key)).Select(wish => wish.Key)]);
    }

    private static void Check(IReadOnlyList<BatchWish> wishes, decimal dollarsPerThousandth)
    {
        if (wishes.Count > MostWishes)
            throw new ArgumentException($"At most {MostWishes} cams at once.", nameof(wishes));
        if (wishes.DistinctBy(wish => wish.Key).Count() != wishes.Count || wishes.Any(wish => wish.Fits.DistinctBy(fit => fit.Supply).Count() != wish.Fits.Count))
            throw new ArgumentException("A cam, or a supply of a cam, is named twice.", nameof(wishes));
        if (dollarsPerThousandth < 0 || wishes.Any(wish => wish.Fits.Any(fit => fit.Cost < 0 || !(fit.RemovalIn >= 0))))
            throw new ArgumentException("Costs and removals cannot be negative.", nameof(wishes));
    }
}
