using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using PdfSharp.Drawing;

namespace GrindShop.Papers;

/// <summary>The middle of the traveler: the specification, the lobe angles, the lobe in its blank.</summary>
internal static class TravelerCam
{
    private const double Gap = 18, SpecWidth = 236, AnglesWidth = 132, BlankWidth = Sheet.Width - SpecWidth - AnglesWidth - 2 * Gap;

    private static readonly Table LobeRows = new(12.6, 8.8,
        new("Lobes", 98), new("Intake", 47, Align.Decimal, 18), new("Exhaust", 47, Align.Decimal, 18), new("unit", 44));
    private static readonly Table WholeRows = new(12.6, 8.8, new("", 145), new("", 47, Align.Decimal, 18), new("", 44));
    private static readonly Table AngleRows = new(11.2, 8.6,
        new("Place", 27), new("Cyl.", 27), new("Valve", 38), new("cam deg", 40, Align.Decimal, 22));
    private static readonly Table MetalRows = new(12.6, 8.8, new("", 67), new("", 33, Align.Decimal, 10), new("", 36));

    /// <summary>Draws the three columns and the gear advice below them; answers the y below.</summary>
    public static double Draw(Sheet sheet, JobCam cam, double y)
    {
        const double angles = Sheet.Left + SpecWidth + Gap, blank = angles + AnglesWidth + Gap;
        y = new[] { Spec(sheet, cam, y), Angles(sheet, cam, angles, y), Blank(sheet, cam, blank, y) }.Max();
        y = Words(sheet, y + 2, Sheet.Width, "Distributor gear", cam.DistributorGear);
        return cam.Minded.Count == 0 ? y : Words(sheet, y, Sheet.Width, "Mind", string.Join(' ', cam.Minded));
    }

    private static double Spec(Sheet sheet, JobCam cam, double y)
    {
        y = sheet.Title(Sheet.Left, y, SpecWidth, "Grind to");
        y = LobeRows.Draw(sheet, Sheet.Left, y, LobeTable.Lobes(cam));
        y = WholeRows.Draw(sheet, Sheet.Left, y, LobeTable.WholeCam(cam.Grind));
        y = Words(sheet, y, SpecWidth, "Follower", cam.Grind.Lifter.Words());
        return Words(sheet, y, SpecWidth, "Firing order", cam.Grind.FiringOrder);
    }

    private static double Words(Sheet sheet, double y, double width, string label, string text)
    {
        sheet.Text(Sheet.Left, y + 9.6, label, Weight.Regular, 8.8);
        return sheet.Lines(Sheet.Left + 72, y + 9.6, width - 72, text, Weight.Regular, 8.8, leading: 1.2) - 7;
    }

    private static double Angles(Sheet sheet, JobCam cam, double x, double y)
    {
        y = sheet.Title(x, y, AnglesWidth, "Lobe angles, front to rear");
        var family = cam.Family;
        var sense = family.Rotation == CamRotation.Clockwise ? "clockwise" : "counter-clockwise";
        y = sheet.Lines(x, y + 6, AnglesWidth, $"Nose from the {family.Datum.ToString().ToLowerInvariant()}, {sense} seen from the front (as the cam turns).", Weight.Regular, 7);
        var layout = EngineLayout.Of(family, cam.Grind);
        return layout.Succeeded
            ? AngleRows.Draw(sheet, x, y - 4, layout.Value.Rows.Select(Row))
            : sheet.Lines(x, y + 6, AnglesWidth, layout.Problem.ToString(), Weight.SemiBold, 8.8);
    }

    private static string[] Row(LobeRow row) =>
        [$"{row.Position}", $"{row.Lobe.Cylinder}", row.Lobe.Valve.ToString().ToLowerInvariant(), Figures.Angle(row.FromDatumCamDeg)];

    private static double Blank(Sheet sheet, JobCam cam, double x, double y)
    {
        y = sheet.Title(x, y, BlankWidth, "Intake lobe in its blank");
        LobeDrawing.Draw(sheet, cam, new XRect(x, y + 2, BlankWidth, 110));
        y = LobeDrawing.Key(sheet, x, y + 117);
        var fit = cam.Fit;
        y = MetalRows.Draw(sheet, x, y,
        [
            ["Comes off, least", Figures.In(fit.MinRemovalIn), LobeTable.Inch],
            ["Comes off, most", Figures.In(fit.MaxRemovalIn), LobeTable.Inch],
            ["Case left, least", Figures.In(fit.LeastCaseLeftIn), fit.LeastCaseLeftIn is null ? "" : LobeTable.Inch],
            ["Turn, intake", Figures.SignedDeg(fit.IntakeTurnCamDeg), LobeTable.CamDeg],
            ["Turn, exhaust", Figures.SignedDeg(fit.ExhaustTurnCamDeg), LobeTable.CamDeg],
        ]);
        return sheet.Lines(x, y + 8, BlankWidth, "Turns: half the change of ICL and ECL.", Weight.Regular, 7) - 8;
    }
}
