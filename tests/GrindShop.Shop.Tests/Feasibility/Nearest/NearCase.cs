using GrindShop.Lobes;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;

namespace GrindShop.Shop.Tests.Nearest;

/// <summary>A wish against some of the scenario's blanks; no database.</summary>
internal sealed record NearCase(GrindSpec Wish, IReadOnlyList<StockedBlank> Blanks)
{
    private static readonly ShopScenario Scenario = SeedFiles.Scenario;
    private static readonly PreparedBlank[] Prepared = [.. Scenario.Blanks.AsParallel().AsOrdered().Select(PreparedBlank.Of)];

    public static ShopRules Rules { get; } = new(Scenario.Settings, Scenario.Rules);

    public EngineFamily Family => Scenario.Families.First(family => family.Code == Wish.EngineFamily);

    public FeasibilityAnswer Judge(GrindSpec grind) => FeasibilityJudge.Judge(grind, Family, Blanks, Rules);

    public IReadOnlyList<NearestGrind> Offers(CancellationToken cancel = default) => NearestGrinds.Of(Wish, Family, Blanks, Rules, cancel);

    /// <summary>Stock of some parts; the others of the family have to be ordered.</summary>
    public static NearCase Stocked(CamSpec wish, params string[] inStock) =>
        new(Complete(wish), [.. Of(wish).Select(blank => new StockedBlank(blank, inStock.Contains(blank.Part.PartNumber) ? 1 : 0))]);

    /// <summary>A family that has no other blanks than these.</summary>
    public static NearCase Only(CamSpec wish, params string[] parts) =>
        new(Complete(wish), [.. Of(wish).Where(blank => parts.Contains(blank.Part.PartNumber)).Select(blank => new StockedBlank(blank, 1))]);

    public static IEnumerable<PreparedBlank> Of(CamSpec wish) => Prepared.Where(blank => blank.Part.EngineFamily.Code == wish.EngineFamily);

    public static GrindSpec Complete(CamSpec wish) => Completed(wish).Grind ?? throw new InvalidOperationException(string.Join(' ', Completed(wish).Problems));

    public static CompletedSpec Completed(CamSpec wish) => SpecCompletion.Complete(wish, Scenario.Families.First(family => family.Code == wish.EngineFamily));

    public static CamSpec Cam(LifterType lifter, double lift, double at050, double separation, DistributorGear? gear = null, double exhaustMore = 8) => new()
    {
        EngineFamily = "RV8-R",
        Lifter = lifter,
        Intake = new LobeWish { LobeLiftIn = lift, DurationAt050CrankDeg = at050, AdvertisedDurationCrankDeg = at050 + 50, AdvertisedAtIn = .006 },
        Exhaust = new LobeWish { LobeLiftIn = lift, DurationAt050CrankDeg = at050 + exhaustMore, AdvertisedDurationCrankDeg = at050 + exhaustMore + 50, AdvertisedAtIn = .006 },
        LobeSeparationCamDeg = separation,
        IntakeCenterlineCrankDeg = separation - 4,
        DistributorGear = gear,
    };

    /// <summary>An offer typed into the form.</summary>
    public static CamSpec Typed(GrindSpec grind) => new()
    {
        EngineFamily = grind.EngineFamily,
        Side = grind.Side,
        Lifter = grind.Lifter,
        FollowerDiameterIn = grind.FollowerDiameterIn,
        Intake = Typed(grind.Intake, grind.IntakeLashIn),
        Exhaust = Typed(grind.Exhaust, grind.ExhaustLashIn),
        RockerRatio = grind.RockerRatio,
        LobeSeparationCamDeg = grind.LobeSeparationCamDeg,
        IntakeCenterlineCrankDeg = grind.IntakeCenterlineCrankDeg,
        DistributorGear = grind.DistributorGear,
        MaxBaseCircleDiameterIn = grind.MaxBaseCircleDiameterIn,
        FiringOrder = grind.FiringOrder,
    };

    private static LobeWish Typed(LobeSpec lobe, double lashIn) => new()
    {
        LobeLiftIn = lobe.LobeLiftIn,
        DurationAt050CrankDeg = lobe.DurationAt050CrankDeg,
        AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg,
        AdvertisedAtIn = lobe.AdvertisedAtIn,
        LashIn = lashIn,
    };
}
