using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.BlankCatalog;

internal enum YesNo
{
    No,
    Yes,
}

/// <summary>Reads a part from the cells of one row, see <see cref="BlankColumns"/>; what is wrong with it is noted in the row.</summary>
public static class BlankRow
{
    /// <summary>Null where family or supplier are not known, which leaves nothing to check the rest against.</summary>
    /// <param name="row">The row.</param>
    /// <param name="families">By code.</param>
    /// <param name="vendors">By code.</param>
    /// <param name="parts">The parts there are, by number; null where there is none yet.</param>
    public static BlankPart? Read(CsvRow row, IReadOnlyDictionary<string, EngineFamily> families, IReadOnlyDictionary<string, Vendor> vendors, IReadOnlyDictionary<string, BlankPart>? parts = null)
    {
        row.Text("engineFamily");
        row.Text("supplier");
        if (row.Known("engineFamily", families) is not { } family || row.Known("supplier", vendors) is not { } supplier)
            return null;
        var part = Part(row, family, supplier, SourceText.Read(row, vendors));
        if (parts?.ContainsKey(part.PartNumber) != true && part.PartNumber != "")
            PartNumbers.Check(row, part.PartNumber);
        BlankCheck.Check(row, part);
        return part;
    }

    private static BlankPart Part(CsvRow row, EngineFamily family, Vendor supplier, List<BlankSource> others)
    {
        var form = row.Choice<BlankForm>("form");
        return new BlankPart
        {
            PartNumber = row.Text("partNumber"),
            EngineFamilyId = family.Id,
            EngineFamily = family,
            Form = form,
            Alloy = row.Choice<BlankAlloy>("alloy"),
            Hardening = row.Choice<Hardening>("hardening"),
            CaseDepthIn = row.MaybeNumber("caseDepthIn"),
            HardnessHrc = row.MaybeNumber("hardnessHrc"),
            Gear = row.Choice<CamGear>("camGear"),
            Side = row.MaybeChoice<CamSide>("side"),
            FuelPumpLobe = row.MaybeChoice<YesNo>("fuelPumpLobe") is { } said ? said == YesNo.Yes : family.FuelPumpLobe,
            Nominal = form == BlankForm.FullRound ? null : Nominal(row),
            RoundDiameterIn = form == BlankForm.FullRound ? row.Number("roundDiameterIn") : null,
            FiringOrder = row.Text("firingOrder"),
            LeastBaseCircleIn = row.Number("leastBaseCircleIn"),
            DriveEnd = row.Maybe("driveEnd") ?? "",
            JournalDiametersIn = Journals(row),
            SupplierId = supplier.Id,
            Supplier = supplier,
            SupplierPart = row.Maybe("supplierPart") ?? "",
            Cost = row.Money("costUsd"),
            LeadTimeDays = row.Whole("leadTimeDays"),
            LeastQuantity = row.Whole("leastQuantity"),
            OtherSources = others,
            Supersedes = row.Maybe("supersedes"),
            Alternates = Words(row, "alternates"),
            Notes = row.Maybe("notes") ?? "",
        };
    }

    private static NominalGrind Nominal(CsvRow row) => new()
    {
        Intake = Lobe(row, "intake"),
        Exhaust = Lobe(row, "exhaust"),
        FollowerKind = row.Choice<FollowerKind>("followerKind"),
        RollerRadiusIn = row.Number("rollerRadiusIn"),
        BaseCircleDiameterIn = row.Number("baseCircleDiameterIn"),
        StockIn = row.Number("stockIn"),
        LobeSeparationCamDeg = row.Number("lobeSeparationCamDeg"),
        IntakeCenterlineCrankDeg = row.Number("intakeCenterlineCrankDeg"),
    };

    private static LobeSpec Lobe(CsvRow row, string name) => new(
        row.Number($"{name}LobeLiftIn"),
        row.Number($"{name}DurationAt050CrankDeg"),
        row.Number($"{name}AdvertisedDurationCrankDeg"),
        row.Number("advertisedAtIn"));

    private static double[] Journals(CsvRow row)
    {
        var words = Words(row, "journalDiametersIn");
        var journals = words.Select(word => double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var diameter) ? diameter : 0).ToArray();
        if (journals.Any(diameter => diameter is not (> 0 and < 10)))
            row.Wrong("journalDiametersIn", "Write diameters in inches with spaces between, from the front, or leave it empty for the engine's own.");
        return journals;
    }

    private static string[] Words(CsvRow row, string column) => (row.Maybe(column) ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
