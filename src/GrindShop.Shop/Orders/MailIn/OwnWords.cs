namespace GrindShop.Shop.Orders;

/// <summary>The words of a mail that its writer wrote now.</summary>
public static class OwnWords
{
    /// <summary>
    /// Without quoted lines and without what stands below the usual signature mark ("-- "; RFC 3676, 4.3 and 4.5); the whole text where nothing else is in it.
    /// </summary>
    public static string Of(string text)
    {
        var own = string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').TakeWhile(line => line is not ("-- " or "--")).Where(line => !line.StartsWith('>'))).Trim();
        return own.Length > 0 ? own : text.Trim();
    }
}
