using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers;

/// <summary>The card that goes back with a cam of the customer's: how it came in, what was done to it, what to mind before the engine runs.</summary>
internal static class RepairCard
{
    private static readonly Table Rows = new(16, 10, new("", 190), new("", 350));

    public static byte[] Print(SpecCardFacts facts)
    {
        var (job, order, cam) = (facts.Job, facts.Job.Order, facts.Job.Cam);
        var sheet = new Sheet($"Spec card {job.Code}", facts.Shop, facts.PrintedAt);
        var y = ShopHead.Draw(sheet, facts.Shop, "Spec card", job.Code);
        y = Field.Band(sheet, y, new("For", order.Customer.Name, 222), new("Your reference", order.CustomerReference, 200), new("Order and job", $"{order.Number}, {job.Code}", 118));
        y = Field.Band(sheet, y, new("Work", $"{Figures.Capital(cam.Kind.Words())} of your own cam", 222), new("Engine family", cam.Spec.EngineFamily, 200), new("Date", Figures.Day(facts.Shop.Today(facts.PrintedAt)), 118));
        y = sheet.Title(Sheet.Left, y + 8, Sheet.Width, cam.IsExpected ? "Expected, as you told" : "It came in like this");
        y = sheet.Lines(Sheet.Left, y + 10, Sheet.Width, cam.ReceivedCondition, Weight.Regular, 10) - 4;
        y = Done(sheet, facts, sheet.Title(Sheet.Left, y + 8, Sheet.Width, "What was done"));
        y = sheet.Room(y + 20, 120);
        Cautions.Draw(sheet, sheet.Title(Sheet.Left, y, Sheet.Width, "Before the engine runs") + 2, 9.5, cam.Kind == WorkKind.Regrind ? Cautions.Engine : [Cautions.DistributorGear]);
        return sheet.Finish($"{job.Code}, order {order.Number}, {facts.Shop.ShopName}");
    }

    private static double Done(Sheet sheet, SpecCardFacts facts, double y)
    {
        var cam = facts.Job.Cam;
        y = Rows.Draw(sheet, Sheet.Left, y, [.. cam.Kind == WorkKind.Regrind ? Ground(cam, facts.Job) : cam.Gear is { } gear ? Gears(gear) : [], .. Steps(facts)]);
        return facts.Gear is not { } advice ? y : sheet.Lines(Sheet.Left, y + 12, Sheet.Width, $"Distributor gear: {advice.Said(cam.Spec.DistributorGear)}", Weight.SemiBold, 9.5) - 4;
    }

    private static IEnumerable<string[]> Gears(GearSwap gear) =>
        [["Marks on the cam", gear.Marks], ["Pressed off", gear.Old.Words()], ["Pressed on", gear.New.Words()]];

    /// <summary>The figures it was ground to, as they were ordered; base circles where the used cam was measured.</summary>
    private static IEnumerable<string[]> Ground(OrderCam cam, Job job) =>
    [
        .. SpecWords.Fields.Where(field => field.Path is not ("notes" or "use" or "engineFamily")).Select(field => (field.Name, Value: field.Read(cam.Spec))).Where(row => row.Value is not null).Select(row => new[] { row.Name, row.Value! }),
        .. job.Fit is { } fit ? new[] { new[] { "Base circle, intake and exhaust", $"{Figures.In(fit.IntakeBaseCircleDiameterIn)} and {Figures.In(fit.ExhaustBaseCircleDiameterIn)} {LobeTable.Inch}" } } : [],
    ];

    private static IEnumerable<string[]> Steps(SpecCardFacts facts) => facts.Job.Steps.OrderBy(step => step.Ordinal)
        .Where(step => step.Stage is not Stage.Ship && step.DoneAt is not null)
        .Select(step => new[] { $"Done: {step.Stage.Words()}", Figures.Day(facts.Shop.Today(step.DoneAt!.Value)) });
}
