using System.Globalization;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Specs;

public class FieldRangeTests
{
    public static TheoryData<string> Paths => [.. NumberField.All.Select(number => number.Path)];

    [Fact]
    public void Every_number_of_a_specification_has_a_range()
    {
        static int Numbers(Type type) => type.GetProperties().Count(property => property.PropertyType == typeof(double?));

        Assert.Equal(Numbers(typeof(CamSpec)) + 2 * Numbers(typeof(LobeWish)), NumberField.All.Select(field => field.Path).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Both_ends_of_the_range_and_a_blank_are_taken(string path)
    {
        var field = NumberField.Of(path);

        Assert.All(new double?[] { field.Range.Least, field.Range.Most, null }, value => Assert.Empty(Problems(field, value)));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Anything_outside_is_refused_by_field_unit_and_range(string path)
    {
        var field = NumberField.Of(path);
        double[] outside = [Math.BitDecrement(field.Range.Least), Math.BitIncrement(field.Range.Most), double.NaN, double.PositiveInfinity, double.NegativeInfinity];

        foreach (var value in outside)
        {
            var problem = Assert.Single(Problems(field, value));
            Assert.Equal((path, field.Range.Least, field.Range.Most), (problem.Field, problem.Least, problem.Most));
            Assert.Contains(field.Range.Name, problem.Message, StringComparison.Ordinal);
            Assert.Contains(field.Range.Unit, problem.Message, StringComparison.Ordinal);
            Assert.Contains(field.Range.Least.ToString(CultureInfo.InvariantCulture), problem.Message, StringComparison.Ordinal);
            Assert.Contains(field.Range.Most.ToString(CultureInfo.InvariantCulture), problem.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Several_wrong_numbers_are_all_named()
    {
        var spec = NumberField.All.Aggregate(new CamSpec(), (spec, field) => field.With(spec, double.NaN));

        Assert.Equal(NumberField.All.Select(field => field.Path).Order(), SpecCheck.Problems(spec, null).Select(problem => problem.Field).Order());
    }

    private static IReadOnlyList<FieldProblem> Problems(NumberField field, double? value) => SpecCheck.Problems(field.With(new CamSpec(), value), null);
}
