using GrindShop.Shop.Planning;
using GrindShop.Web.Office;

namespace GrindShop.Web.Tests.Office;

public class ShelfFormTests
{
    [Fact]
    public void Untouched_it_holds_the_usual_weights()
    {
        var read = new ShelfForm().Read();

        Assert.True(read.Succeeded);
        Assert.Equal(new ServingWeights(), read.Value.Weights);
    }

    [Theory]
    [InlineData("many", "badNumber")]
    [InlineData("-1", "outOfRange")]
    [InlineData("0", "outOfRange")]
    public void A_figure_that_cannot_be_is_refused(string text, string code)
    {
        var form = new ShelfForm();
        form.Weights[0].Text = text;

        Assert.Equal(code, form.Read().Refusal?.Code);
    }

    [Theory]
    [InlineData("3", 3)]
    [InlineData("4", 12)]
    [InlineData("x", 12)]
    [InlineData(null, 12)]
    public void An_address_may_ask_for_what_is_offered_only(string? asked, int expected) => Assert.Equal(expected, ShelfPage.OneOf(ShelfPage.Periods, asked, 12));
}
