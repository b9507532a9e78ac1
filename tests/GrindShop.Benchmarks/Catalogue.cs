using GrindShop.Lobes;

namespace GrindShop.Benchmarks;

/// <summary>Invented blanks, every one different.</summary>
internal static class Catalogue
{
    public static Follower Roller { get; } = Follower.Roller(0.375);

    public static PolynomialLaw Lobe(double at050, double lift) => PolynomialLaw.Solve(new(lift, at050, at050 + 50, 0.006));

    public static TurnedBlank[] Blanks(int count, int seed)
    {
        var random = new Random(seed);
        var figures = Enumerable.Range(0, count)
            .Select(_ => (At050: 210 + 40 * random.NextDouble(), Lift: 0.30 + 0.08 * random.NextDouble(), Turn: 6 * random.NextDouble() - 3))
            .ToArray();
        return [.. figures.AsParallel().AsOrdered().Select(f =>
            new TurnedBlank(BlankOutline.Milled(Lobe(f.At050, f.Lift), Roller, 1.25, 0.040), f.Turn))];
    }
}
