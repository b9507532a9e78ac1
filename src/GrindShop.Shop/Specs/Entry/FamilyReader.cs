using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>The engine: by its code in any spelling (RV8-R, rv8r), by its name, or by a name nearly spelled right.</summary>
internal static class FamilyReader
{
    private const int MostTokens = 8, LeastName = 5, LongName = 8, MostLetters = 24;

    public static int Read(EntryDraft draft, int at) => Code(draft, at) ?? Name(draft, at) ?? 0;

    private static int? Code(EntryDraft draft, int at)
    {
        var text = draft.Text;
        if (!text[at].IsWord || (text[at - 1].Kind is TokenKind.Number or TokenKind.Word && !text[at].Spaced))
            return null;
        var written = "";
        (EngineFamily Family, int To)? found = null;
        for (var next = at; next < at + MostTokens && text[next].Kind != TokenKind.End && !(next > at && text[next].OpensLine); next++)
        {
            if (text[next].Kind == TokenKind.Mark && text[next].Text is not ("-" or "/" or "."))
                break;
            written += text[next].Kind == TokenKind.Mark ? "" : text[next].Text.ToUpperInvariant();
            if (draft.Families.FirstOrDefault(family => Plain(family.Code) == written) is { } family && EndsHere(text, next))
                found = (family, next + 1);
        }
        return found is { } known ? Take(draft, at, BehindName(text, known.To, known.Family), known.Family, isExact: true) : null;
    }

    private static bool EndsHere(EntryText text, int at) => text[at + 1] is { Kind: TokenKind.End or TokenKind.Mark } or { Spaced: true };

    private static string Plain(string code) => new([.. code.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit)]);

    private static int? Name(EntryDraft draft, int at)
    {
        if (draft.Text[at] is not { IsWord: true, Text: { Length: >= LeastName and <= MostLetters } word } || EntryWords.Known.Contains(word))
            return null;
        var nearest = draft.Families.Select(family => (Family: family, Steps: Misspelling.Steps(word, FirstWord(family))))
            .Where(near => near.Steps <= (word.Length >= LongName ? 2 : 1)).OrderBy(near => near.Steps).ToList();
        if (nearest.Count == 0)
            return null;
        if (nearest.Count > 1 && nearest[1].Steps == nearest[0].Steps)
            return Several(draft, at, nearest.Where(near => near.Steps == nearest[0].Steps).Select(near => near.Family));
        return Take(draft, at, BehindName(draft.Text, at + 1, nearest[0].Family), nearest[0].Family, nearest[0].Steps == 0);
    }

    private static int Several(EntryDraft draft, int at, IEnumerable<EngineFamily> families)
    {
        draft.Doubt(at, at + 1, $"Which engine is meant: {string.Join(" or ", families.Select(family => family.Name))}?");
        return 1;
    }

    private static string FirstWord(EngineFamily family) => family.Name.Split(' ', ',')[0].ToLowerInvariant();

    /// <summary>More words of the name, such as "V8, rear gear", belong to it.</summary>
    private static int BehindName(EntryText text, int at, EngineFamily family)
    {
        var name = Tokenizer.Cut(family.Name, family.Name.Length).Where(token => token.Kind != TokenKind.Mark).Select(token => token.Text).ToHashSet();
        var end = at;
        for (var next = at; next < at + MostTokens && !text[next].OpensLine && (text[next].Text is "," or "-" || IsInName(text[next])); next++)
            if (text[next].Kind != TokenKind.Mark)
                end = next + 1;
        return end;

        bool IsInName(Token token) => token.Kind != TokenKind.End && name.Contains(token.Text);
    }

    private static int Take(EntryDraft draft, int from, int to, EngineFamily family, bool isExact)
    {
        if (draft.Family is { } there && there != family)
        {
            draft.Doubt(from, to, $"Two engines were named: {there.Name} and {family.Name}. Which one is it?");
            return to - from;
        }
        draft.Family = family;
        draft.Spec = draft.Spec with { EngineFamily = family.Code };
        draft.Take(from, to, $"engine {family.Code}, {family.Name}", "engineFamily");
        if (!isExact)
            draft.Doubt(from, to, $"Is \"{draft.Text.Slice(from, to)}\" the {family.Name}? It is taken so.");
        return to - from;
    }
}
