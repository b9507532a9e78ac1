using GrindShop.Shop.Buying;

namespace GrindShop.Papers;

/// <summary>The paper that tells a supplier which blanks are wanted, at what price and by when.</summary>
public static class PurchaseOrderPaper
{
    private static readonly string[] Asked =
    [
        "With each lot: the heat number and, for hardened blanks, a certificate of surface hardness and case depth.",
        "Part deliveries are welcome. Tell us at once when a date cannot be held or a quantity cannot be made.",
        "Put this order's number on delivery note and invoice.",
    ];

    /// <summary>A PDF of Letter size, as many pages as the lines need.</summary>
    public static byte[] Print(PurchaseOrderFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var purchase = facts.Purchase;
        var sheet = new Sheet($"Purchase order {purchase.Number}", facts.Shop, facts.PrintedAt);
        var y = Band(sheet, facts, Head(sheet, facts));
        y = PurchaseLines.Draw(sheet, purchase, y + 6);
        y = sheet.Room(y + 14, 96);
        y = sheet.Title(Sheet.Left, y, Sheet.Width, "We ask for");
        y = Cautions.Draw(sheet, y, 8.5, Asked);
        Sign(sheet, y + 34);
        return sheet.Finish($"{purchase.Number}, {facts.Shop.ShopName}, printed {Figures.Moment(facts.Shop.ShopTime(facts.PrintedAt))}");
    }

    private static double Head(Sheet sheet, PurchaseOrderFacts facts)
    {
        const double top = Sheet.Top;
        sheet.Text(Sheet.Left, top + 16, facts.Shop.ShopName, Weight.Bold, 20, mostWidth: 370);
        sheet.Text(Sheet.Left, top + 31, facts.Shop.Address, Weight.Regular, 9, mostWidth: 370);
        sheet.Text(Sheet.Left, top + 43, $"{facts.Shop.Phone} · {facts.Shop.Email}", Weight.Regular, 9, mostWidth: 370);
        sheet.Text(Sheet.Right, top + 16, "Purchase order", Weight.SemiBold, 14, Align.Right);
        sheet.Text(Sheet.Right, top + 43, facts.Purchase.Number, Weight.Bold, 24, Align.Right);
        return top + 58;
    }

    private static double Band(Sheet sheet, PurchaseOrderFacts facts, double y)
    {
        var purchase = facts.Purchase;
        var sent = purchase.SentAt is { } at ? Figures.Day(facts.Shop.Today(at)) : "not sent yet";
        y = Field.Band(sheet, y, new("To", purchase.Vendor.Name, 260), new("Deliver to", $"{facts.Shop.ShopName}, {facts.Shop.Address}", 280));
        return Field.Band(sheet, y, new("Ordered", sent, 130), new("State", Figures.Capital(purchase.State.Words()), 130), new("Parts", $"{purchase.Lines.Count}", 80), new("Sum", Money(purchase.Amount), 200));
    }

    private static void Sign(Sheet sheet, double y)
    {
        sheet.Rule(Sheet.Left, y, 220);
        sheet.Text(Sheet.Left, y + 10, "Signed for the shop", Weight.Regular, 7.5);
        sheet.Rule(Sheet.Right - 220, y, 220);
        sheet.Text(Sheet.Right - 220, y + 10, "Confirmed by the supplier, date", Weight.Regular, 7.5);
    }

    internal static string Money(decimal amount) => FormattableString.Invariant($"${amount:N2}");
}
