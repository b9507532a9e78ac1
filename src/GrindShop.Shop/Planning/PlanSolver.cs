namespace GrindShop.Shop.Planning;

/// <summary>The best sites for one number of them.</summary>
/// <param name="Most">How many were allowed.</param>
/// <param name="Sites">The sites chosen, in order; fewer than allowed where more would not help.</param>
/// <param name="Cost">Cost of all demands with them.</param>
/// <param name="Bound">No choice of so many sites can cost less.</param>
public sealed record SitePlan(int Most, IReadOnlyList<int> Sites, long Cost, long Bound)
{
    public bool Proven => Bound == Cost;

    /// <summary>By how much the cost might still be above the best possible, as a share of the cost; 0 where it is proven.</summary>
    public double Gap => Cost == 0 ? 0 : (double)(Cost - Bound) / Cost;
}

/// <summary>
/// The best 1, 2, ... sites for a <see cref="ServingProblem"/>, exactly: a good plan by exchanges, a certified bound by prices, and an integer programme
/// over the sites that the bound leaves in question (docs/mathematics-planning.md). The same problem gets the same answer every time.
/// </summary>
public static class PlanSolver
{
    /// <param name="problem">The costs.</param>
    /// <param name="most">Plans are made for 1 to this many sites.</param>
    /// <param name="progress">Hears the share done, 0 to 1.</param>
    /// <param name="cancel">Ends the work.</param>
    public static IReadOnlyList<SitePlan> Solve(ServingProblem problem, int most, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(most);
        var condensed = CondensedProblem.Of(problem, cancel);
        var run = new Run(condensed, cancel);
        var plans = new List<SitePlan>();
        for (var sites = 1; sites <= most; sites++)
        {
            plans.Add(run.Next(sites));
            progress?.Report((double)sites / most);
        }
        return plans;
    }

    /// <summary>Keeps the last plan and the prices, from which the next number of sites starts.</summary>
    private sealed class Run(CondensedProblem problem, CancellationToken cancel)
    {
        private readonly LagrangeBound _prices = new(problem);
        private readonly SwapSearch _search = new(problem);
        private int[] _open = [];
        private long _cost;

        public SitePlan Next(int most)
        {
            (_open, _cost) = _search.Improve(_open, most, cancel);
            if (most >= problem.Sites.Length)
                return Plan(most, _cost);
            var sites = new SiteChoice(problem.Sites.Length);
            var seen = new HashSet<string>();
            var bound = Whole(_prices.Raise(sites, most, _cost, favoured => Visit(favoured, most, seen), cancel));
            if (bound < _cost && new RemainingModel(problem, sites).Solve(most, cancel) is { } remaining)
            {
                Take(remaining.Open, most);
                bound = remaining.Optimal ? _cost : Math.Max(bound, Whole(remaining.Bound));
            }
            return Plan(most, bound);
        }

        private SitePlan Plan(int most, long bound) => new(most, [.. _open.Select(site => problem.Sites[site].Site)], _cost, Math.Min(bound, _cost));

        private long Visit(int[] favoured, int most, HashSet<string> seen)
        {
            if (seen.Add(string.Join(',', favoured.Order())))
                Take(favoured, most);
            return _cost;
        }

        private void Take(IEnumerable<int> start, int most)
        {
            var (open, cost) = _search.Improve(start, most, cancel);
            if (cost < _cost)
                (_open, _cost) = (open, cost);
        }

        /// <summary>Costs are whole, so the bound may be rounded up; a hair is left for the arithmetic.</summary>
        private static long Whole(double bound) => (long)Math.Ceiling(bound - 1e-6 - 1e-12 * Math.Abs(bound));
    }
}
