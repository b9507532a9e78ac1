namespace GrindShop.Shop.Orders.Finding;

internal static class LikePattern
{
    /// <summary>The text as a pattern of LIKE that means nothing but itself.</summary>
    public static string Literal(string text) => text.Replace(@"\", @"\\").Replace("%", @"\%").Replace("_", @"\_");
}
