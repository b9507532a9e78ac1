using CsCheck;
using GrindShop.Shop.Planning;

namespace GrindShop.Shop.Tests.Planning;

public class BatchAssignmentTests
{
    private static readonly string[] Parts = ["P1", "P2", "P3", "P4"];

    [Fact]
    public void Serves_as_many_as_the_blanks_allow_before_it_looks_at_cost()
    {
        var plan = BatchAssignment.Solve(
            [new("A", [new("P1", .010, 50), new("P2", .090, 400)]), new("B", [new("P1", .010, 50)])],
            new Dictionary<string, int> { ["P1"] = 1, ["P2"] = 1 });

        Assert.Equal([("A", "P2"), ("B", "P1")], plan.Grants.Select(grant => (grant.Key, grant.Fit.Supply)));
        Assert.Empty(plan.Left);
        Assert.Equal(450, plan.Cost);
        Assert.Equal(.100, plan.RemovalIn, 12);
    }

    [Theory]
    [InlineData(0, "P1")]
    [InlineData(4, "P2")]
    public void Removal_counts_for_its_value_in_money(int dollarsPerThousandth, string expected) =>
        Assert.Equal(expected, BatchAssignment.Solve(
            [new("A", [new("P1", .040, 90), new("P2", .020, 100)])],
            new Dictionary<string, int> { ["P1"] = 1, ["P2"] = 1 }, dollarsPerThousandth).Grants.Single().Fit.Supply);

    [Fact]
    public void The_first_in_the_list_comes_first_where_it_is_all_one() =>
        Assert.Equal(["B", "A"], Enumerable.Range(0, 2).Select(turn => BatchAssignment.Solve(
            turn == 0 ? [Same("B"), Same("A")] : [Same("A"), Same("B")], new Dictionary<string, int> { ["P1"] = 1 }).Grants.Single().Key));

    [Fact]
    public void Nothing_to_give_leaves_everybody_waiting()
    {
        Assert.Equal(["A"], BatchAssignment.Solve([Same("A")], new Dictionary<string, int> { ["P1"] = 0 }).Left);
        Assert.Equal(["A"], BatchAssignment.Solve([new("A", [])], new Dictionary<string, int> { ["P1"] = 3 }).Left);
        Assert.Empty(BatchAssignment.Solve([], new Dictionary<string, int>()).Grants);
    }

    [Fact]
    public void Senseless_questions_are_refused()
    {
        var stock = new Dictionary<string, int> { ["P1"] = 1 };
        Assert.Throws<ArgumentException>(() => BatchAssignment.Solve([Same("A"), Same("A")], stock));
        Assert.Throws<ArgumentException>(() => BatchAssignment.Solve([new("A", [new("P1", double.NaN, 1)])], stock));
        Assert.Throws<ArgumentException>(() => BatchAssignment.Solve([new("A", [new("P1", 0, 1), new("P1", 0, 2)])], stock));
    }

    [Fact]
    public void No_other_way_is_better_and_the_given_order_of_parts_does_not_matter() =>
        Gen.Select(Wishes, Gen.Int[0, 2].Array[4]).Sample((wishes, counts) =>
        {
            var stock = Parts.Zip(counts).ToDictionary(pair => pair.First, pair => pair.Second);
            var plan = BatchAssignment.Solve(wishes, stock);
            var turned = BatchAssignment.Solve([.. wishes.Select(wish => wish with { Fits = [.. wish.Fits.Reverse()] })], stock.Reverse().ToDictionary());
            Assert.Equal(plan.Grants, turned.Grants);
            Assert.All(plan.Grants.GroupBy(grant => grant.Fit.Supply), part => Assert.True(part.Count() <= stock[part.Key]));
            Assert.Equal(Best(wishes, 0, stock), (plan.Grants.Count, -plan.Cost - (decimal)Math.Round(plan.RemovalIn * 1000)));
        }, iter: 300);

    private static Gen<BatchWish[]> Wishes { get; } =
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 9]).Array[4].Array[0, 5].Select(table => table
            .Select((row, i) => new BatchWish($"C{i}", [.. row.Zip(Parts).Where(cell => cell.First.Item1 < 4).Select(cell => new BatchFit(cell.Second, cell.First.Item1 / 1000.0, cell.First.Item2))]))
            .ToArray());

    /// <summary>By trying every way: cams served, then money kept.</summary>
    private static (int Served, decimal Kept) Best(BatchWish[] wishes, int from, Dictionary<string, int> stock) =>
        from == wishes.Length ? (0, 0) : wishes[from].Fits.Where(fit => stock[fit.Supply] > 0).Select(fit =>
        {
            var rest = Best(wishes, from + 1, stock.ToDictionary(part => part.Key, part => part.Value - (part.Key == fit.Supply ? 1 : 0)));
            return (rest.Served + 1, rest.Kept - fit.Cost - (decimal)(fit.RemovalIn * 1000));
        }).Append(Best(wishes, from + 1, stock)).Max();

    private static BatchWish Same(string key) => new(key, [new("P1", .010, 50)]);
}
