using GrindShop.Lobes;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers;

/// <summary>One cam of a quote: what is to be done, the grind, and what it does to the blank.</summary>
internal static class QuoteCam
{
    private const double GrindWidth = 306, Gap = 24, BlankX = Sheet.Left + GrindWidth + Gap, BlankWidth = Sheet.Width - GrindWidth - Gap;

    private static readonly Table Rows = new(13.5, 9, new("", 136), new("Intake", 60, Align.Decimal, 22), new("Exhaust", 60, Align.Decimal, 22), new("unit", 50));
    private static readonly Table BlankRows = new(13.5, 9, new("", 112), new("", 50, Align.Decimal, 24), new("", 48));

    /// <summary>Answers the y below.</summary>
    public static double Draw(Sheet sheet, QuotedCam cam, bool isOnly, double y)
    {
        y = sheet.Title(Sheet.Left, sheet.Room(y, 150), Sheet.Width, Head(cam, isOnly));
        if (cam.ReceivedCondition is { } condition)
            y = sheet.Lines(Sheet.Left, y + 8, Sheet.Width, $"{(cam.IsExpected ? "Expected condition, as told" : "Received condition")}: {condition}", Weight.Regular, 9) - 4;
        if (cam.Gear is { } gear)
            y = sheet.Lines(Sheet.Left, y + 8, Sheet.Width, $"{Figures.Capital(gear.Words)}, on the cam marked {gear.Marks}", Weight.Regular, 9) - 4;
        return cam.Grind is { } grind ? Math.Max(Grind(sheet, grind, cam.Fit, y), Blank(sheet, cam, y)) : y;
    }

    private static string Head(QuotedCam cam, bool isOnly)
    {
        var what = $"{cam.Kind.Words()}, {cam.Spec.EngineFamily ?? "engine not named"}{(cam.Spec.Side is { } side ? $", {side.ToString().ToLowerInvariant()} cam" : "")}{(cam.Spec.Lifter is { } lifter ? $", {lifter.Words()}" : "")}";
        return (isOnly ? Figures.Capital(what) : $"Cam {cam.Ordinal}: {what}") + (cam.Quantity > 1 ? $", {cam.Quantity} pieces" : "");
    }

    private static double Grind(Sheet sheet, GrindSpec grind, BlankFit? fit, double y) => Rows.Draw(sheet, Sheet.Left, y,
    [
        Row("Lobe lift", grind, lobe => Figures.Lift(lobe.LobeLiftIn), LobeTable.Inch),
        Row("Duration at .050 lift", grind, lobe => Figures.Deg(lobe.DurationAt050CrankDeg), LobeTable.CrankDeg),
        Row("Advertised duration", grind, lobe => Figures.Deg(lobe.AdvertisedDurationCrankDeg), LobeTable.CrankDeg),
        ["Lobe separation (LSA)", Figures.Deg(grind.LobeSeparationCamDeg), "", LobeTable.CamDeg],
        ["Centrelines (ICL, ECL)", Figures.Deg(grind.IntakeCenterlineCrankDeg), Figures.Deg(grind.ExhaustCenterlineCrankDeg), LobeTable.CrankDeg],
        .. fit is null ? [] : new[] { new[] { "Base circle diameter", Figures.In(fit.IntakeBaseCircleDiameterIn), Figures.In(fit.ExhaustBaseCircleDiameterIn), LobeTable.Inch } },
    ]);

    private static string[] Row(string what, GrindSpec grind, Func<LobeSpec, string> read, string unit) => [what, read(grind.Intake), read(grind.Exhaust), unit];

    private static double Blank(Sheet sheet, QuotedCam cam, double y)
    {
        if (cam.Fit is not { } fit)
            return y;
        sheet.Text(BlankX, y + 9, $"From blank {fit.PartNumber}", Weight.SemiBold, 9, mostWidth: BlankWidth);
        y = BlankRows.Draw(sheet, BlankX, y + 12,
        [
            ["Comes off, least", Figures.In(fit.MinRemovalIn), LobeTable.Inch],
            ["Comes off, most", Figures.In(fit.MaxRemovalIn), LobeTable.Inch],
            .. fit.LeastCaseLeftIn is { } left ? new[] { new[] { "Case left, least", Figures.In(left), LobeTable.Inch } } : [],
        ]);
        return sheet.Lines(BlankX, y + 10, BlankWidth, $"Distributor gear: {fit.Gear.Said(cam.Spec.DistributorGear)}", Weight.Regular, 8, mostLines: 4) - 4;
    }
}
