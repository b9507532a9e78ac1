using System.Text;
using CsCheck;

namespace GrindShop.Papers.Tests;

public class TextFitTests
{
    private static double Measure(string text) => text.Length;

    [Fact]
    public void Clean_makes_one_line_of_printable_characters() =>
        Assert.Equal("one two\ufffd three", TextFit.Clean(" one\r\n\ttwo\ud83c \u200b\u0007three\n"));

    [Fact]
    public void Clean_joins_a_letter_and_its_accent() => Assert.Equal("é", TextFit.Clean("e\u0301"));

    [Theory]
    [InlineData("short", 10, "short")]
    [InlineData("rather long", 8, "rather…")]
    [InlineData("exactly10!", 10, "exactly10!")]
    public void Clip_ends_with_an_ellipsis_where_it_cuts(string text, double width, string expected) =>
        Assert.Equal(expected, TextFit.Clip(text, width, Measure));

    [Fact]
    public void Wrap_breaks_at_blanks_and_clips_the_last_line() =>
        Assert.Equal(["grind all", "lobes to", "the tabl…"], TextFit.Wrap("grind all lobes to the table then stop", 9, 3, Measure));

    [Fact]
    public void Wrap_keeps_to_the_width_and_loses_nothing_while_there_are_lines_left() =>
        Gen.Select(Gen.String[Gen.Char["abc  de"], 0, 120], Gen.Int[3, 30]).Sample((text, width) =>
        {
            var clean = TextFit.Clean(text);
            var lines = TextFit.Wrap(clean, width, 1000, Measure);
            return lines.All(line => line.Length <= width) && string.Concat(lines).Replace(" ", "") == clean.Replace(" ", "");
        });

    [Fact]
    public void The_typeface_knows_its_characters()
    {
        Assert.All("Aé.…•–ŁłşÅж", letter => Assert.True(PaperFonts.Coverage.Has(new Rune(letter))));
        Assert.False(PaperFonts.Coverage.Has(new Rune('山')));
    }
}
