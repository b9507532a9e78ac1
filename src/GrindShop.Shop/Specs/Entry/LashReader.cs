namespace GrindShop.Shop.Specs.Entry;

/// <summary>Lash: .018/.020 lash, lash 18/20, valve lash .016, zero lash.</summary>
internal static class LashReader
{
    private const double MostIn = .09;

    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (text.Is(at, "zero") && text.Is(at + 1, EntryWords.Lash))
            return Take(draft, at, at + 2, new Pair(new Figure(0, false, at + 1), null, Lobe.Unsaid, at + 1));
        if (Label(text, at) is { } label && Pair.At(text, text.Join(label)) is { } behind && IsLash(behind))
            return Take(draft, at, behind.Next, behind);
        if (Pair.At(text, at) is not { } pair || !IsLash(pair) || text[pair.Next].OpensLine)
            return 0;
        var hot = text[pair.Next] is { Text: "hot" or "cold" } && Label(text, pair.Next + 1) is not null ? pair.Next + 1 : pair.Next;
        return Label(text, hot) is { } to ? Take(draft, at, to, pair, hot) : 0;
    }

    private static int? Label(EntryText text, int at)
    {
        var from = text[at] is { Text: "valve" or "hot" or "cold" } && text.Is(at + 1, EntryWords.Lash) ? at + 1 : at;
        return text.Is(from, EntryWords.Lash) ? from + 1 : null;
    }

    private static int Take(EntryDraft draft, int from, int to, Pair pair, int? hot = null)
    {
        if (hot is { } at && at > pair.Next)
            to = pair.Next;
        draft.TakeLobes(from, to, LobeField.Lash, draft.Context.Place(pair));
        return to - from;
    }

    private static bool IsLash(Pair pair) => pair.First.LengthIn <= MostIn && (pair.Second is not { } second || second.LengthIn <= MostIn);
}
