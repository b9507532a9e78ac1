using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Planning;

/// <summary>Everything a shelf plan is made from. Growth: by how much more of a use is expected than in the period, 1 where nothing is said.</summary>
public sealed record ShelfCase(
    IReadOnlyList<ShelfDemand> Demands, IReadOnlyList<PreparedBlank> Blanks, IReadOnlyList<string> Today, ServingWeights Weights, IReadOnlyDictionary<string, double> Growth)
{
    /// <summary>Part numbers a plan may have at most.</summary>
    public const int Most = 20;

    /// <summary>Demand is counted in hundredths of a cam, so that growth may be any plain figure.</summary>
    public const int Hundredths = 100;

    /// <summary>Part numbers that newer ones replace: they may lie on today's shelf, but no best shelf keeps them.</summary>
    public IReadOnlyList<string> UsedUp { get; init; } = [];

    internal int Weight(ShelfDemand demand) => (int)Math.Round(demand.Quantity * Hundredths * Growth.GetValueOrDefault(demand.Use, 1));
}

/// <summary>A shelf and what it does for the demand. Costs in the weights' dollars; shares of the cams wished for.</summary>
public sealed record Shelf(IReadOnlyList<int> Sites, double Dollars, double ServedShare);

/// <summary>How one wish fares on a shelf: the blank it is best ground from, null where none serves.</summary>
public sealed record Served(ShelfDemand Demand, PreparedBlank? Blank, Serving Serving);

/// <summary>The best shelf of every size beside today's. Pure; the same case gets the same plan.</summary>
public sealed class ShelfPlan
{
    private readonly ServingProblem _problem;
    private readonly ServingMatrix _matrix;

    private ShelfPlan(ShelfCase question, ServingMatrix matrix, ServingProblem problem, IReadOnlyList<SitePlan> plans)
    {
        (Case, _matrix, _problem, Plans) = (question, matrix, problem, plans);
        Today = Shelf([.. Enumerable.Range(0, question.Blanks.Count).Where(site => question.Today.Contains(question.Blanks[site].Part.PartNumber))]);
        Best = [.. plans.Select(plan => Shelf(plan.Sites))];
    }

    public ShelfCase Case { get; }

    public IReadOnlyList<SitePlan> Plans { get; }

    /// <summary>The parts with free stock.</summary>
    public Shelf Today { get; }

    /// <summary>The best shelf of 1, 2, ... part numbers.</summary>
    public IReadOnlyList<Shelf> Best { get; }

    public int Judged => _problem.Demands * _problem.Sites;

    /// <param name="question">Demand and blanks, all of one family; at least one blank.</param>
    /// <param name="rules">The shop's rules.</param>
    /// <param name="progress">Hears the share done, 0 to 1: the serving costs are about the first half.</param>
    /// <param name="cancel">Ends the work.</param>
    public static ShelfPlan Make(ShelfCase question, ShopRules rules, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var matrix = new ServingMatrix(question.Blanks[0].Part.EngineFamily, rules, question.Weights);
        var problem = matrix.Of(
            [.. question.Demands.Select(demand => demand.Grind)], [.. question.Demands.Select(question.Weight)], question.Blanks, new Half(progress, 0), cancel);
        return new ShelfPlan(question, matrix, problem, Solve(question, problem, new Half(progress, .5), cancel));
    }

    private static IReadOnlyList<SitePlan> Solve(ShelfCase question, ServingProblem problem, IProgress<double> progress, CancellationToken cancel)
    {
        int[] kept = [.. Enumerable.Range(0, problem.Sites).Where(site => !question.UsedUp.Contains(question.Blanks[site].Part.PartNumber))];
        return kept.Length == problem.Sites
            ? PlanSolver.Solve(problem, ShelfCase.Most, progress, cancel)
            : [.. PlanSolver.Solve(problem.Of(kept), ShelfCase.Most, progress, cancel).Select(plan => plan with { Sites = [.. plan.Sites.Select(site => kept[site])] })];
    }

    public PreparedBlank Blank(int site) => Case.Blanks[site];

    /// <summary>Every wish on a shelf, with what serving it takes.</summary>
    public IReadOnlyList<Served> Serve(Shelf shelf) => [.. Case.Demands.Select((demand, i) => SiteFor(i, shelf.Sites) is { } site
        ? new Served(demand, Blank(site), _matrix.One(demand.Grind, Blank(site)))
        : new Served(demand, null, default))];

    /// <summary>What the shelf would cost more without one of its parts, dollars.</summary>
    public double WorthOf(int site, Shelf shelf) => Dollars([.. shelf.Sites.Where(other => other != site)]) - shelf.Dollars;

    /// <summary>What the shelf would cost less with one part more, dollars.</summary>
    public double WouldSave(int site, Shelf shelf) => shelf.Dollars - Dollars([.. shelf.Sites, site]);

    private Shelf Shelf(IReadOnlyList<int> sites)
    {
        var all = _problem.Weights.Sum(weight => (long)weight);
        var served = Enumerable.Range(0, _problem.Demands).Where(demand => SiteFor(demand, sites) is not null).Sum(demand => (long)_problem.Weights[demand]);
        return new Shelf([.. sites.Order()], Dollars(sites), all == 0 ? 0 : (double)served / all);
    }

    private double Dollars(IReadOnlyCollection<int> sites) => InDollars(_problem.Cost(sites));

    public static double InDollars(long cost) => (double)cost / ServingMatrix.CentsPerDollar / ShelfCase.Hundredths;

    /// <summary>The cheapest site, the first of equals; null where leaving the wish unserved costs no more.</summary>
    private int? SiteFor(int demand, IReadOnlyList<int> sites) => sites.Where(site => _problem[demand, site] < _problem.Unserved[demand])
        .OrderBy(site => _problem[demand, site]).ThenBy(site => site).Select(site => (int?)site).FirstOrDefault();

    private sealed class Half(IProgress<double>? whole, double from) : IProgress<double>
    {
        public void Report(double value) => whole?.Report(from + value / 2);
    }
}
