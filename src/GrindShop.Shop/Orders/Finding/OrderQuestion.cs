namespace GrindShop.Shop.Orders.Finding;

/// <summary>One word of what was asked, in the forms in which the database looks for it; null where it does not look so.</summary>
/// <param name="Ordinal">From 1; 0 stands for the whole question as one phone number or name.</param>
/// <param name="Pieces">Letters and digits between other signs, in lower case.</param>
public sealed record AskedTerm(int Ordinal, string Text, IReadOnlyList<string> Pieces)
{
    private const int LeastDigits = 4, LeastPart = 2, LeastNear = 3;

    /// <summary>The pieces one after another, the last one perhaps only begun. Nothing but letters and digits gets into it.</summary>
    public string? Words => Ordinal == 0 || Pieces.Count == 0 ? null : $"{string.Join(" <-> ", Pieces)}:*";

    /// <summary>Some part of a name or number.</summary>
    public string? Part => Ordinal == 0 || Text.Count(char.IsLetterOrDigit) < LeastPart ? null : $"%{LikePattern.Literal(Text)}%";

    /// <summary>Bare digits of a phone number or of the end of one.</summary>
    public string? Phone => !Text.Any(char.IsLetter) && CallerBook.Digits(Text) is { Length: >= LeastDigits } digits ? digits : null;

    /// <summary>A name that may be spelled otherwise; a number is never nearly right.</summary>
    public string? Near => Text.Any(char.IsDigit) || Text.Count(char.IsLetter) < LeastNear ? null : Text;
}

/// <summary>What somebody asks for: every word of it has to be found, in whatever place.</summary>
public sealed record OrderQuestion(IReadOnlyList<AskedTerm> Terms)
{
    public const int LongestText = 200, MostTerms = 8;

    private const int Least = 2;

    public bool IsTooShort => Terms.Sum(term => term.Pieces.Sum(piece => piece.Length)) < Least;

    /// <summary>Short enough, and without signs that the database takes for none of its letters.</summary>
    public static OrderQuestion Of(string? text)
    {
        var clean = new string([.. (text ?? "").Take(LongestText).Select(sign => char.IsControl(sign) || char.IsSurrogate(sign) ? ' ' : sign)]).Trim();
        var words = clean.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word.Any(char.IsLetterOrDigit)).Take(MostTerms).ToList();
        return new OrderQuestion([.. words.Select((word, index) => Term(index + 1, word)), .. words.Count > 1 ? [Term(0, clean)] : Array.Empty<AskedTerm>()]);
    }

    internal int Words => Terms.Count(term => term.Ordinal > 0);

    private static AskedTerm Term(int ordinal, string text) => new(ordinal, text,
        string.Concat(text.Select(sign => char.IsLetterOrDigit(sign) ? char.ToLowerInvariant(sign) : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
