namespace GrindShop.Shop.Blanks;

/// <summary>How a change of stock is called when the web nodes are told.</summary>
public static class BlankNotice
{
    private const string Start = "lot ";

    public static string Of(BlankLot lot) => Start + lot.LotNumber;

    public static bool IsStock(string notice) => notice.StartsWith(Start, StringComparison.Ordinal);
}
