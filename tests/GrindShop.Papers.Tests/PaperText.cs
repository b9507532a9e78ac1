using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace GrindShop.Papers.Tests;

/// <summary>A printed paper read back by another library.</summary>
internal sealed class PaperText
{
    public PaperText(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        (Title, Author) = (document.Information.Title, document.Information.Author);
        Pages = [.. document.GetPages()];
        Words = [.. Pages.Select(page => page.GetWords().ToList())];
        Lines = [.. Words.SelectMany(words => LinesOf(words))];
    }

    public string? Title { get; }

    public string? Author { get; }

    public IReadOnlyList<Page> Pages { get; }

    /// <summary>The words of each page.</summary>
    public IReadOnlyList<List<Word>> Words { get; }

    /// <summary>Words of one baseline, joined by blanks.</summary>
    public IReadOnlyList<string> Lines { get; }

    public string All => string.Join('\n', Lines);

    /// <summary>The lines of a strip of the first page, in points from its left edge.</summary>
    public IReadOnlyList<string> Strip(double from, double to) =>
        LinesOf(Words[0].Where(word => word.BoundingBox.Left >= from - 1 && word.BoundingBox.Right <= to + 1));

    /// <summary>Pairs of words that print over each other.</summary>
    public IEnumerable<string> Overlaps() =>
        from words in Words
        from i in Enumerable.Range(0, words.Count)
        from j in Enumerable.Range(i + 1, words.Count - i - 1)
        where Meet(words[i].BoundingBox, words[j].BoundingBox)
        select $"{words[i].Text} / {words[j].Text}";

    private static List<string> LinesOf(IEnumerable<Word> words) =>
    [
        .. from word in words
           group word by Math.Round(word.Letters[0].StartBaseLine.Y, 1) into line
           orderby line.Key descending
           select string.Join(' ', line.OrderBy(word => word.BoundingBox.Left).Select(word => word.Text)),
    ];

    private static bool Meet(PdfRectangle a, PdfRectangle b)
    {
        const double touch = .3;
        return a.Left < b.Right - touch && b.Left < a.Right - touch && a.Bottom < b.Top - touch && b.Bottom < a.Top - touch;
    }
}
