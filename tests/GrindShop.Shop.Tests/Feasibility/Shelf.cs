using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;

namespace GrindShop.Shop.Tests.Feasibility;

/// <summary>The demo's catalog read without a database, and questions to it.</summary>
internal static class Shelf
{
    public static readonly ShopRules Rules = new(SeedFiles.Scenario.Settings, SeedFiles.Scenario.Rules);

    public static readonly IReadOnlyList<PreparedBlank> Blanks = [.. SeedFiles.Scenario.Blanks.AsParallel().AsOrdered().Select(PreparedBlank.Of)];

    public static PreparedBlank Blank(string partNumber) => Blanks.Single(blank => blank.Part.PartNumber == partNumber);

    public static IEnumerable<PreparedBlank> Of(EngineFamily family) => Blanks.Where(blank => blank.Part.EngineFamily == family);

    /// <summary>Judged against every blank of its family, one of each in stock.</summary>
    public static FeasibilityAnswer Judge(GrindSpec grind) => Judge(grind, _ => 1);

    public static FeasibilityAnswer Judge(GrindSpec grind, Func<BlankPart, int> available)
    {
        var family = Family(grind);
        return FeasibilityJudge.Judge(grind, family, Of(family).Select(blank => new StockedBlank(blank, available(blank.Part))), Rules);
    }

    public static BlankFit Fit(GrindSpec grind, BlankPart part) => Fit(grind, PreparedBlank.Of(part));

    public static BlankFit Fit(GrindSpec grind, PreparedBlank blank) =>
        FeasibilityJudge.Judge(grind, blank.Part.EngineFamily, [new StockedBlank(blank, 1)], Rules).Blanks.Single();

    public static EngineFamily Family(GrindSpec grind) => SeedFiles.Scenario.Families.Single(family => family.Code == grind.EngineFamily);

    /// <summary>The very grind a blank was milled for.</summary>
    public static GrindSpec Nominal(PreparedBlank blank)
    {
        var (part, nominal) = (blank.Part, blank.Part.Nominal!);
        var solid = nominal.Intake.AdvertisedAtIn > .01;
        var roller = nominal.FollowerKind == FollowerKind.Roller;
        return new GrindSpec
        {
            EngineFamily = part.EngineFamily.Code,
            Side = part.Side,
            Lifter = roller ? solid ? LifterType.SolidRoller : LifterType.HydraulicRoller : solid ? LifterType.SolidFlat : LifterType.HydraulicFlat,
            FollowerDiameterIn = roller ? 2 * nominal.RollerRadiusIn : part.EngineFamily.FootDiameterIn,
            Intake = nominal.Intake,
            Exhaust = nominal.Exhaust,
            RockerRatio = part.EngineFamily.RockerRatio,
            LobeSeparationCamDeg = nominal.LobeSeparationCamDeg,
            IntakeCenterlineCrankDeg = nominal.IntakeCenterlineCrankDeg,
            FiringOrder = part.FiringOrder,
        };
    }

    public static GrindSpec Longer(GrindSpec grind, double crankDeg) =>
        grind with { Intake = Longer(grind.Intake, crankDeg), Exhaust = Longer(grind.Exhaust, crankDeg) };

    public static LobeSpec Longer(LobeSpec lobe, double crankDeg) => lobe with
    {
        DurationAt050CrankDeg = lobe.DurationAt050CrankDeg + crankDeg,
        AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg + crankDeg,
    };

    /// <summary>A blank like another, of another metal or shape.</summary>
    public static BlankPart Like(
        BlankPart part, BlankAlloy? alloy = null, Hardening? hardening = null, double? caseDepthIn = null, NominalGrind? nominal = null, double? roundDiameterIn = null) => new()
        {
            PartNumber = part.PartNumber + "-like",
            EngineFamily = part.EngineFamily,
            Form = roundDiameterIn is null ? part.Form : BlankForm.FullRound,
            Alloy = alloy ?? part.Alloy,
            Hardening = hardening ?? part.Hardening,
            CaseDepthIn = caseDepthIn ?? part.CaseDepthIn,
            Gear = part.Gear,
            Nominal = roundDiameterIn is null ? nominal ?? part.Nominal : null,
            RoundDiameterIn = roundDiameterIn,
            FiringOrder = part.FiringOrder,
            LeastBaseCircleIn = part.LeastBaseCircleIn,
            Supplier = part.Supplier,
            Cost = part.Cost,
            LeadTimeDays = part.LeadTimeDays,
        };
}
