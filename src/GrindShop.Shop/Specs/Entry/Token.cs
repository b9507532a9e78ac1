namespace GrindShop.Shop.Specs.Entry;

internal enum TokenKind
{
    End,
    Word,
    Number,
    Mark,
}

/// <summary>A word, a number or one other character of the text. Words are in lower case, kinds of dashes and strokes made one.</summary>
internal readonly record struct Token(TokenKind Kind, int Start, int Length, string Text)
{
    public int Stop => Start + Length;

    public double Value { get; init; }

    /// <summary>The number was written with a decimal point or comma.</summary>
    public bool HasPoint { get; init; }

    /// <summary>A blank stands before it.</summary>
    public bool Spaced { get; init; }

    /// <summary>It is the first of its line.</summary>
    public bool OpensLine { get; init; }

    public bool IsNumber => Kind == TokenKind.Number;

    public bool IsWhole => IsNumber && !HasPoint;

    public bool IsWord => Kind == TokenKind.Word;

    public bool Is(string text) => Kind != TokenKind.End && Text == text;

    public bool IsOneOf(IReadOnlySet<string> words) => words.Contains(Text);
}
