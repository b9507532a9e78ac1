namespace GrindShop.Shop.Orders.Finding;

/// <summary>Marks in the words of an order what somebody asked for, and cuts long words to what stands around the first mark.</summary>
public static class HitMarks
{
    private const int Before = 60, After = 120;

    public static IReadOnlyList<HitPiece> Of(string text, IReadOnlyList<AskedTerm> terms, bool isName)
    {
        var marked = new bool[text.Length];
        foreach (var term in terms)
            MarkTerm(text, term, isName, marked);
        if (!marked.Contains(true) && isName && terms.FirstOrDefault(term => term.Near is not null) is { } near)
            MarkNearest(text, near, marked);
        return Pieces(text, marked);
    }

    private static void MarkTerm(string text, AskedTerm term, bool isName, bool[] marked)
    {
        if (term.Phone is { } digits && isName)
            MarkDigits(text, digits, marked);
        if (term.Ordinal == 0)
            return;
        if (isName)
            MarkAll(text, term.Text, false, marked);
        foreach (var piece in term.Pieces)
            MarkAll(text, piece, true, marked);
    }

    private static void MarkAll(string text, string wanted, bool onlyBeginnings, bool[] marked)
    {
        for (var at = Next(text, wanted, 0); at >= 0; at = Next(text, wanted, at + 1))
            if (!onlyBeginnings || at == 0 || !char.IsLetterOrDigit(text[at - 1]))
                Array.Fill(marked, true, at, wanted.Length);
    }

    private static int Next(string text, string wanted, int from) => from >= text.Length ? -1 : text.IndexOf(wanted, from, StringComparison.OrdinalIgnoreCase);

    /// <summary>The digits wherever other signs stand between them.</summary>
    private static void MarkDigits(string text, string digits, bool[] marked)
    {
        var places = Enumerable.Range(0, text.Length).Where(at => char.IsAsciiDigit(text[at])).ToList();
        var at = string.Concat(places.Select(place => text[place])).LastIndexOf(digits, StringComparison.Ordinal);
        if (at >= 0)
            Array.Fill(marked, true, places[at], places[at + digits.Length - 1] - places[at] + 1);
    }

    /// <summary>The word that has most pairs of letters in common with the one asked for.</summary>
    private static void MarkNearest(string text, AskedTerm term, bool[] marked)
    {
        var word = text.Split(' ').MaxBy(word => Pairs(word).Intersect(Pairs(term.Text)).Count())!;
        Array.Fill(marked, true, text.IndexOf(word, StringComparison.Ordinal), word.Length);
    }

    private static HashSet<string> Pairs(string word) => [.. word.ToLowerInvariant().Zip(word.ToLowerInvariant().Skip(1), (one, next) => $"{one}{next}")];

    private static List<HitPiece> Pieces(string text, bool[] marked)
    {
        var first = Math.Max(0, Array.IndexOf(marked, true));
        var start = first <= Before ? 0 : text.IndexOf(' ', first - Before) is var space && space >= 0 && space < first ? space + 1 : first;
        var end = text.Length - start <= Before + After ? text.Length : Math.Max(start + Before + After, marked.AsSpan(first).IndexOf(false) + first);
        var pieces = new List<HitPiece>();
        for (int from = start, to = start; from < end; from = to)
        {
            while (to < end && marked[to] == marked[from])
                to++;
            pieces.Add(new HitPiece(text[from..to], marked[from]));
        }
        return [.. start > 0 ? [new HitPiece("… ", false)] : Array.Empty<HitPiece>(), .. pieces, .. end < text.Length ? [new HitPiece(" …", false)] : Array.Empty<HitPiece>()];
    }
}
