namespace GrindShop.Shop.Specs.Entry;

/// <summary>What must not be taken for figures of the cam: phone numbers, and what was said with "no" or "not".</summary>
internal static class SkipReader
{
    private const int MostWords = 3;

    public static int Read(EntryDraft draft, int at) => Phone(draft.Text, at) ?? Negated(draft, at) ?? 0;

    private static int? Phone(EntryText text, int at)
    {
        if (text[at] is not { IsWhole: true, Length: 3 })
            return null;
        var second = Behind(text, at + 1);
        if (text[second] is { IsWhole: true, Length: 4 } && text.Is(at + 1, "-"))
            return second + 1 - at;
        var third = Behind(text, second + 1);
        return text[second] is { IsWhole: true, Length: 3 } && text[third] is { IsWhole: true, Length: 4 } ? third + 1 - at : null;
    }

    private static int Behind(EntryText text, int at)
    {
        while (text[at] is { Text: "-" or "." or ")" or "/" })
            at++;
        return at;
    }

    private static int? Negated(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (!text.Is(at, EntryWords.Negation))
            return null;
        var to = at + 1;
        if (text[to].IsNumber && Pair.At(text, to) is { } pair)
            to = pair.Next;
        while (to <= at + MostWords && text[to] is { IsWord: true, OpensLine: false } && text.Is(to, EntryWords.Known))
            to++;
        if (to == at + 1)
            return null;
        draft.Doubt(at, to, $"\"{text.Slice(at, to)}\" stays in the notes: what shall the cam have instead?");
        return to - at;
    }
}
