using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;

namespace GrindShop.Shop.Demo;

internal enum YesNo
{
    No,
    Yes,
}

/// <summary>Reads blanks.csv: a part number a row.</summary>
internal static class BlankRows
{
    public static IEnumerable<BlankPart> Read(SeedFolder folder, IReadOnlyDictionary<string, EngineFamily> families, IReadOnlyDictionary<string, Vendor> vendors)
    {
        foreach (var row in folder.Rows("blanks.csv"))
        {
            row.Text("engineFamily");
            row.Text("supplier");
            if (row.Known("engineFamily", families) is not { } family || row.Known("supplier", vendors) is not { } supplier)
                continue;
            var part = Part(row, family, supplier);
            BlankCheck.Check(row, part);
            yield return part;
        }
    }

    private static BlankPart Part(CsvRow row, EngineFamily family, Vendor supplier)
    {
        var form = row.Choice<BlankForm>("form");
        return new BlankPart
        {
            PartNumber = row.Text("partNumber"),
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
            RoundDiameterIn = row.MaybeNumber("roundDiameterIn"),
            FiringOrder = row.Text("firingOrder"),
            LeastBaseCircleIn = row.Number("leastBaseCircleIn"),
            Supplier = supplier,
            Cost = row.Money("costUsd"),
            LeadTimeDays = row.Whole("leadTimeDays"),
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
}
