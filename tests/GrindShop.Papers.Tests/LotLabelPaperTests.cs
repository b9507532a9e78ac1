using GrindShop.Shop.Blanks;
using UglyToad.PdfPig.Tokens;

namespace GrindShop.Papers.Tests;

public class LotLabelPaperTests
{
    private const string Url = "http://shop.example:8080/lots/L466";

    [Fact]
    public void Says_what_it_is_how_many_came_and_where_it_lies_on_four_by_two_inches()
    {
        var paper = new PaperText(Print(Lot("Rack C, shelf 4")));

        Assert.Equal((4 * 72, 2 * 72), (Math.Round(paper.Pages.Single().Width), Math.Round(paper.Pages.Single().Height)));
        foreach (var text in new[] { "L466", "RV8R-862-11", "Heat 77120", "12 blanks received", "Shelf Rack C, shelf 4" })
            Assert.Contains(text, paper.All, StringComparison.Ordinal);
        Assert.DoesNotContain("QUARANTINE", paper.All, StringComparison.Ordinal);
        Assert.Empty(paper.Overlaps());
        // Readers stumble over an empty content stream, so the page has a single one.
        Assert.IsType<IndirectReferenceToken>(paper.Pages.Single().Dictionary.Data["Contents"]);
    }

    [Fact]
    public void A_lot_that_is_held_back_says_so()
    {
        var lot = Lot("B1-4");
        Assert.True(lot.Quarantine("Soft nose on the sample.", "Owner", Scene.Now).Succeeded);
        Assert.Contains("QUARANTINE", new PaperText(Print(lot)).All, StringComparison.Ordinal);
    }

    [Fact]
    public void The_longest_place_stays_on_the_label()
    {
        var paper = new PaperText(Print(Lot(new string('W', 40))));
        Assert.All(paper.Words[0], word => Assert.InRange(word.BoundingBox.Right, 0, 4 * 72));
    }

    private static byte[] Print(BlankLot lot) => LotLabelPaper.Print(new LotLabelFacts(lot, Scene.Shop, Url, Scene.Now));

    private static BlankLot Lot(string place) =>
        BlankLot.Receive(new Scene().Part(), "L466", place, 12, "Owner", Scene.Now, new LotFacts { HeatNumber = "77120" });
}
