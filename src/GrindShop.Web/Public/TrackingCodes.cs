namespace GrindShop.Web.Public;

/// <summary>Tracking codes as people type them: small letters, blanks and dashes do no harm.</summary>
public static class TrackingCodes
{
    private const int Longest = 40;

    /// <summary>The code in its one spelling, or null where the text cannot be one.</summary>
    public static string? Read(string? text)
    {
        if (text is null || text.Length > Longest)
            return null;
        var code = string.Concat(text.Where(char.IsAsciiLetterOrDigit)).ToUpperInvariant();
        return code.Length == 0 ? null : code;
    }
}
