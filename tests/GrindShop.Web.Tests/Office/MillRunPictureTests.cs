using GrindShop.Shop.Buying;
using GrindShop.Web.Drawings;
using GrindShop.Web.Office;
using Xunit;

namespace GrindShop.Web.Tests.Office;

public class MillRunPictureTests
{
    /// <summary>Without interest; the figures are worked out by hand beside the calculator's own tests: 11 blanks break even, 40 are cheapest at $174.</summary>
    private static readonly MillRunCase Plain = new()
    {
        YearlyDemand = 10,
        YearlyDeviation = 0,
        HorizonYears = 4,
        CostOfCapital = 0,
        ObsolescenceAYear = 0,
        StorageAYear = 2,
        SetupCharge = 800,
        PriceBreaks = [new(5, 180), new(40, 150)],
        LostMargin = 300,
        Alternatives = [new("DEARER", 260, 1), new("CLOSE", 262, 1), new("FAR", 2600, 1)],
    };

    [Fact]
    public void The_drawing_says_in_words_what_it_shows()
    {
        var picture = new MillRunPicture(new MillRun(Plain));
        Assert.Contains("Least $174.00 at 40 blanks.", picture.Description);
        Assert.Contains("The least run that pays is 11 blanks.", picture.Description);
        Assert.Contains("A: DEARER, $260.00. B: CLOSE, $262.00.", picture.Description);
        Assert.Equal(1, picture.Hidden);
    }

    [Fact]
    public void Letters_of_close_lines_do_not_cover_each_other()
    {
        var letters = new MillRunPicture(new MillRun(Plain)).Alternatives.Select(level => level.LetterY).ToList();
        Assert.True(letters[0] - letters[1] >= 15);
    }

    [Fact]
    public void The_level_lines_stand_at_their_cost()
    {
        var picture = new MillRunPicture(new MillRun(Plain));
        Assert.All(picture.Alternatives, level => Assert.Equal(picture.Y.At(level.Cost), level.LineY, 9));
        Assert.InRange(picture.X.At(picture.Cheapest.Quantity), PlotFrame.Left, PlotFrame.Right);
        Assert.InRange(picture.Y.At(picture.Cheapest.CostPerCam), PlotFrame.Top, PlotFrame.Bottom);
    }

    [Fact]
    public void The_verdict_names_the_decision_and_its_figures()
    {
        Assert.StartsWith("Mill 40: $174.00 a cam against $260.00 with DEARER bought as needed. It saves $3,440 in all; the least run that pays is 11 blanks, the largest 40.", MillRunWords.Verdict(new MillRun(Plain)));
        var cheap = Plain with { Alternatives = [new("CHEAP", 100, 1)] };
        Assert.StartsWith("Do not mill: no quantity comes under the $100.00 a cam of CHEAP", MillRunWords.Verdict(new MillRun(cheap)));
    }
}
