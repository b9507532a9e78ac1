namespace GrindShop.Shop.Planning;

/// <summary>
/// A certified lower bound: every demand pays a price, a site is worth what its services undercut those prices, and no plan of so many sites can cost less
/// than the prices less the worth of the best sites (Lagrangian relaxation of "each demand is served once"; Cornuejols, Fisher and Nemhauser 1977).
/// The prices are moved by subgradient steps and kept from one number of sites to the next.
/// </summary>
internal sealed class LagrangeBound
{
    private const int MostSteps = 800, Patience = 15;
    private const double FirstPace = 1.5, LastPace = .004, Momentum = .7;
    private readonly CondensedProblem _problem;
    private readonly double[] _prices, _bestPrices, _slope, _direction, _worth;

    public LagrangeBound(CondensedProblem problem)
    {
        _problem = problem;
        _prices = Array.ConvertAll(problem.Unserved, cost => (double)cost);
        _bestPrices = [.. _prices];
        (_slope, _direction) = (new double[problem.Demands], new double[problem.Demands]);
        _worth = new double[problem.Sites.Length];
    }

    /// <summary>Raises the bound for these sites until it proves the best known plan, or nothing more is gained.</summary>
    /// <param name="sites">Sites still in question.</param>
    /// <param name="most">How many sites a plan may have.</param>
    /// <param name="upper">Cost of the best known plan.</param>
    /// <param name="visit">Sees the sites that the prices favour, every few steps; returns the best known cost.</param>
    /// <param name="cancel">Ends the search.</param>
    public double Raise(SiteChoice sites, int most, long upper, Func<int[], long> visit, CancellationToken cancel)
    {
        var best = double.NegativeInfinity;
        Array.Clear(_direction);
        var (pace, idle) = (FirstPace, 0);
        Array.Copy(_bestPrices, _prices, _prices.Length);
        for (var step = 0; step < MostSteps && pace > LastPace; step++)
        {
            cancel.ThrowIfCancellationRequested();
            var (bound, favoured) = Value(sites, most);
            (best, idle) = bound > best ? (Keep(bound), 0) : (best, idle + 1);
            if (step % 10 == 0)
                upper = visit(favoured);
            sites.Rule(bound, _worth, favoured, most, upper);
            if (best > upper - 1 + 1e-6 || !Move(favoured, pace * (upper - bound)))
                break;
            if (idle >= Patience)
                (pace, idle) = (pace / 1.5, 0);
        }
        return best;
    }

    private double Keep(double bound)
    {
        Array.Copy(_prices, _bestPrices, _prices.Length);
        return bound;
    }

    /// <summary>The bound at the present prices and the sites worth most at them.</summary>
    private (double Bound, int[] Favoured) Value(SiteChoice sites, int most)
    {
        foreach (var site in sites.Possible)
            _worth[site] = Worth(_problem.Sites[site]);
        var favoured = sites.Favoured(_worth, most);
        return (_problem.Constant + _prices.Sum() - favoured.Sum(site => _worth[site]), favoured);
    }

    private double Worth(SiteServices site)
    {
        var (demands, costs, worth) = (site.Demands, site.Costs, 0.0);
        for (var i = 0; i < demands.Length; i++)
            worth += Math.Max(0, _prices[demands[i]] - costs[i]);
        return worth;
    }

    /// <summary>A demand nobody serves raises its price, one served more than once lowers it; never above what leaving it unserved costs.</summary>
    private bool Move(int[] favoured, double ahead)
    {
        Array.Fill(_slope, 1);
        foreach (var site in favoured.Select(site => _problem.Sites[site]))
            for (var i = 0; i < site.Demands.Length; i++)
                if (site.Costs[i] < _prices[site.Demands[i]])
                    _slope[site.Demands[i]]--;
        var length = 0.0;
        for (var i = 0; i < _slope.Length; i++)
        {
            if (_slope[i] > 0 && _prices[i] >= _problem.Unserved[i])
                _slope[i] = 0;
            _direction[i] = _slope[i] + Momentum * _direction[i];
            length += _direction[i] * _direction[i];
        }
        if (length == 0)
            return false;
        for (var i = 0; i < _prices.Length; i++)
            _prices[i] = Math.Min(_problem.Unserved[i], _prices[i] + ahead / length * _direction[i]);
        return true;
    }
}
