using Google.OrTools.LinearSolver;

namespace GrindShop.Shop.Planning;

/// <summary>
/// What the bound leaves in question, as an integer programme. A demand's cost climbs one level whenever no open site serves it at that level or below
/// (Cornuejols, Nemhauser and Wolsey 1980); levels of different demands that wait for the same sites share one variable, which keeps it small.
/// </summary>
internal sealed class RemainingModel
{
    /// <summary>Above this size the programme is not tried and the bound stands; a limit on work and not on time, so that answers repeat.</summary>
    private const int MostWaits = 20_000, MostNodes = 20_000;

    private readonly CondensedProblem _problem;
    private readonly int[] _fixed, _asked;
    private readonly Dictionary<string, (int[] Sites, long Rise)> _waits = [];
    private long _constant;

    public RemainingModel(CondensedProblem problem, SiteChoice sites)
    {
        (_problem, _fixed, _asked) = (problem, [.. sites.Open], [.. sites.InQuestion]);
        var (always, services) = (Always(), ByDemand());
        _constant = problem.Constant;
        for (var demand = 0; demand < always.Length; demand++)
            Levels(always[demand], services[demand]);
    }

    /// <summary>Cost of each demand with the sites that must be open.</summary>
    private long[] Always()
    {
        long[] always = [.. _problem.Unserved];
        foreach (var site in _fixed.Select(site => _problem.Sites[site]))
            for (var i = 0; i < site.Demands.Length; i++)
                always[site.Demands[i]] = Math.Min(always[site.Demands[i]], site.Costs[i]);
        return always;
    }

    private List<(long Cost, int Place)>[] ByDemand()
    {
        var services = Array.ConvertAll(_problem.Unserved, _ => new List<(long, int)>());
        for (var place = 0; place < _asked.Length; place++)
            foreach (var (demand, cost) in _problem.Sites[_asked[place]].Demands.Zip(_problem.Sites[_asked[place]].Costs))
                services[demand].Add((cost, place));
        return services;
    }

    private void Levels(long always, List<(long Cost, int Place)> services)
    {
        var better = services.Where(service => service.Cost < always).Order().ToList();
        _constant += better.Count == 0 ? always : better[0].Cost;
        for (var i = 0; i < better.Count; i++)
            if ((i + 1 < better.Count ? better[i + 1].Cost : always) is var next && next > better[i].Cost)
                Wait([.. better.Take(i + 1).Select(service => service.Place).Order()], next - better[i].Cost);
    }

    private void Wait(int[] sites, long rise)
    {
        var key = string.Join(',', sites);
        _waits[key] = (sites, rise + _waits.GetValueOrDefault(key).Rise);
    }

    /// <summary>
    /// The best plan found among those left in question, a lower bound on all of them, and whether the plan is the best (to the programme's tolerance);
    /// null where the programme is too large.
    /// </summary>
    public (int[] Open, double Bound, bool Optimal)? Solve(int most, CancellationToken cancel)
    {
        if (_waits.Count > MostWaits)
            return null;
        using var solver = Solver.CreateSolver("SCIP");
        var open = Array.ConvertAll(_asked, site => solver.MakeBoolVar($"site{site}"));
        Limit(solver, open, most - _fixed.Length);
        Costs(solver, open);
        solver.SetSolverSpecificParametersAsString($"limits/nodes = {MostNodes}\n");
        using var gap = new MPSolverParameters();
        gap.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        using var stop = cancel.Register(() => solver.InterruptSolve());
        var status = solver.Solve(gap);
        cancel.ThrowIfCancellationRequested();
        return status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE
            ? ([.. _fixed, .. _asked.Where((_, place) => open[place].SolutionValue() > .5)], solver.Objective().BestBound(), status == Solver.ResultStatus.OPTIMAL)
            : null;
    }

    private static void Limit(Solver solver, Variable[] open, int most)
    {
        var row = solver.MakeConstraint(0, most);
        foreach (var site in open)
            row.SetCoefficient(site, 1);
    }

    private void Costs(Solver solver, Variable[] open)
    {
        var objective = solver.Objective();
        foreach (var (sites, rise) in _waits.Values)
        {
            var wait = solver.MakeNumVar(0, 1, "");
            objective.SetCoefficient(wait, rise);
            var row = solver.MakeConstraint(1, double.PositiveInfinity);
            row.SetCoefficient(wait, 1);
            foreach (var site in sites)
                row.SetCoefficient(open[site], 1);
        }
        objective.SetOffset(_constant);
        objective.SetMinimization();
    }
}
