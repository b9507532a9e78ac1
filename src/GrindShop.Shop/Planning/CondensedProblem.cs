namespace GrindShop.Shop.Planning;

/// <summary>One site's useful services: demands it serves for less than leaving them unserved, and their weighted costs.</summary>
internal sealed record SiteServices(int Site, int[] Demands, long[] Costs);

/// <summary>
/// A <see cref="ServingProblem"/> made smaller without losing anything: demands with the same costs become one, what can only stay unserved
/// becomes a constant, and a site that another one beats at every demand is left out.
/// </summary>
internal sealed class CondensedProblem
{
    private CondensedProblem(long constant, long[] unserved, SiteServices[] sites) => (Constant, Unserved, Sites) = (constant, unserved, sites);

    /// <summary>Cost of the demands that no site can better.</summary>
    public long Constant { get; }

    /// <summary>Weighted cost of leaving each remaining demand unserved.</summary>
    public long[] Unserved { get; }

    public SiteServices[] Sites { get; }

    public int Demands => Unserved.Length;

    public static CondensedProblem Of(ServingProblem problem, CancellationToken cancel = default)
    {
        var same = Enumerable.Range(0, problem.Demands).Where(demand => problem.Weights[demand] > 0)
            .GroupBy(demand => demand, new SameCosts(problem)).ToList();
        var (open, hopeless) = (same.Where(group => Helped(problem, group.Key)).ToList(), same.Where(group => !Helped(problem, group.Key)));
        var weights = open.ConvertAll(group => group.Sum(demand => (long)problem.Weights[demand]));
        var rows = open.ConvertAll(group => group.Key);
        return new CondensedProblem(
            hopeless.Sum(group => group.Sum(demand => (long)problem.Weights[demand] * problem.Unserved[demand])),
            [.. rows.Select((row, i) => weights[i] * problem.Unserved[row])],
            [.. Undominated(problem, rows, cancel).Select(site => Services(problem, rows, weights, site))]);
    }

    private static bool Helped(ServingProblem problem, int demand) =>
        Enumerable.Range(0, problem.Sites).Any(site => problem[demand, site] < problem.Unserved[demand]);

    /// <summary>Sites useful somewhere that no other one equals or betters everywhere; of equal sites the first stays.</summary>
    private static List<int> Undominated(ServingProblem problem, List<int> rows, CancellationToken cancel)
    {
        var useful = Enumerable.Range(0, problem.Sites).Where(site => rows.Exists(row => problem[row, site] < problem.Unserved[row])).ToList();
        return useful.FindAll(site =>
        {
            cancel.ThrowIfCancellationRequested();
            return !useful.Exists(other => other != site && Beats(problem, rows, other, site));
        });
    }

    private static bool Beats(ServingProblem problem, List<int> rows, int better, int site)
    {
        var strictly = better < site;
        foreach (var row in rows)
        {
            int one = problem.AtBest(row, better), other = problem.AtBest(row, site);
            if (one > other)
                return false;
            strictly |= one < other;
        }
        return strictly;
    }

    private static SiteServices Services(ServingProblem problem, List<int> rows, List<long> weights, int site)
    {
        var served = Enumerable.Range(0, rows.Count).Where(row => problem[rows[row], site] < problem.Unserved[rows[row]]).ToArray();
        return new SiteServices(site, served, Array.ConvertAll(served, row => weights[row] * problem[rows[row], site]));
    }

    private sealed class SameCosts(ServingProblem problem) : IEqualityComparer<int>
    {
        public bool Equals(int one, int other)
        {
            var same = problem.Unserved[one] == problem.Unserved[other];
            for (var site = 0; same && site < problem.Sites; site++)
                same = problem.AtBest(one, site) == problem.AtBest(other, site);
            return same;
        }

        public int GetHashCode(int demand)
        {
            var hash = new HashCode();
            hash.Add(problem.Unserved[demand]);
            for (var site = 0; site < problem.Sites; site++)
                hash.Add(problem.AtBest(demand, site));
            return hash.ToHashCode();
        }
    }
}
