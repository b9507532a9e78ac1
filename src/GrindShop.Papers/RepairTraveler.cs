using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers;

/// <summary>The traveler of a cam that the customer brought: how it came in, what is to be done, the route.</summary>
internal static class RepairTraveler
{
    private static readonly Table Rows = new(14, 9.5, new("", 190), new("", 350));

    public static byte[] Print(TravelerFacts facts)
    {
        var (job, order, cam) = (facts.Job, facts.Job.Order, facts.Job.Cam);
        var sheet = new Sheet($"Traveler {job.Code}", facts.Shop, facts.PrintedAt);
        var y = TravelerPaper.Head(sheet, facts);
        y = Field.Band(sheet, y, new("Customer's reference", order.CustomerReference, 220), new("Order", order.Number, 90), new("Work", $"{Figures.Capital(cam.Kind.Words())} of the customer's own cam", 230));
        y = sheet.Title(Sheet.Left, y + 8, Sheet.Width, cam.IsExpected ? "Expected condition, as the customer tells" : "Received condition");
        y = sheet.Lines(Sheet.Left, y + 10, Sheet.Width, cam.ReceivedCondition, Weight.SemiBold, 10) - 4;
        y = sheet.Title(Sheet.Left, y + 6, Sheet.Width, cam.Kind == WorkKind.Regrind ? "Grind to" : "The cam");
        y = Rows.Draw(sheet, Sheet.Left, y, SpecWords.Fields.Select(field => (field.Name, Value: field.Read(cam.Spec))).Where(row => row.Value is not null).Select(row => new[] { row.Name, row.Value! }));
        if (cam.Kind == WorkKind.Regrind)
            y = Metal(sheet, cam, y);
        if (cam.Gear is { } gear)
            y = Gear(sheet, gear, facts.Gear?.Said(cam.Spec.DistributorGear), y);
        if (cam is { Kind: WorkKind.Regrind, Answer: null })
            y = sheet.Lines(Sheet.Left, y + 12, Sheet.Width, "Measure base circle and lobes first: whether the used cam has the metal for this grind is judged at receipt. Stop and tell the desk if it has not.", Weight.SemiBold, 9) - 4;
        y = RouteTable.Draw(sheet, facts, y + 10);
        y = sheet.Room(y + 7, 52);
        Cautions.Draw(sheet, sheet.Title(Sheet.Left, y, Sheet.Width, "Cautions"), 7.6, Cautions.Shop);
        return sheet.Finish($"{job.Code}, order {order.Number}, printed {Figures.Moment(facts.Shop.ShopTime(facts.PrintedAt))}, {facts.Shop.ShopName}");
    }

    /// <summary>What comes off and what goes on, and with which distributor gear it may run.</summary>
    private static double Gear(Sheet sheet, GearSwap gear, string? advice, double y)
    {
        y = Rows.Draw(sheet, Sheet.Left, y, [["Marks on the cam", gear.Marks], ["Press off", gear.Old.Words()], ["Press on", gear.New.Words()]]);
        return advice is null ? y : sheet.Lines(Sheet.Left, y + 12, Sheet.Width, $"Distributor gear: {advice}", Weight.SemiBold, 9) - 4;
    }

    /// <summary>What the used cam's metal allows, where it was measured.</summary>
    private static double Metal(Sheet sheet, OrderCam cam, double y) => cam.Answer?.Best is not { } fit ? y : Rows.Draw(sheet, Sheet.Left, y,
    [
        ["Grind to base circle, intake", $"{Figures.In(fit.IntakeBaseCircleDiameterIn)} {LobeTable.Inch}"],
        ["Grind to base circle, exhaust", $"{Figures.In(fit.ExhaustBaseCircleDiameterIn)} {LobeTable.Inch}"],
        ["Comes off, least to most", $"{Figures.In(fit.MinRemovalIn)} to {Figures.In(fit.MaxRemovalIn)} {LobeTable.Inch}"],
    ]);
}
