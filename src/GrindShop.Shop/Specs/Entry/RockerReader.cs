namespace GrindShop.Shop.Specs.Entry;

/// <summary>Rocker ratios: 1.5 rr, 1.6:1, rocker ratio 1.7, 1.6 roller rockers, w/ 1.6s.</summary>
internal static class RockerReader
{
    private const double Least = .8, Most = 2.5;

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (Labelled(text, at) is { } labelled)
            return draft.Take(at, labelled.Next, CamField.Rocker, labelled.Value) ? labelled.Next - at : 0;
        if (Two(text, at) is { } two)
        {
            draft.Doubt(at, two, "Two rocker ratios were given; the shop reckons with one for both valves. Which?");
            return two - at;
        }
        if (Ratio(text, at) is not { } ratio || Behind(text, ratio.Next) is not { } next)
            return 0;
        draft.Take(at, next, CamField.Rocker, ratio.Value);
        return next - at;
    }

    /// <summary>"w/ 1.6 rockers" or "with 1.6" behind a lift; the figure ends behind the last word.</summary>
    public static Figure? With(EntryText text, int at)
    {
        var isWith = text.Is(at, EntryWords.With) || text[at] is { Text: "@" or "on" };
        var from = isWith ? at + 1 : at;
        if (isWith && text[from] is { Text: "/" or "a" })
            from++;
        if (text.Is(from, "a"))
            from++;
        if (Ratio(text, from) is not { } ratio || text[from].OpensLine)
            return null;
        return Behind(text, ratio.Next) is { } next ? ratio with { Next = next } : isWith ? ratio : null;
    }

    private static Figure? Labelled(EntryText text, int at)
    {
        if (!text.Is(at, EntryWords.Rocker) && !(text.Is(at, "ratio") && !text.Is(at + 1, EntryWords.Rocker)))
            return null;
        var from = at + 1;
        while (text[from] is { Text: "arm" or "arms" or "ratio" or "ratios" })
            from++;
        return Ratio(text, text.Join(from)) is { } ratio ? ratio with { Next = Behind(text, ratio.Next) ?? ratio.Next } : null;
    }

    private static int? Two(EntryText text, int at) =>
        Ratio(text, at) is { } one && text.Is(one.Next, "/") && Ratio(text, one.Next + 1) is { } other && one.Value != other.Value ? Behind(text, other.Next) : null;

    private static Figure? Ratio(EntryText text, int at) =>
        Figure.At(text, at) is { } figure && figure.Within(Least, Most) && text[at].IsNumber && !text[figure.Next - 1].Is("mm") ? figure with { Next = at + 1 } : null;

    /// <summary>Behind the words that make a number a rocker ratio; null where there are none.</summary>
    private static int? Behind(EntryText text, int at)
    {
        var next = text.Phrase(at, ":", "1") ?? text.Phrase(at, "to", "1") ?? text.Phrase(at, "'", "s") ?? (text[at] is { Text: "s", Spaced: false } ? at + 1 : at);
        var end = next > at ? next : (int?)null;
        for (var word = next; text[word] is { OpensLine: false }; word++)
        {
            if (text.Is(word, EntryWords.Rocker) || text[word] is { Text: "arm" or "arms" })
                end = word + 1;
            else if (!(text.Is(word, "ratio") || (text.Is(word, EntryWords.Roller) && text.Is(word + 1, EntryWords.Rocker))))
                break;
            else if (text.Is(word, "ratio"))
                end = word + 1;
        }
        return end;
    }
}
