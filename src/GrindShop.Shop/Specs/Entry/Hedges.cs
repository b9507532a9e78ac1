namespace GrindShop.Shop.Specs.Entry;

/// <summary>What was said with a question mark or an "about" is asked again.</summary>
internal static class Hedges
{
    public static void Ask(EntryDraft draft)
    {
        var text = draft.Text;
        for (var at = 0; at < text.Count; at++)
        {
            if (text.Is(at, EntryWords.Hedge) && PartAt(draft, text[at + 1]) is { } hedged)
                Ask(draft, hedged, $"\"{text[at].Text}\" was said of this: {hedged.Words}. Is it right so?");
            if (text.Is(at, "?") && PartAt(draft, text[at - 1]) is { } asked)
                Ask(draft, asked, $"This was said as a question: {asked.Words}. Is it right so?");
        }
    }

    private static EntryPart? PartAt(EntryDraft draft, Token token) =>
        token.Kind == TokenKind.End ? null : draft.Parts.Find(part => part.Start <= token.Start && token.Start < part.End);

    private static void Ask(EntryDraft draft, EntryPart part, string question) => draft.Doubts.Add(new EntryDoubt(part.Start, part.Length, question));
}
