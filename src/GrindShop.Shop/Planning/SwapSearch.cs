namespace GrindShop.Shop.Planning;

/// <summary>
/// A good plan quickly: from given sites, the best single addition or exchange again and again until none helps
/// (the vertex substitution of Teitz and Bart, 1968, with every exchange of one entering site valued in one pass over its demands).
/// </summary>
internal sealed class SwapSearch(CondensedProblem problem)
{
    private readonly long[] _nearest = new long[problem.Demands], _second = new long[problem.Demands];
    private readonly int[] _by = new int[problem.Demands];

    /// <param name="start">Sites to start from, by place in <see cref="CondensedProblem.Sites"/>; at most <paramref name="most"/>.</param>
    /// <param name="most">How many sites the plan may have.</param>
    /// <param name="cancel">Ends the search.</param>
    public (int[] Open, long Cost) Improve(IEnumerable<int> start, int most, CancellationToken cancel)
    {
        var open = start.ToList();
        for (Assign(open); Best(open, most, cancel) is { Gain: > 0 } step; Assign(open))
        {
            if (step.Out >= 0)
                open.RemoveAt(step.Out);
            open.Add(step.In);
        }
        open.Sort();
        return ([.. open], problem.Constant + _nearest.Sum());
    }

    private void Assign(List<int> open)
    {
        Array.Copy(problem.Unserved, _nearest, _nearest.Length);
        Array.Copy(problem.Unserved, _second, _second.Length);
        Array.Fill(_by, -1);
        for (var place = 0; place < open.Count; place++)
            Serve(problem.Sites[open[place]], place);
    }

    private void Serve(SiteServices site, int place)
    {
        for (var i = 0; i < site.Demands.Length; i++)
        {
            var (demand, cost) = (site.Demands[i], site.Costs[i]);
            if (cost < _nearest[demand])
                (_second[demand], _nearest[demand], _by[demand]) = (_nearest[demand], cost, place);
            else if (cost < _second[demand])
                _second[demand] = cost;
        }
    }

    private (int In, int Out, long Gain) Best(List<int> open, int most, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var losses = Losses(open.Count);
        var best = (In: -1, Out: -1, Gain: 0L);
        for (var site = 0; site < problem.Sites.Length; site++)
            if (!open.Contains(site) && Value(site, losses, open.Count < most) is var step && step.Gain > best.Gain)
                best = (site, step.Out, step.Gain);
        return best;
    }

    /// <summary>What closing each open site alone would cost.</summary>
    private long[] Losses(int count)
    {
        var losses = new long[count];
        for (var demand = 0; demand < _by.Length; demand++)
            if (_by[demand] >= 0)
                losses[_by[demand]] += _second[demand] - _nearest[demand];
        return losses;
    }

    private (int Out, long Gain) Value(int entering, long[] losses, bool room)
    {
        var gain = 0L;
        var after = (long[])losses.Clone();
        var site = problem.Sites[entering];
        for (var i = 0; i < site.Demands.Length; i++)
        {
            var (demand, cost) = (site.Demands[i], site.Costs[i]);
            gain += Math.Max(0, _nearest[demand] - cost);
            if (_by[demand] >= 0 && cost < _second[demand])
                after[_by[demand]] -= _second[demand] - Math.Max(cost, _nearest[demand]);
        }
        if (room || after.Length == 0)
            return (-1, room ? gain : 0);
        var least = Array.IndexOf(after, after.Min());
        return (least, gain - after[least]);
    }
}
