using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.BlankCatalog;

/// <summary>Can a blank exist: alloy with its hardening, gear and side with its family, lobes with the lift law?</summary>
internal static class BlankCheck
{
    public static void Check(CsvRow row, BlankPart part)
    {
        Family(row, part, part.EngineFamily);
        Metal(row, part);
        if (part.Nominal is { } nominal)
            Lobes(row, part, nominal);
        else
            Round(row, part);
        SourceCheck.Check(row, part);
        Lengths(row, part);
    }

    private static void Lengths(CsvRow row, BlankPart part)
    {
        if (part.LeastBaseCircleIn is not (> 0 and < 10))
            row.Wrong("leastBaseCircleIn", "A diameter in inches is needed.");
        foreach (var (column, text, most) in new[] { ("driveEnd", part.DriveEnd, 200), ("notes", part.Notes, 2_000) })
            if (text.Length > most)
                row.Wrong(column, $"{most} letters are the most.");
        if (part.Supersedes == part.PartNumber || part.Alternates.Contains(part.PartNumber))
            row.Wrong("supersedes", "A part does not replace itself.");
    }

    private static void Family(CsvRow row, BlankPart part, EngineFamily family)
    {
        if ((part.Gear == CamGear.None) != (family.Gear == GearPosition.None))
            row.Wrong("camGear", "A cam has a gear where its engine has a distributor, and only there.");
        if (part.Gear == CamGear.PressedIron && family.Gear != GearPosition.Rear)
            row.Wrong("camGear", "An iron gear is pressed on only where it sits at the rear of the cam.");
        if (part.FuelPumpLobe && !family.FuelPumpLobe)
            row.Wrong("fuelPumpLobe", "This engine's cam drives no fuel pump.");
        if (part.Side is not null != family.HasSides)
            row.Wrong("side", "Left or right where the engine has a cam on each side, and only there.");
        if (part.JournalDiametersIn.Length > 0 && (part.JournalDiametersIn.Length != family.JournalDiametersIn.Length || part.JournalDiametersIn.Zip(family.JournalDiametersIn).Any(pair => pair.First > pair.Second)))
            row.Wrong("journalDiametersIn", $"The engine has {family.JournalDiametersIn.Length} journals of {string.Join(' ', family.JournalDiametersIn)} in; none may be larger.");
        if (!family.IsFiringOrder(part.FiringOrder))
            row.Wrong("firingOrder", $"Every cylinder from 1 to {family.Cylinders} must stand in it once.");
    }

    private static void Metal(CsvRow row, BlankPart part)
    {
        if (!Hardenings(part.Alloy).Contains(part.Hardening))
            row.Wrong("hardening", $"{part.Alloy.Words()} is not delivered {part.Hardening.Words()}.");
        if (part.CaseDepthIn is not null != part.Hardening is Hardening.Induction or Hardening.Carburized)
            row.Wrong("caseDepthIn", "Induction-hardened and carburized blanks have a case depth, others none.");
        if (part.CaseDepthIn is <= 0 or > 1)
            row.Wrong("caseDepthIn", "A case depth lies between 0 and 1 in.");
        if (part.HardnessHrc is < 20 or > 70)
            row.Wrong("hardnessHrc", "A hardness lies between 20 and 70 HRC.");
        if (part.HardnessHrc is null != part.IsSoft)
            row.Wrong("hardnessHrc", "Hardened blanks have a hardness, soft ones none.");
    }

    private static Hardening[] Hardenings(BlankAlloy alloy) => alloy switch
    {
        BlankAlloy.HardenableIron => [Hardening.ToTheBarrel],
        BlankAlloy.AustemperedDuctileIron => [Hardening.Through],
        BlankAlloy.Steel8620 => [Hardening.Carburized, Hardening.Soft],
        BlankAlloy.ToolSteel => [Hardening.Through, Hardening.Soft],
        _ => [Hardening.Induction, Hardening.Soft],
    };

    private static void Lobes(CsvRow row, BlankPart part, NominalGrind nominal)
    {
        if (row.Maybe("roundDiameterIn") is not null)
            row.Wrong("roundDiameterIn", "Only a full-round blank has this diameter.");
        if (OutOfRange(row, nominal))
            return;
        if (!PolynomialLaw.TrySolve(nominal.Intake, out _, out var intake))
            row.Wrong("intakeAdvertisedDurationCrankDeg", intake.Message);
        if (!PolynomialLaw.TrySolve(nominal.Exhaust, out _, out var exhaust))
            row.Wrong("exhaustAdvertisedDurationCrankDeg", exhaust.Message);
        if (nominal.StockIn is <= 0 or > .25)
            row.Wrong("stockIn", "Stock lies between 0 and .25 in per side.");
        if (nominal.BaseCircleDiameterIn < part.LeastBaseCircleIn)
            row.Wrong("baseCircleDiameterIn", "The nominal base circle is no smaller than the least one.");
    }

    private static void Round(CsvRow row, BlankPart part)
    {
        if (part.RoundDiameterIn is not (> 0 and < 10))
            row.Wrong("roundDiameterIn", "A full-round blank needs its diameter.");
        foreach (var column in BlankColumns.NominalGrind)
            if (row.Maybe(column) is not null)
                row.Wrong(column, "A full-round blank has no nominal grind; leave it empty.");
    }

    /// <summary>Figures that no lift law and no lobe can be made of.</summary>
    private static bool OutOfRange(CsvRow row, NominalGrind nominal)
    {
        (FieldRange Range, double Value, string Column)[] figures =
        [
            (FieldRange.LobeLift, nominal.Intake.LobeLiftIn, "intakeLobeLiftIn"),
            (FieldRange.DurationAt050, nominal.Intake.DurationAt050CrankDeg, "intakeDurationAt050CrankDeg"),
            (FieldRange.Advertised, nominal.Intake.AdvertisedDurationCrankDeg, "intakeAdvertisedDurationCrankDeg"),
            (FieldRange.LobeLift, nominal.Exhaust.LobeLiftIn, "exhaustLobeLiftIn"),
            (FieldRange.DurationAt050, nominal.Exhaust.DurationAt050CrankDeg, "exhaustDurationAt050CrankDeg"),
            (FieldRange.Advertised, nominal.Exhaust.AdvertisedDurationCrankDeg, "exhaustAdvertisedDurationCrankDeg"),
            (FieldRange.AdvertisedAt, nominal.Intake.AdvertisedAtIn, "advertisedAtIn"),
            (FieldRange.MaxBaseCircle, nominal.BaseCircleDiameterIn, "baseCircleDiameterIn"),
            (FieldRange.LobeSeparation, nominal.LobeSeparationCamDeg, "lobeSeparationCamDeg"),
            (FieldRange.IntakeCenterline, nominal.IntakeCenterlineCrankDeg, "intakeCenterlineCrankDeg"),
        ];
        var wrong = figures.Select(figure => figure.Range.Check(figure.Value, figure.Column)).OfType<FieldProblem>().ToList();
        foreach (var problem in wrong)
            row.Wrong(problem.Field, problem.Message);
        var roller = nominal.FollowerKind == FollowerKind.Roller ? nominal.RollerRadiusIn is >= .15 and <= 1 : nominal.RollerRadiusIn == 0;
        if (!roller)
            row.Wrong("rollerRadiusIn", "A roller needs a radius between .15 and 1 in; a flat tappet has 0.");
        return wrong.Count > 0 || !roller;
    }
}
