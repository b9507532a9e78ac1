namespace GrindShop.Shop.Planning;

/// <summary>Which sites can still belong to a plan better than the best known one: some must, some can't, the rest are in question.</summary>
internal sealed class SiteChoice
{
    private readonly bool[] _closed, _open;

    public SiteChoice(int sites)
    {
        (_closed, _open) = (new bool[sites], new bool[sites]);
        Possible = [.. Enumerable.Range(0, sites)];
    }

    public int[] Possible { get; private set; }

    public IEnumerable<int> Open => Possible.Where(site => _open[site]);

    public IEnumerable<int> InQuestion => Possible.Where(site => !_open[site]);

    /// <summary>The sites worth most, those that must be open first.</summary>
    public int[] Favoured(double[] worth, int most) =>
        [.. Possible.OrderByDescending(site => _open[site]).ThenByDescending(site => worth[site]).ThenBy(site => site).Take(most)];

    /// <summary>Rules by reduced cost: forcing a site in or out that would lift the bound to the best known cost settles the site.</summary>
    public void Rule(double bound, double[] worth, int[] favoured, int most, long upper)
    {
        const double tolerance = 1e-6;
        if (favoured.Length < most || Possible.Length <= most)
            return;
        var last = favoured.Where(site => !_open[site]).Select(site => worth[site]).DefaultIfEmpty(double.PositiveInfinity).Min();
        var next = Possible.Except(favoured).Max(site => worth[site]);
        foreach (var site in favoured)
            _open[site] |= bound + worth[site] - next > upper - 1 + tolerance * (1 + Math.Abs(bound) * 1e-6);
        foreach (var site in Possible.Except(favoured))
            _closed[site] |= bound + last - worth[site] > upper - 1 + tolerance * (1 + Math.Abs(bound) * 1e-6);
        if (Array.Exists(Possible, site => _closed[site]))
            Possible = Array.FindAll(Possible, site => !_closed[site]);
    }
}
