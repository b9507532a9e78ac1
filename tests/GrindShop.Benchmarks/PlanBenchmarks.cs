using BenchmarkDotNet.Attributes;
using GrindShop.Shop.Planning;

namespace GrindShop.Benchmarks;

/// <summary>A shelf plan as large as it may get: 2,000 wishes, 400 blanks, the best 1 to 20 part numbers; on two cores.</summary>
public class PlanBenchmarks
{
    private readonly PlanScenario scenario = new(2_000, 400);
    private ServingProblem problem = null!;

    [GlobalSetup]
    public void Prepare() => problem = Costs();

    [Benchmark]
    public ServingProblem Costs() => new ServingMatrix(scenario.Family, scenario.Rules, new ServingWeights()).Of(scenario.Specs, scenario.Quantities, scenario.Blanks);

    [Benchmark]
    public IReadOnlyList<SitePlan> Shelves() => PlanSolver.Solve(problem, ShelfCase.Most);

    [Benchmark]
    public IReadOnlyList<SitePlan> Whole() => PlanSolver.Solve(Costs(), ShelfCase.Most);
}
