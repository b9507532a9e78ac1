namespace GrindShop.Shop.Specs.Entry;

/// <summary>Diameters: of the roller or foot (.842 foot, .750 wheel, .875 lifters) and the largest base circle (bc max .950, small base circle 900).</summary>
internal static class SizeReader
{
    private const double LeastLifterIn = .65, MostLifterIn = 1.25, LeastFollowerIn = .2, MostFollowerIn = 2.5, LeastBaseIn = .3, MostBaseIn = 3.2;

    public static int Read(EntryDraft draft, int at) => Base(draft, at) ?? Follower(draft, at) ?? 0;

    private static int? Follower(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (FollowerLabel(text, at) is { } label && Size(text, text.Join(label), LeastFollowerIn, MostFollowerIn) is { } behind && !text[behind.Next - 1].OpensLine)
            return draft.Take(at, behind.Next, CamField.Follower, behind.LengthIn) ? behind.Next - at : null;
        if (Size(text, at, LeastFollowerIn, MostFollowerIn) is not { } size || BehindFollower(text, size) is not { } to)
            return null;
        draft.Take(at, to, CamField.Follower, size.LengthIn);
        return to - at;
    }

    /// <summary>"wheel", "foot" and "lifter dia" before the figure.</summary>
    private static int? FollowerLabel(EntryText text, int at)
    {
        if (text.Is(at, EntryWords.Wheel) || text.Is(at, EntryWords.Foot))
            return text.Is(at + 1, EntryWords.Diameter) ? at + 2 : at + 1;
        return (text.Is(at, EntryWords.Lifter) || text.Is(at, EntryWords.Roller)) && text.Is(at + 1, EntryWords.Diameter) ? at + 2 : null;
    }

    private static int? BehindFollower(EntryText text, Figure size)
    {
        var at = size.Next;
        var sized = text.Is(at, EntryWords.Diameter);
        if (sized)
            at++;
        if (text.Is(at, EntryWords.Roller) && (text.Is(at + 1, EntryWords.Wheel) || sized))
            at++;
        if (text[at - 1].OpensLine && at > size.Next)
            return null;
        if (text.Is(at, EntryWords.Wheel) || text.Is(at, EntryWords.Foot))
            return at + 1;
        if (text.Is(at, EntryWords.Lifter) && !text.Is(at + 1, EntryWords.Lift) && (sized || (!size.IsWhole && size.Within(LeastLifterIn, MostLifterIn))))
            return at + 1;
        return sized && text.Is(at - 1, EntryWords.Roller) ? at : null;
    }

    private static int? Base(EntryDraft draft, int at)
    {
        var text = draft.Text;
        var start = BehindLimit(text, at);
        if (BaseWord(text, start) is { } word)
        {
            var from = text.Join(BehindLimit(text, word));
            return Size(text, from, LeastBaseIn, MostBaseIn) is { } size ? TakeBase(draft, at, BehindLimit(text, size.Next), size, IsLimit(text, at, start) || from > text.Join(word)) : null;
        }
        if (Size(text, at, LeastBaseIn, MostBaseIn) is not { } before || BaseWord(text, BehindLimit(text, before.Next)) is not { } behind || text[before.Next].OpensLine)
            return null;
        var to = BehindLimit(text, behind);
        return TakeBase(draft, at, to, before, to > behind || BehindLimit(text, before.Next) > before.Next);
    }

    private static int? TakeBase(EntryDraft draft, int from, int to, Figure size, bool isLimit)
    {
        if (draft.Take(from, to, CamField.BaseCircle, size.LengthIn) && !isLimit)
            draft.Doubt(from, to, $"Is {EntrySay.In(size.LengthIn)} the largest base circle that the engine leaves room for? It is taken so.");
        return to - from;
    }

    private static bool IsLimit(EntryText text, int from, int to) => to > from || text.Is(from - 1, "max");

    private static int? BaseWord(EntryText text, int at) => text.Is(at, "bc") ? at + 1
        : text.Phrase(at, "base", "circle") ?? (text.Is(at, "base") && text.Is(at - 1, "small") ? at + 1 : null);

    private static int BehindLimit(EntryText text, int at)
    {
        while (text[at] is { Text: "max" or "maximum" or "largest" or "limit" or "small" or "reduced" or "under" or "below" or "<" or "=" or "≤", OpensLine: false } || (text[at] is { Text: "max" or "maximum" or "largest" or "small" or "reduced" }))
            at++;
        return at;
    }

    private static Figure? Size(EntryText text, int at, double least, double most) =>
        Figure.At(text, at) is { } figure && figure.LengthIn >= least && figure.LengthIn <= most && !text.Is(figure.Next, "/") && (!figure.IsWhole || figure.Value >= least * 1000) ? figure : null;
}
