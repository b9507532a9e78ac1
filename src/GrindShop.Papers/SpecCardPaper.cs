using GrindShop.Shop.Blanks;
using GrindShop.Shop.Specs;
using PdfSharp.Drawing;

namespace GrindShop.Papers;

/// <summary>The paper that goes with the finished cam to the customer.</summary>
public static class SpecCardPaper
{
    private const double LobesWidth = 306, Gap = 24, SideX = Sheet.Left + LobesWidth + Gap, SideWidth = Sheet.Width - LobesWidth - Gap;

    private static readonly Table LobeRows = new(16, 10,
        new("Lobes", 136), new("Intake", 60, Align.Decimal, 22), new("Exhaust", 60, Align.Decimal, 22), new("unit", 50));
    private static readonly Table SideRows = new(16, 10, new("Setting", 112), new("", 50, Align.Decimal, 24), new("unit", 48));
    private static readonly Table EventRows = new(16, 10, new("Event", 112), new("crank deg", 50, Align.Decimal, 24), new("", 48));

    /// <summary>A PDF of one Letter-size page; of the customer's own cam what was done to it.</summary>
    /// <exception cref="ArgumentException">The order was never judged.</exception>
    public static byte[] Print(SpecCardFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.Job.BlankLot is null)
            return RepairCard.Print(facts);
        var cam = new JobCam(facts.Job);
        var sheet = new Sheet($"Spec card {facts.Job.Code}", facts.Shop, facts.PrintedAt);
        var y = Band(sheet, facts, cam, ShopHead.Draw(sheet, facts.Shop, "Spec card", facts.Job.Code));
        y = Math.Max(Lobes(sheet, cam, y + 6), WholeCam(sheet, cam, y + 6));
        y = Math.Max(Diagram(sheet, cam, y + 20), Events(sheet, cam, y + 20));
        y = Gear(sheet, cam, y + 20);
        y = sheet.Room(y + 20, 120);
        Cautions.Draw(sheet, sheet.Title(Sheet.Left, y, Sheet.Width, "Before the engine runs") + 2, 9.5, Cautions.Engine);
        return sheet.Finish($"{facts.Job.Code}, order {cam.Order.Number}, {facts.Shop.ShopName}");
    }

    private static double Band(Sheet sheet, SpecCardFacts facts, JobCam cam, double y)
    {
        var today = Figures.Day(facts.Shop.Today(facts.PrintedAt));
        y = Field.Band(sheet, y, new("For", cam.Order.Customer.Name, 222), new("Your reference", cam.Order.CustomerReference, 200), new("Order and job", $"{cam.Order.Number}, {facts.Job.Code}", 118));
        return Field.Band(sheet, y, new("Engine family", cam.Engine, 222), new("Cam", $"{cam.Part.Alloy.Words()}, with {cam.Part.Gear.Words()}", 200), new("Date", today, 118));
    }

    private static double Lobes(Sheet sheet, JobCam cam, double y)
    {
        y = sheet.Title(Sheet.Left, y, LobesWidth, "Lift and duration");
        y = LobeRows.Draw(sheet, Sheet.Left, y, LobeTable.Lobes(cam));
        return sheet.Lines(Sheet.Left, y + 10, LobesWidth, "Check lifts are lifter lifts. Valve lift is lobe lift times rocker ratio.", Weight.Regular, 7.8) - 8;
    }

    private static double WholeCam(Sheet sheet, JobCam cam, double y)
    {
        y = sheet.Title(SideX, y, SideWidth, "Whole cam");
        y = SideRows.Draw(sheet, SideX, y, LobeTable.WholeCam(cam.Grind));
        y = Words(sheet, y, "Follower", cam.Grind.Lifter.Words());
        return Words(sheet, y, "Firing order", cam.Grind.FiringOrder);
    }

    private static double Words(Sheet sheet, double y, string label, string text)
    {
        sheet.Text(SideX, y + 11.5, label, Weight.Regular, 10);
        return sheet.Lines(SideX + 66, y + 11.5, SideWidth - 66, text, Weight.Regular, 10, mostLines: 3, leading: 1.2) - 8;
    }

    private static double Diagram(Sheet sheet, JobCam cam, double y)
    {
        y = sheet.Title(Sheet.Left, y, LobesWidth, "Lifter lift over the crank (in)");
        new LiftDiagram(sheet, cam, new XRect(Sheet.Left + 20, y + 2, LobesWidth - 20, 150)).Draw();
        return y + 162;
    }

    private static double Events(Sheet sheet, JobCam cam, double y)
    {
        var events = cam.Events;
        y = sheet.Title(SideX, y, SideWidth, "Valve events at .050 lifter lift");
        return EventRows.Draw(sheet, SideX, y,
        [
            Event("Intake opens", events.IntakeOpensBtdc, "BTDC", "ATDC"),
            Event("Intake closes", events.IntakeClosesAbdc, "ABDC", "BBDC"),
            Event("Exhaust opens", events.ExhaustOpensBbdc, "BBDC", "ABDC"),
            Event("Exhaust closes", events.ExhaustClosesAtdc, "ATDC", "BTDC"),
            ["Overlap at .050", Figures.Deg(events.OverlapCrankDeg), ""],
            .. AdvertisedOverlap(cam),
        ]);
    }

    private static string[] Event(string what, double crankDeg, string side, string otherSide) =>
        [what, Figures.Deg(Math.Abs(crankDeg)), crankDeg < 0 ? otherSide : side];

    /// <summary>An overlap is only one where both lobes are counted at the same lift.</summary>
    private static IEnumerable<string[]> AdvertisedOverlap(JobCam cam) => cam.OneCheckLift
        ? [[$"Overlap at {Figures.CheckLift(cam.Grind.Intake.AdvertisedAtIn)}", Figures.Deg(cam.AdvertisedEvents.OverlapCrankDeg), ""]]
        : [];

    private static double Gear(Sheet sheet, JobCam cam, double y)
    {
        y = sheet.Title(Sheet.Left, y, Sheet.Width, "Distributor gear");
        y = sheet.Lines(Sheet.Left, y + 9, Sheet.Width, cam.DistributorGear, Weight.Regular, 9.5) - 10;
        return cam.Minded.Count == 0 ? y : Cautions.Draw(sheet, sheet.Title(Sheet.Left, y + 16, Sheet.Width, "Mind with this cam") + 2, 9.5, cam.Minded);
    }
}
