using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Planning;

/// <summary>Serving costs of many specifications of one family from its blanks. Pure; works on up to two cores.</summary>
public sealed class ServingMatrix(EngineFamily family, ShopRules rules, ServingWeights weights)
{
    /// <summary>Costs are kept in whole cents.</summary>
    public const int CentsPerDollar = 100;

    private const int Cores = 2;
    private readonly LobeLibrary _lobes = new(weights.MostDurationCrankDeg);

    /// <summary>One specification from one blank, with everything that its cost is made of.</summary>
    public Serving One(GrindSpec grind, PreparedBlank blank) =>
        Allowed(grind, blank.Part) ? new SpecServing(grind, family, weights, _lobes).From(blank, rules) : default;

    /// <param name="specs">The specifications, all of this family.</param>
    /// <param name="quantities">How often each is wanted, in any unit the caller keeps to.</param>
    /// <param name="blanks">Blanks of this family.</param>
    /// <param name="progress">Hears the share done, 0 to 1.</param>
    /// <param name="cancel">Ends the work.</param>
    public ServingProblem Of(
        IReadOnlyList<GrindSpec> specs, int[] quantities, IReadOnlyList<PreparedBlank> blanks, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var problem = new ServingProblem(quantities, [.. specs.Select(_ => Cents(weights.LostCam))], blanks.Count);
        var allowed = specs.GroupBy(Asks).ToDictionary(alike => alike.Key, alike => blanks.Select(blank => Allowed(alike.First(), blank.Part)).ToArray());
        var done = 0;
        Parallel.For(0, specs.Count, new ParallelOptions { MaxDegreeOfParallelism = Cores, CancellationToken = cancel }, demand =>
        {
            Fill(problem, demand, specs[demand], blanks, allowed[Asks(specs[demand])], cancel);
            progress?.Report(Interlocked.Increment(ref done) / (double)specs.Count);
        });
        return problem;
    }

    private void Fill(ServingProblem problem, int demand, GrindSpec grind, IReadOnlyList<PreparedBlank> blanks, bool[] allowed, CancellationToken cancel)
    {
        var serving = new SpecServing(grind, family, weights, _lobes);
        for (var site = 0; site < blanks.Count; site++)
        {
            cancel.ThrowIfCancellationRequested();
            if (allowed[site] && serving.From(blanks[site], rules) is { Kind: not ServingKind.Impossible } possible)
                problem[demand, site] = Cents(possible.Dollars);
        }
    }

    /// <summary>What the rules of the trade ask of a specification; the same asks get the same answer from every blank.</summary>
    private static (LifterType, CamSide?, string, DistributorGear?, bool?) Asks(GrindSpec grind) =>
        (grind.Lifter, grind.Side, grind.FiringOrder, grind.DistributorGear, grind.MechanicalFuelPump);

    private bool Allowed(GrindSpec grind, BlankPart part) =>
        part.EngineFamily.Code == family.Code
            && LobesStayPut(grind, part)
            && !BlankObjections.Rules(grind, family, part, rules).Any()
            && rules.Gear(family, part.Gear, grind.DistributorGear).Verdict != GearVerdict.No;

    /// <summary>Another firing order is planned on lobes that were cut for it, or that it leaves where they are; what could be turned into place is not counted.</summary>
    private bool LobesStayPut(GrindSpec grind, BlankPart part) => LobeTurns.Of(grind, family, part) is { Moved.Count: 0, Unknown: null };

    private static int Cents(double dollars) => (int)Math.Round(dollars * CentsPerDollar);
}
