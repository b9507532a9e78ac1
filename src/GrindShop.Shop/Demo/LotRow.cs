using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Demo;

/// <summary>Reads a row of stock.csv: a lot as it was received.</summary>
internal static class LotRow
{
    public static ScenarioLot? Read(CsvRow row, IReadOnlyDictionary<string, BlankPart> blanks)
    {
        var lot = new ScenarioLot(row.Text("lot"), row.Known("partNumber", blanks)!, row.Whole("quantity"), row.Text("location"), row.Whole("receivedDaysAgo"))
        {
            HeatNumber = row.Maybe("heatNumber"),
            Certificate = row.Maybe("certificate"),
            Sample = Sample(row),
            SampledDaysAgo = row.MaybeWhole("sampledDaysAgo") ?? 0,
            Quarantine = row.Maybe("quarantine"),
        };
        if (lot.Quantity <= 0)
            row.Wrong("quantity", "At least one blank is needed.");
        if (lot.ReceivedDaysAgo < 0)
            row.Wrong("receivedDaysAgo", "Days count back from today.");
        if (lot is { Part: { } part, Sample: { } sample } && LotSample.Of(part, sample, "", default).Refusal is { } refusal)
            row.Wrong("samplePieces", refusal.Reason);
        return lot.Part is null ? null : lot;
    }

    private static SampleFigures? Sample(CsvRow row) => row.MaybeWhole("samplePieces") is not { } pieces ? null : new SampleFigures(
        pieces,
        row.MaybeNumber("sampleHrc") is { } hrc ? new HardnessReading(hrc, HardnessScale.Hrc) : null,
        row.MaybeNumber("sampleCaseIn"),
        row.MaybeNumber("sampleStockIn"),
        null);
}
