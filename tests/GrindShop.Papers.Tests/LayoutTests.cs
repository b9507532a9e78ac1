namespace GrindShop.Papers.Tests;

/// <summary>Whatever people type, the papers stay legible.</summary>
public class LayoutTests
{
    private static readonly Scene Hostile = new()
    {
        StepsDone = 8,
        Customer = string.Concat(Enumerable.Repeat("Wołodymyr Ştefănescu-Ångström 山田太郎 \ud83c\udfc1 شركة ", 4)),
        Reference = new string('W', 100),
        Notes = string.Concat(Enumerable.Repeat("Needs to clear a stroker crank;\n\tcall \ud83c first. ", 80)),
    };

    private static readonly Dictionary<string, byte[]> Papers = new()
    {
        { "traveler", TravelerPaper.Print(new Scene().Traveler()) },
        { "traveler, hardened blank", TravelerPaper.Print(new Scene { Soft = false, Spec = Scene.HydraulicFlat }.Traveler()) },
        { "traveler, hostile", TravelerPaper.Print(Hostile.Traveler()) },
        { "traveler, long address", TravelerPaper.Print(new Scene().Traveler() with { FloorUrl = "https://" + new string('a', 300) + ".example/floor/jobs/J1042" }) },
        { "traveler, full-round blank", TravelerPaper.Print(new Scene { FullRound = true }.Traveler()) },
        { "card", SpecCardPaper.Print(new Scene().SpecCard()) },
        { "card, hostile", SpecCardPaper.Print(Hostile.SpecCard()) },
        { "card, nothing given", SpecCardPaper.Print(new Scene { Reference = null, Soft = false, Spec = Scene.HydraulicFlat }.SpecCard()) },
    };

    public static TheoryData<string> Names => [.. Papers.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_words_print_over_each_other_and_all_stand_inside_the_margins(string name)
    {
        var paper = new PaperText(Papers[name]);
        Assert.Empty(paper.Overlaps());
        Assert.Single(paper.Pages);
        Assert.All(paper.Words[0], word => Assert.True(word.BoundingBox is { Left: > 33, Right: < 578, Bottom: > 18, Top: < 765 }, $"{name}: {word.Text}"));
    }

    [Fact]
    public void A_caution_about_the_gear_is_never_cut_short_but_takes_a_second_page_if_it_must()
    {
        var scene = new Scene { GearReason = string.Concat(Enumerable.Repeat("Look at the teeth early. ", 70)) + "And keep it oiled." };
        foreach (var paper in new[] { new PaperText(TravelerPaper.Print(scene.Traveler())), new PaperText(SpecCardPaper.Print(scene.SpecCard())) })
        {
            Assert.Contains("keep it oiled.", paper.All);
            Assert.Contains("page 2 of 2", paper.All);
            Assert.Empty(paper.Overlaps());
        }
    }

    [Fact]
    public void Foreign_letters_print_and_unknown_ones_have_a_stand_in()
    {
        var text = new PaperText(TravelerPaper.Print(Hostile.Traveler())).All;
        Assert.Contains("Wołodymyr", text);
        Assert.Contains("????", text);
    }

    [Fact]
    public void The_same_job_printed_again_at_the_same_moment_looks_the_same()
    {
        PaperText one = new(TravelerPaper.Print(new Scene().Traveler())), other = new(TravelerPaper.Print(new Scene().Traveler()));
        Assert.Equal(one.Pages[0].Letters.Select(Place), other.Pages[0].Letters.Select(Place));
        static (string, double, double) Place(UglyToad.PdfPig.Content.Letter letter) => (letter.Value, letter.StartBaseLine.X, letter.StartBaseLine.Y);
    }

    [Fact]
    public void Many_papers_at_once_come_out_alike()
    {
        var facts = new Scene().SpecCard();
        var expected = new PaperText(SpecCardPaper.Print(facts)).All;
        var texts = new string[16];
        Parallel.For(0, texts.Length, i => texts[i] = new PaperText(SpecCardPaper.Print(facts)).All);
        Assert.All(texts, text => Assert.Equal(expected, text));
    }
}
