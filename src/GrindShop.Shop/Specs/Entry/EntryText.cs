namespace GrindShop.Shop.Specs.Entry;

/// <summary>The text as tokens, readable at any place; beyond its ends there is nothing.</summary>
internal sealed class EntryText(string source, int readTo)
{
    private readonly List<Token> _tokens = Tokenizer.Cut(source, readTo);

    public string Source { get; } = source;

    /// <summary>What lies behind this place is not read.</summary>
    public int ReadTo { get; } = readTo;

    public int Count => _tokens.Count;

    public Token this[int at] => at >= 0 && at < _tokens.Count ? _tokens[at] : default;

    public bool Is(int at, string text) => this[at].Is(text);

    public bool Is(int at, IReadOnlySet<string> words) => this[at].Kind != TokenKind.End && this[at].IsOneOf(words);

    /// <summary>Behind the words, where all of them stand here one after the other; otherwise null.</summary>
    public int? Phrase(int at, params string[] words)
    {
        foreach (var word in words)
            if (!Is(at++, word))
                return null;
        return at;
    }

    /// <summary>Behind what joins a label to its figure: a colon, an equals sign, "is", "of", "=".</summary>
    public int Join(int at)
    {
        while (this[at] is { Text: ":" or "=" or "is" or "of" or "was", OpensLine: false })
            at++;
        return at;
    }

    /// <summary>The text between two tokens, the second not included.</summary>
    public string Slice(int from, int to) => Source[this[from].Start..this[to - 1].Stop];
}
