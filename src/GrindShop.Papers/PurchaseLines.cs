using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;

namespace GrindShop.Papers;

/// <summary>The parts of a purchase order, two lines of print each and a third for the number that the vendor gives it, with the sum below; the head comes again on every page.</summary>
internal static class PurchaseLines
{
    private const double RowHeight = 27, MoreHeight = 10.5, SizePt = 9, SmallPt = 7.8;
    private const double Part = Sheet.Left + 22, Expected = 326, Quantity = 436, Unit = 498;

    /// <summary>Draws head, lines and sum; answers the y below.</summary>
    public static double Draw(Sheet sheet, PurchaseOrder purchase, double y)
    {
        y = Head(sheet, y);
        foreach (var line in purchase.Lines.OrderBy(line => line.Ordinal))
        {
            var number = purchase.VendorsNumber(line);
            var height = RowHeight + (number.Length > 0 ? MoreHeight : 0) + (line.SetupCharge > 0 ? 13 : 0);
            var at = sheet.Room(y, height);
            y = Row(sheet, line, number, at < y ? Head(sheet, at) : at);
        }
        return Sum(sheet, purchase, sheet.Room(y, 24));
    }

    private static double Head(Sheet sheet, double y)
    {
        sheet.Text(Sheet.Left, y + 8, "Line", Weight.Regular, 7);
        sheet.Text(Part, y + 8, "Blank", Weight.Regular, 7);
        sheet.Text(Expected, y + 8, "Wanted by", Weight.Regular, 7);
        sheet.Text(Quantity, y + 8, "Blanks", Weight.Regular, 7, Align.Right);
        sheet.Text(Unit, y + 8, "$ each", Weight.Regular, 7, Align.Right);
        sheet.Text(Sheet.Right, y + 8, "$", Weight.Regular, 7, Align.Right);
        sheet.Rule(Sheet.Left, y + 11.5, Sheet.Width);
        return y + 12;
    }

    private static double Row(Sheet sheet, PurchaseLine line, string vendorsNumber, double y)
    {
        sheet.Text(Sheet.Left, y + 11.5, $"{line.Ordinal}", Weight.Regular, SizePt);
        sheet.Text(Part, y + 11.5, line.BlankPart.PartNumber, Weight.SemiBold, SizePt, mostWidth: Expected - Part - 8);
        sheet.Text(Expected, y + 11.5, Figures.Day(line.ExpectedOn), Weight.Regular, SizePt);
        sheet.Text(Quantity, y + 11.5, line.Quantity.ToString(CultureInfo.InvariantCulture), Weight.SemiBold, SizePt, Align.Right);
        sheet.Text(Unit, y + 11.5, Amount(line.UnitCost), Weight.Regular, SizePt, Align.Right);
        sheet.Text(Sheet.Right, y + 11.5, Amount(line.Quantity * line.UnitCost), Weight.Regular, SizePt, Align.Right);
        if (vendorsNumber.Length > 0)
        {
            sheet.Text(Part, y + 21.8, $"Your number {vendorsNumber}", Weight.SemiBold, SmallPt, mostWidth: Expected + 56 - Part);
            y += MoreHeight;
        }
        sheet.Text(Part, y + 21.8, Words(line.BlankPart), Weight.Regular, SmallPt, mostWidth: Expected + 56 - Part);
        if (line.SetupCharge > 0)
        {
            y += 13;
            sheet.Text(Expected + 60, y + 20, "Set-up charge, once", Weight.Regular, SmallPt);
            sheet.Text(Sheet.Right, y + 20, Amount(line.SetupCharge), Weight.Regular, SizePt, Align.Right);
        }
        sheet.Hairline(Sheet.Left, y + RowHeight - 1, Sheet.Width);
        return y + RowHeight;
    }

    private static double Sum(Sheet sheet, PurchaseOrder purchase, double y)
    {
        sheet.Text(Unit, y + 15, "Sum", Weight.SemiBold, 10.5, Align.Right);
        sheet.Text(Sheet.Right, y + 15, Amount(purchase.Amount), Weight.Bold, 10.5, Align.Right);
        return y + 20;
    }

    private static string Words(BlankPart part)
    {
        var depth = part.CaseDepthIn is { } known ? $", case {Figures.In(known)} in" : "";
        return $"{part.EngineFamily.Code}, {part.Alloy.Words()}, {part.Form.Words()}, {part.Hardening.Words()}{depth}, {part.Gear.Words()}";
    }

    private static string Amount(decimal amount) => amount.ToString("N2", CultureInfo.InvariantCulture);
}
