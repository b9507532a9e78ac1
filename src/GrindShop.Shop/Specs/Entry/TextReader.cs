namespace GrindShop.Shop.Specs.Entry;

/// <summary>Text that is to be taken as it stands: "use: …" to the end of the line, "notes: …" to the end.</summary>
internal static class TextReader
{
    public static int Read(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (!text.Is(at + 1, ":") || text[at + 2].Kind == TokenKind.End)
            return 0;
        if (text[at] is { Text: "note" or "notes" })
            return Notes(draft, at);
        return text[at] is { Text: "use" or "used" } && draft.Spec.Use is null ? Use(draft, at) : 0;
    }

    private static int Use(EntryDraft draft, int at)
    {
        var text = draft.Text;
        var to = at + 2;
        while (text[to] is { Kind: not TokenKind.End, OpensLine: false } and not { Text: ";" })
            to++;
        if (to == at + 2 || text.Slice(at + 2, to) is not { Length: <= SpecCheck.LongestText } use)
            return 0;
        draft.Spec = draft.Spec with { Use = use };
        draft.Take(at, to, $"use {use}", "use");
        return to - at;
    }

    /// <summary>Notes that are not read to their end, because the text is too long, stay with the rest.</summary>
    private static int Notes(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (text.ReadTo < text.Source.Length)
            return text.Count - at;
        draft.Spec = draft.Spec with { Notes = text.Slice(at + 2, text.Count) };
        draft.Take(at, text.Count, "notes", "notes");
        return text.Count - at;
    }
}
