using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Demo;

/// <summary>Can a blank of the scenario exist: alloy with its hardening, gear and side with its family, lobes with the lift law?</summary>
internal static class BlankCheck
{
    public static void Check(CsvRow row, BlankPart part)
    {
        Family(row, part, part.EngineFamily);
        Metal(row, part);
        if (part.Nominal is { } nominal)
            Lobes(row, part, nominal);
        else if (part.RoundDiameterIn is not > 0)
            row.Wrong("roundDiameterIn", "A full-round blank needs its diameter.");
        if (part.Supplier.Kind != VendorKind.BlankSupplier)
            row.Wrong("supplier", $"{part.Supplier.Name} does not supply blanks.");
        if (part.Cost < 0 || part.LeadTimeDays < 0)
            row.Wrong("costUsd", "Cost and lead time are not negative.");
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
        if (!family.IsFiringOrder(part.FiringOrder))
            row.Wrong("firingOrder", $"Every cylinder from 1 to {family.Cylinders} must stand in it once.");
    }

    private static void Metal(CsvRow row, BlankPart part)
    {
        if (!Hardenings(part.Alloy).Contains(part.Hardening))
            row.Wrong("hardening", $"{part.Alloy.Words()} is not delivered {part.Hardening.Words()}.");
        if (part.CaseDepthIn is not null != part.Hardening is Hardening.Induction or Hardening.Carburized)
            row.Wrong("caseDepthIn", "Induction-hardened and carburized blanks have a case depth, others none.");
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
        if (!PolynomialLaw.TrySolve(nominal.Intake, out _, out var intake))
            row.Wrong("intakeAdvertisedDurationCrankDeg", intake.Message);
        if (!PolynomialLaw.TrySolve(nominal.Exhaust, out _, out var exhaust))
            row.Wrong("exhaustAdvertisedDurationCrankDeg", exhaust.Message);
        if (nominal.FollowerKind == FollowerKind.Roller && nominal.RollerRadiusIn <= 0)
            row.Wrong("rollerRadiusIn", "A roller needs a radius.");
        if (nominal.StockIn is <= 0 or > .25)
            row.Wrong("stockIn", "Stock lies between 0 and .25 in per side.");
        if (nominal.BaseCircleDiameterIn < part.LeastBaseCircleIn)
            row.Wrong("baseCircleDiameterIn", "The nominal base circle is no smaller than the least one.");
        if (FieldRange.LobeSeparation.Check(nominal.LobeSeparationCamDeg, "lobeSeparationCamDeg") is { } separation)
            row.Wrong(separation.Field, separation.Message);
        if (FieldRange.IntakeCenterline.Check(nominal.IntakeCenterlineCrankDeg, "intakeCenterlineCrankDeg") is { } centerline)
            row.Wrong(centerline.Field, centerline.Message);
    }
}
