using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Benchmarks;

/// <summary>An invented family's demand and catalog, as large as a plan may get: figures spread as wide as street to race, the popular ones often.</summary>
internal sealed class PlanScenario
{
    private const string Code = "RV8-R";
    private readonly ShopScenario scenario;
    private readonly Random random = new(20);

    public PlanScenario(int specs, int blanks)
    {
        scenario = ScenarioReader.Read(Seeds.Folder()).Scenario!;
        Family = scenario.Families.Single(family => family.Code == Code);
        Rules = new ShopRules(scenario.Settings, scenario.Rules);
        Specs = [.. Enumerable.Range(0, specs).Select(_ => Spec())];
        Quantities = [.. Specs.Select(_ => 1 + random.Next(3))];
        var parts = Enumerable.Range(0, blanks).Select(Part).ToList();
        Blanks = [.. parts.AsParallel().AsOrdered().WithDegreeOfParallelism(2).Select(PreparedBlank.Of)];
    }

    public EngineFamily Family { get; }

    public ShopRules Rules { get; }

    public GrindSpec[] Specs { get; }

    public int[] Quantities { get; }

    public PreparedBlank[] Blanks { get; }

    private GrindSpec Spec()
    {
        var solid = random.Next(10) < 3;
        var (at050, split) = (Math.Round(Normal(solid ? 256 : 228, solid ? 9 : 9)), 2 * random.Next(2, 6));
        var lift = Math.Round(Normal(.10 + at050 * .00105, .012) / .005) * .005;
        var separation = Math.Round(Normal(solid ? 108 : 111, 1.5));
        return SpecCompletion.Complete(new CamSpec
        {
            EngineFamily = Code,
            Lifter = solid ? LifterType.SolidRoller : LifterType.HydraulicRoller,
            Intake = Wish(lift, at050, solid),
            Exhaust = Wish(lift + .005 * random.Next(-1, 3), at050 + split, solid),
            LobeSeparationCamDeg = separation,
            IntakeCenterlineCrankDeg = separation - random.Next(2, 6),
            DistributorGear = (DistributorGear)random.Next(Enum.GetValues<DistributorGear>().Length),
        }, Family).Grind ?? Spec();
    }

    private static LobeWish Wish(double lift, double at050, bool solid) => new()
    {
        LobeLiftIn = lift,
        DurationAt050CrankDeg = at050,
        AdvertisedDurationCrankDeg = at050 + (solid ? 34 : 50),
        AdvertisedAtIn = solid ? .020 : .006,
        LashIn = solid ? .016 : null,
    };

    private BlankPart Part(int i)
    {
        var likes = scenario.Blanks.Where(part => part.EngineFamily.Code == Code && part.Nominal is { FollowerKind: FollowerKind.Roller } && part.FiringOrder == Family.FiringOrder).ToList();
        var like = likes[i % likes.Count];
        var solid = random.Next(10) < 4;
        var at050 = Math.Round(Normal(solid ? 256 : 230, 12));
        var lift = Math.Round((.10 + at050 * .00105) / .005) * .005;
        var (ramps, at) = solid ? (34, .020) : (50, .006);
        var separation = 106 + random.Next(0, 9);
        return new BlankPart
        {
            PartNumber = $"X{i:000}",
            EngineFamily = Family,
            Form = BlankForm.Milled,
            Alloy = like.Alloy,
            Hardening = like.Hardening,
            CaseDepthIn = like.CaseDepthIn,
            HardnessHrc = like.HardnessHrc,
            Gear = like.Gear,
            FiringOrder = like.FiringOrder,
            LeastBaseCircleIn = like.LeastBaseCircleIn,
            Supplier = like.Supplier,
            Cost = like.Cost,
            LeadTimeDays = like.LeadTimeDays,
            Nominal = like.Nominal! with
            {
                Intake = new LobeSpec(lift, at050, at050 + ramps, at),
                Exhaust = new LobeSpec(lift + .005, at050 + 8, at050 + 8 + ramps, at),
                StockIn = .025 + .005 * random.Next(0, 5),
                LobeSeparationCamDeg = separation,
                IntakeCenterlineCrankDeg = separation - 4,
            },
        };
    }

    private double Normal(double mean, double deviation) =>
        mean + deviation * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(Math.Tau * random.NextDouble());
}
