namespace GrindShop.Shop.Orders;

/// <summary>The words of a mail that its writer wrote now.</summary>
internal static class MailWords
{
    /// <summary>Without quoted lines and without what stands below the usual signature mark ("-- "; RFC 3676, 4.3).</summary>
    public static string Own(string text) => string.Join('\n', text.Split('\n')
        .TakeWhile(line => line.TrimEnd('\r') is not ("-- " or "--"))
        .Where(line => !line.TrimStart().StartsWith('>'))).Trim();
}
