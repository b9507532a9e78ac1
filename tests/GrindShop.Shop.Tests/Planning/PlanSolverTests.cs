using CsCheck;
using GrindShop.Shop.Planning;

namespace GrindShop.Shop.Tests.Planning;

public class PlanSolverTests
{
    /// <summary>J. E. Beasley, A note on solving large p-median problems, European Journal of Operational Research 21 (1985) 270-273; values of the OR-Library's file of optima.</summary>
    [LibraryTheory]
    [InlineData("pmed1.txt", 5, 5819)]
    [InlineData("pmed2.txt", 10, 4093)]
    public void Published_p_median_problems_have_their_published_optimum(string file, int sites, long optimum)
    {
        var plan = PlanSolver.Solve(PublishedMedian.Read(file, lastCounts: true), sites)[^1];

        Assert.Equal((optimum, optimum, sites), (plan.Cost, plan.Bound, plan.Sites.Count));
    }

    /// <summary>Proved by enumeration; the published value belongs to the last of duplicate edges, the smaller of them gives less.</summary>
    [LibraryTheory]
    [InlineData(true, 5819)]
    [InlineData(false, 5718)]
    public void The_reading_of_duplicate_edges_decides_the_first_problem(bool lastCounts, long optimum)
    {
        var plan = PlanSolver.Solve(PublishedMedian.Read("pmed1.txt", lastCounts), 5)[^1];

        Assert.Equal(optimum, plan.Cost);
        Assert.True(plan.Proven);
        if (lastCounts)
            Assert.Equal([7, 13, 65, 91, 99], plan.Sites.Select(site => site + 1));
    }

    [Fact]
    public void Small_problems_get_the_plan_that_enumeration_finds() => Problems.Sample(problem =>
    {
        foreach (var plan in PlanSolver.Solve(problem, problem.Sites))
        {
            Assert.Equal(Best(problem, plan.Most), plan.Cost);
            Assert.Equal(plan.Cost, problem.Cost([.. plan.Sites]));
            Assert.True(plan.Proven && plan.Sites.Count <= plan.Most);
        }
    }, iter: 200);

    [Fact]
    public void Covering_finds_the_greatest_weight_that_sites_can_cover() =>
        Gen.Select(Gen.Bool.Array[7].Array[1, 20], Gen.Int[0, 5].Array[20]).Sample((covers, weights) =>
        {
            var problem = ServingProblem.Covering(weights[..covers.Length], 7, (demand, site) => covers[demand][site]);
            Assert.All(PlanSolver.Solve(problem, 7), plan => Assert.Equal((Best(problem, plan.Most), true), (plan.Cost, plan.Proven)));
        }, iter: 150);

    [Fact]
    public void More_sites_never_cost_more_and_the_same_question_gets_the_same_answer() => Problems.Sample(problem =>
    {
        var plans = PlanSolver.Solve(problem, 6);
        Assert.Equal(plans.Select(plan => plan.Cost).OrderDescending(), plans.Select(plan => plan.Cost));
        Assert.Equal(plans.SelectMany(plan => plan.Sites), PlanSolver.Solve(problem, 6).SelectMany(plan => plan.Sites));
    }, iter: 60);

    [Fact]
    public void A_larger_problem_is_proven_too()
    {
        var random = new Random(5);
        var (demands, sites) = (Points(120), Points(60));
        var problem = new ServingProblem([.. demands.Select(_ => 1 + random.Next(3))], [.. demands.Select(_ => 400)], 60);
        for (var demand = 0; demand < 120; demand++)
            for (var site = 0; site < 60; site++)
                if (Away(demands[demand], sites[site]) is var away && away < 400)
                    problem[demand, site] = (int)away;

        Assert.All(PlanSolver.Solve(problem, 12), plan => Assert.True(plan.Proven, $"{plan.Most} sites: {plan.Cost} against {plan.Bound}"));

        (double X, double Y)[] Points(int count) => [.. Enumerable.Range(0, count).Select(_ => (1000 * random.NextDouble(), 1000 * random.NextDouble()))];
        static double Away((double X, double Y) one, (double X, double Y) other) => double.Hypot(one.X - other.X, one.Y - other.Y);
    }

    [Fact]
    public void Without_demand_or_without_a_site_that_serves_nothing_is_chosen()
    {
        var idle = PlanSolver.Solve(new ServingProblem([], [], 3), 2);
        var hopeless = PlanSolver.Solve(new ServingProblem([2, 1], [10, 5], 3), 2);

        Assert.All(idle, plan => Assert.Equal((0, 0L, true), (plan.Sites.Count, plan.Cost, plan.Proven)));
        Assert.All(hopeless, plan => Assert.Equal((0, 25L, true), (plan.Sites.Count, plan.Cost, plan.Proven)));
    }

    [Fact]
    public void Progress_is_told_and_work_can_be_ended()
    {
        var heard = new Heard();
        var problem = new ServingProblem([1], [5], 2) { [0, 0] = 1 };
        PlanSolver.Solve(problem, 4, heard);

        Assert.Equal([.25, .5, .75, 1], heard.Shares);
        Assert.ThrowsAny<OperationCanceledException>(() => PlanSolver.Solve(problem, 4, cancel: new CancellationToken(true)));
    }

    private sealed class Heard : IProgress<double>
    {
        public List<double> Shares { get; } = [];

        public void Report(double value) => Shares.Add(value);
    }

    private static Gen<ServingProblem> Problems { get; } =
        Gen.Select(Gen.Int[0, 30].Array[6].Array[1, 14], Gen.Int[0, 4].Array[14], Gen.Int[0, 25].Array[14]).Select((costs, weights, unserved) =>
        {
            var problem = new ServingProblem(weights[..costs.Length], unserved[..costs.Length], 6);
            for (var demand = 0; demand < costs.Length; demand++)
                for (var site = 0; site < 6; site++)
                    problem[demand, site] = costs[demand][site] > 24 ? ServingProblem.Impossible : costs[demand][site];
            return problem;
        });

    private static long Best(ServingProblem problem, int most) => Enumerable.Range(0, 1 << problem.Sites)
        .Where(set => int.PopCount(set) <= most)
        .Min(set => problem.Cost([.. Enumerable.Range(0, problem.Sites).Where(site => (set >> site & 1) == 1)]));
}
