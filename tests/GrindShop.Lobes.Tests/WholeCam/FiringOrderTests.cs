namespace GrindShop.Lobes.Tests;

public class FiringOrderTests
{
    [Theory]
    [InlineData("1-8-4-3-6-5-7-2")]
    [InlineData("1, 8, 4, 3, 6, 5, 7, 2")]
    [InlineData(" 1 8 4 3 6 5 7 2 ")]
    [InlineData("1/8/4/3/6/5/7/2")]
    public void An_order_reads_however_it_is_separated(string text) =>
        Assert.Equal("1-8-4-3-6-5-7-2", FiringOrder.Parse(text, 8).Required().ToString());

    [Fact]
    public void Nothing_is_not_an_order()
    {
        Assert.IsType<FiringOrderProblem.Nothing>(FiringOrder.Parse(null, 8).Problem);
        Assert.IsType<FiringOrderProblem.Nothing>(FiringOrder.Parse(" - ", 8).Problem);
    }

    [Theory]
    [InlineData("1-3-x-2", "x")]
    [InlineData("1-3-5-2", "5")]
    [InlineData("1-3-0-2", "0")]
    [InlineData("1-3-99999999999-2", "99999999999")]
    public void What_is_no_cylinder_is_named(string text, string word) =>
        Assert.Equal(new FiringOrderProblem.NotACylinder(word, 4), FiringOrder.Parse(text, 4).Problem);

    [Theory]
    [InlineData("1-3-3-2")]
    [InlineData("1-3-4-2-3")]
    public void A_repeated_cylinder_is_named(string text) =>
        Assert.Equal(new FiringOrderProblem.Repeated(3), FiringOrder.Parse(text, 4).Problem);

    [Fact]
    public void Missing_cylinders_are_named()
    {
        var problem = Assert.IsType<FiringOrderProblem.Missing>(FiringOrder.Parse("1-5-3", 6).Problem);
        Assert.Equal([2, 4, 6], problem.Cylinders);
        Assert.Equal("The firing order has 3 of 6 cylinders; missing: 2, 4, 6.", problem.ToString());
    }

    [Fact]
    public void A_swap_exchanges_two_places() =>
        Assert.Equal("1-8-7-3-6-5-4-2", FiringOrder.Parse("1-8-4-3-6-5-7-2", 8).Required().Swapped(4, 7).ToString());

    [Theory]
    [InlineData("3-4-2-1", true)]
    [InlineData("1-3-4-2", true)]
    [InlineData("1-2-4-3", false)]
    public void A_sequence_may_start_anywhere(string other, bool same) =>
        Assert.Equal(same, FiringOrder.Parse("1-3-4-2", 4).Required().SameSequenceAs(FiringOrder.Parse(other, 4).Required()));

    [Fact]
    public void Nonsense_is_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("cylinders", () => FiringOrder.Parse("1", 0));
        Assert.Throws<ArgumentOutOfRangeException>("other", () => FiringOrder.Parse("1-2", 2).Required().Swapped(1, 3));
    }
}
