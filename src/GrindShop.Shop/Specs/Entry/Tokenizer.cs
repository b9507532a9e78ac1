using System.Globalization;

namespace GrindShop.Shop.Specs.Entry;

/// <summary>Cuts a text into words, numbers and marks in one pass.</summary>
internal static class Tokenizer
{
    private const int MostDigits = 9;

    public static List<Token> Cut(string text, int end)
    {
        var tokens = new List<Token>();
        var (spaced, opens) = (true, true);
        for (var at = 0; at < end;)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                (spaced, opens) = (true, opens || text[at] is '\n' or '\r');
                at++;
                continue;
            }
            var token = (Number(text, at, end, tokens) ?? Word(text, at, end) ?? Mark(text, at)) with { Spaced = spaced, OpensLine = opens };
            tokens.Add(token);
            (at, spaced, opens) = (token.Stop, false, false);
        }
        return tokens;
    }

    private static Token? Number(string text, int at, int end, List<Token> before)
    {
        var whole = Digits(text, at, end);
        var point = at + whole;
        var decimals = point < end && text[point] is '.' or ',' ? Digits(text, point + 1, end) : 0;
        if (decimals > 0 && !IsPoint(text, at, whole, decimals, end, before))
            decimals = 0;
        if (whole + decimals is 0 or > MostDigits || (whole == 0 && decimals == 0))
            return null;
        var length = decimals > 0 ? whole + 1 + decimals : whole;
        var written = text.Substring(at, length);
        var value = double.Parse(written.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return new Token(TokenKind.Number, at, length, written) { Value = value, HasPoint = decimals > 0 };
    }

    /// <summary>Is the point or comma a decimal one? Not in a chain such as 1,8,4,3 and not between two whole numbers such as 230,236.</summary>
    private static bool IsPoint(string text, int at, int whole, int decimals, int end, List<Token> before)
    {
        var (mark, after) = (text[at + whole], at + whole + 1 + decimals);
        var chained = (after + 1 < end && text[after] == mark && char.IsAsciiDigit(text[after + 1]))
            || (whole == 0 && at > 0 && char.IsAsciiDigit(text[at - 1]))
            || (whole > 0 && at > 1 && text[at - 1] == mark && char.IsAsciiDigit(text[at - 2]));
        if (chained)
            return false;
        if (mark == '.')
            return true;
        var opens = at == 0 || char.IsWhiteSpace(text[at - 1]) || text[at - 1] is '/' or '@' or '-';
        return whole > 0 ? whole < 3 || decimals < 3 : opens && decimals >= 3 && !(before.Count > 0 && before[^1] is { IsWhole: true, Value: >= 100 });
    }

    private static int Digits(string text, int at, int end)
    {
        var count = 0;
        while (at + count < end && char.IsAsciiDigit(text[at + count]))
            count++;
        return count;
    }

    /// <summary>A short word's full stop ("hyd.") belongs to it.</summary>
    private static Token? Word(string text, int at, int end)
    {
        var stop = at;
        while (stop < end && (char.IsLetter(text[stop]) || (text[stop] is '\'' or '’' && stop > at && stop + 1 < end && char.IsLetter(text[stop + 1]))))
            stop++;
        if (stop == at)
            return null;
        var word = text[at..stop].ToLowerInvariant().Replace('’', '\'');
        var isShort = word.Length is > 1 and <= 6 && stop < end && text[stop] == '.' && (stop + 1 == end || !char.IsAsciiDigit(text[stop + 1]));
        return new Token(TokenKind.Word, at, stop - at + (isShort ? 1 : 0), word);
    }

    private static Token Mark(string text, int at) => new(TokenKind.Mark, at, 1, text[at] switch
    {
        '–' or '—' or '−' or '‐' or '‑' => "-",
        '⁄' or '\\' or '|' => "/",
        '×' => "x",
        'º' or '˚' => "°",
        '”' or '“' or '″' => "\"",
        var other => other.ToString(),
    });
}
