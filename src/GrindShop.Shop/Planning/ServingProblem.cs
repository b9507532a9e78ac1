namespace GrindShop.Shop.Planning;

/// <summary>
/// What it costs to serve each demand from each site, in whole units of the caller's choice. One site or none serves a demand;
/// a demand that no chosen site serves costs its <see cref="Unserved"/>. Whole numbers, so that two plans compare exactly.
/// </summary>
public sealed class ServingProblem
{
    /// <summary>This site can't serve this demand.</summary>
    public const int Impossible = int.MaxValue;

    private readonly int[] _costs;

    /// <param name="weights">How often each demand occurs, not negative.</param>
    /// <param name="unserved">What one unserved occurrence of each demand costs, not negative.</param>
    /// <param name="sites">Number of sites.</param>
    public ServingProblem(int[] weights, int[] unserved, int sites)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(unserved.Length, weights.Length);
        ArgumentOutOfRangeException.ThrowIfNegative(sites);
        if (weights.Concat(unserved).Any(value => value < 0))
            throw new ArgumentOutOfRangeException(nameof(weights), "Weights and costs of unserved demands cannot be negative.");
        (Weights, Unserved, Sites) = (weights, unserved, sites);
        _costs = new int[weights.Length * sites];
        Array.Fill(_costs, Impossible);
    }

    public int[] Weights { get; }

    public int[] Unserved { get; }

    public int Demands => Weights.Length;

    public int Sites { get; }

    /// <summary>Cost of serving one occurrence, not negative, or <see cref="Impossible"/>.</summary>
    public int this[int demand, int site]
    {
        get => _costs[demand * Sites + site];
        set => _costs[demand * Sites + site] = value >= 0 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A cost cannot be negative.");
    }

    /// <summary>What an occurrence costs at best with this site or none.</summary>
    public int AtBest(int demand, int site) => Math.Min(this[demand, site], Unserved[demand]);

    /// <summary>Maximal covering: a demand is worth its weight when a chosen site covers it, so the cost is the weight left uncovered.</summary>
    public static ServingProblem Covering(int[] weights, int sites, Func<int, int, bool> covers)
    {
        var problem = new ServingProblem(weights, [.. weights.Select(_ => 1)], sites);
        for (var demand = 0; demand < weights.Length; demand++)
            for (var site = 0; site < sites; site++)
                if (covers(demand, site))
                    problem[demand, site] = 0;
        return problem;
    }

    /// <summary>The same demands with these sites only, in this order.</summary>
    public ServingProblem Of(int[] sites)
    {
        var fewer = new ServingProblem(Weights, Unserved, sites.Length);
        for (var demand = 0; demand < Demands; demand++)
            for (var site = 0; site < sites.Length; site++)
                fewer[demand, site] = this[demand, sites[site]];
        return fewer;
    }

    /// <summary>Cost of all demands with these sites open, each served at its cheapest or not at all.</summary>
    public long Cost(IReadOnlyCollection<int> open)
    {
        var sum = 0L;
        for (var demand = 0; demand < Demands; demand++)
            sum += (long)Weights[demand] * open.Aggregate(Unserved[demand], (least, site) => Math.Min(least, this[demand, site]));
        return sum;
    }
}
