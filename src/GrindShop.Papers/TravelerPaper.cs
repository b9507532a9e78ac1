using GrindShop.Shop.Blanks;

namespace GrindShop.Papers;

/// <summary>The paper that goes with a job through the shop: what to grind from which blank, and the route with its sign-offs.</summary>
public static class TravelerPaper
{
    private const double QrSide = 96, NoteSizePt = 8.5;

    /// <summary>A PDF of Letter size, usually one page.</summary>
    /// <exception cref="ArgumentException">The order was never judged.</exception>
    public static byte[] Print(TravelerFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.Job.BlankLot is null)
            return RepairTraveler.Print(facts);
        var cam = new JobCam(facts.Job);
        var sheet = new Sheet($"Traveler {facts.Job.Code}", facts.Shop, facts.PrintedAt);
        var y = Head(sheet, facts);
        y = Band(sheet, facts, cam, y);
        y = Note(sheet, cam, y);
        y = TravelerCam.Draw(sheet, cam, y + 3);
        y = RouteTable.Draw(sheet, facts, y + 6);
        y = sheet.Room(y + 7, 52);
        Cautions.Draw(sheet, sheet.Title(Sheet.Left, y, Sheet.Width, "Cautions"), 7.6, Cautions.Shop);
        return sheet.Finish($"{facts.Job.Code}, order {cam.Order.Number}, printed {Figures.Moment(facts.Shop.ShopTime(facts.PrintedAt))}, {facts.Shop.ShopName}");
    }

    internal static double Head(Sheet sheet, TravelerFacts facts)
    {
        const double top = Sheet.Top, due = 300;
        sheet.Text(Sheet.Left, top + 8, $"{facts.Shop.ShopName}, traveler", Weight.SemiBold, 10, mostWidth: due + 90 - Sheet.Left);
        sheet.Text(Sheet.Left - 2, top + 58, facts.Job.Code, Weight.Bold, 54, mostWidth: due - Sheet.Left - 8);
        sheet.Text(Sheet.Left, top + 78, facts.Job.Order.Customer.Name, Weight.SemiBold, 13, mostWidth: Sheet.Right - QrSide - Sheet.Left - 8);
        sheet.Box(due, top + 20, 168, 42, .9);
        sheet.Text(due + 8, top + 31, "Due", Weight.Regular, 8);
        sheet.Text(due + 8, top + 53, Figures.Day(facts.Job.DueOn), Weight.Bold, 18);
        if (facts.Job.Order.RevisionsMade is > 0 and var revision)
            sheet.Text(due + 168, top + 31, $"Revision {revision}", Weight.Bold, 11, Align.Right);
        sheet.Text(Sheet.Left, top + 91, $"Scan, or open {facts.FloorUrl}", Weight.Regular, 7.5, mostWidth: Sheet.Right - QrSide - Sheet.Left - 8);
        QrSquare.Draw(sheet, Sheet.Right - QrSide + 8, top - 8, QrSide, facts.FloorUrl);
        return top + 97;
    }

    private static double Band(Sheet sheet, TravelerFacts facts, JobCam cam, double y)
    {
        var (order, lot, part) = (cam.Order, facts.Job.BlankLot!, cam.Part);
        y = Field.Band(sheet, y, new("Customer's reference", order.CustomerReference, 220), new("Order", order.Number, 90), new("Engine family", cam.Engine, 230));
        return Field.Band(sheet, y,
            new("Blank part number", part.PartNumber, 112), new("Lot", lot.LotNumber, 92), new("Shelf", lot.Location, 92),
            new("Alloy and form", $"{part.Alloy.Words()}, {part.Form.Words()}", 108), new("Hardening and case", Hardness(part), 136));
    }

    private static string Hardness(BlankPart part)
    {
        var words = part.CaseDepthIn is { } depth ? $"{part.Hardening.Words()}, case {Figures.In(depth)} in" : part.Hardening.Words();
        return part.HardnessHrc is { } hrc ? $"{words}, {Figures.Hardness(hrc)} HRC" : words;
    }

    private static double Note(Sheet sheet, JobCam cam, double y)
    {
        var text = TextFit.Clean(string.Join(". ", new[] { cam.Spec.Use, cam.Spec.Notes }.Where(part => !string.IsNullOrWhiteSpace(part))));
        if (text.Length == 0)
            return y;
        sheet.Rule(Sheet.Left, y, Sheet.Width);
        sheet.Text(Sheet.Left, y + 11, "Customer's note", Weight.Regular, 7);
        return sheet.Lines(Sheet.Left + 62, y + 11, Sheet.Width - 62, text, Weight.Regular, NoteSizePt, mostLines: 2) - 3;
    }
}
