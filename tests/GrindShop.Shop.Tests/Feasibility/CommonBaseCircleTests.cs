using GrindShop.Lobes;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Tests.Feasibility;

public sealed class CommonBaseCircleTests
{
    [Fact]
    public void One_base_circle_for_both_lobes_is_the_smaller_one_where_the_other_lobe_keeps_its_case_on_it()
    {
        var wish = Specs.Wishes.Street;
        var answer = Shelf.Judge(Specs.Wishes.Grind(wish));
        var fitting = answer.Blanks.Where(fit => fit.Fits).ToList();

        Assert.NotEmpty(fitting);
        foreach (var fit in fitting.Where(fit => fit.CommonBaseCircleDiameterIn is not null))
            Assert.Equal(Math.Min(fit.IntakeBaseCircleDiameterIn!.Value, fit.ExhaustBaseCircleDiameterIn!.Value), fit.CommonBaseCircleDiameterIn!.Value);
        Assert.Contains(fitting, fit => fit.CommonBaseCircleDiameterIn is not null);
        Assert.All(answer.Blanks.Where(fit => !fit.Fits), fit => Assert.Null(fit.CommonBaseCircleDiameterIn));
    }
}
