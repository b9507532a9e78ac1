namespace GrindShop.Papers.Tests;

public class SlipPaperTests
{
    private const string Url = "http://shop.example:8080/track/SECRETTRACKING";

    [Fact]
    public void Names_the_order_and_the_code_with_which_it_is_followed_on_four_by_three_inches()
    {
        var paper = Print(new Scene());

        Assert.Equal((4 * 72, 3 * 72), (Math.Round(paper.Pages.Single().Width), Math.Round(paper.Pages.Single().Height)));
        foreach (var text in new[] { "Millrace Cam Grinding", "(555) 555-0100", "C1042", "Harrow Lane Engines", "New grind, RV8-R", "SECRE TTRAC KING", "http://shop.example:8080/track" })
            Assert.Contains(text, paper.All, StringComparison.Ordinal);
        Assert.Empty(paper.Overlaps());
    }

    [Fact]
    public void The_longest_name_stays_clear_of_the_code()
    {
        var paper = Print(new Scene { Customer = new string('W', 100) });

        Assert.All(paper.Words[0], word => Assert.InRange(word.BoundingBox.Right, 0, 4 * 72));
        Assert.Empty(paper.Overlaps());
    }

    private static PaperText Print(Scene scene) => new(SlipPaper.Print(new SlipFacts(scene.Job().Order, Scene.Shop, Url, Scene.Now)));
}
