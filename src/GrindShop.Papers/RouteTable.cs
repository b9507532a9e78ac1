using GrindShop.Shop.Routing;

namespace GrindShop.Papers;

/// <summary>The route with a place to sign each step; steps already done carry who and when.</summary>
internal static class RouteTable
{
    private const double RowHeight = 20.5, SizePt = 8.8;
    private const double Stage = Sheet.Left + 20, Work = Stage + 106, Vendor = Work + 220, By = Vendor + 74, On = By + 68;

    /// <summary>Draws every step, on a further page where this one is full; answers the y below.</summary>
    public static double Draw(Sheet sheet, TravelerFacts facts, double y)
    {
        y = Head(sheet, sheet.Room(y, 30 + 2 * RowHeight));
        foreach (var step in facts.Job.Steps.OrderBy(step => step.Ordinal))
            y = Row(sheet, facts, step, sheet.Room(y, RowHeight));
        return y;
    }

    private static double Head(Sheet sheet, double y)
    {
        y = sheet.Title(Sheet.Left, y, Sheet.Width, "Route");
        foreach (var (x, head) in new[] { (Sheet.Left, "Step"), (Stage, "Stage"), (Work, "Work"), (Vendor, "Vendor"), (By, "Initials"), (On, "Date") })
            sheet.Text(x, y + 6, head, Weight.Regular, 7);
        return y + 10;
    }

    private static double Row(Sheet sheet, TravelerFacts facts, JobStep step, double y)
    {
        sheet.Hairline(Sheet.Left, y, By - Sheet.Left - 6);
        sheet.Text(Sheet.Left, y + 13.3, $"{step.Ordinal}", Weight.SemiBold, SizePt);
        sheet.Text(Stage, y + 13.3, Figures.Capital(step.Stage.Words()), Weight.SemiBold, SizePt, mostWidth: Work - Stage - 4);
        Middle(sheet, Work, y, Vendor - Work - 8, step.Stage.Instructions());
        Middle(sheet, Vendor, y, By - Vendor - 8, step.Vendor?.Name ?? "");
        SignOff(sheet, facts, step, y);
        return y + RowHeight;
    }

    /// <summary>One or two lines, set in the middle of the row.</summary>
    private static void Middle(Sheet sheet, double x, double y, double width, string text)
    {
        var oneLine = sheet.Measure(TextFit.Clean(text), Weight.Regular, 8.2) <= width;
        sheet.Lines(x, y + (oneLine ? 13.3 : 8.6), width, text, Weight.Regular, 8.2, mostLines: 2, leading: 1.16);
    }

    private static void SignOff(Sheet sheet, TravelerFacts facts, JobStep step, double y)
    {
        sheet.Box(By - 4, y, On - By, RowHeight);
        sheet.Box(On - 4, y, Sheet.Right - On + 4, RowHeight);
        if (step is not { DoneAt: { } at, DoneBy: { } by })
            return;
        Middle(sheet, By, y, On - By - 8, by);
        sheet.Text(On, y + 13.3, Figures.Day(facts.Shop.ShopTime(at)), Weight.Regular, 8.2);
    }
}
