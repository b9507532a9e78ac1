using GrindShop.Shop.Records;

namespace GrindShop.Papers;

/// <summary>The head of a paper for the customer: the shop, what paper it is, and its number.</summary>
internal static class ShopHead
{
    /// <summary>Answers the y below.</summary>
    public static double Draw(Sheet sheet, ShopSettings shop, string paper, string number)
    {
        const double top = Sheet.Top;
        sheet.Text(Sheet.Left, top + 16, shop.ShopName, Weight.Bold, 20, mostWidth: 390);
        sheet.Text(Sheet.Left, top + 31, shop.Address, Weight.Regular, 9, mostWidth: 390);
        sheet.Text(Sheet.Left, top + 43, $"{shop.Phone} · {shop.Email}", Weight.Regular, 9, mostWidth: 390);
        sheet.Text(Sheet.Right, top + 16, paper, Weight.SemiBold, 14, Align.Right);
        sheet.Text(Sheet.Right, top + 43, number, Weight.Bold, 24, Align.Right);
        return top + 58;
    }
}
