using GrindShop.Web.Public;

namespace GrindShop.Web.Tests.Public;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData(".335", .335)]
    [InlineData("0,335", .335)]
    [InlineData(" 0.335 in", .335)]
    [InlineData("222°", 222)]
    [InlineData("222 deg.", 222)]
    [InlineData("-2", -2)]
    [InlineData("335", 335)]
    [InlineData("1.", 1)]
    public void Reads_numbers_as_people_type_them(string text, double expected)
    {
        Assert.True(NumberText.TryRead(text, out var value));
        Assert.Equal(expected, value);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    public void A_blank_is_no_number_and_no_mistake(string? text)
    {
        Assert.True(NumberText.TryRead(text, out var value));
        Assert.Null(value);
    }

    [Theory]
    [InlineData("abc")]
    [InlineData("NaN")]
    [InlineData("1e9")]
    [InlineData("1.2.3")]
    [InlineData("1,234.5")]
    [InlineData(".")]
    [InlineData("∞")]
    public void Anything_else_is_not_guessed(string text) => Assert.False(NumberText.TryRead(text, out _));
}
