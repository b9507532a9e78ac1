using BenchmarkDotNet.Attributes;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Benchmarks;

/// <summary>The whole answer to one specification, reasons in words included: over the scenario's catalog, and over 10,000 invented blanks of one family.</summary>
[MemoryDiagnoser]
public class FeasibilityBenchmarks
{
    private readonly ShopScenario scenario = ScenarioReader.Read(Seeds.Folder()).Scenario!;
    private EngineFamily family = null!;
    private ShopRules rules = null!;
    private GrindSpec grind = null!;
    private StockedBlank[] catalog = [], many = [];

    [GlobalSetup]
    public void Prepare()
    {
        family = scenario.Families.Single(one => one.Code == "RV8-R");
        rules = new ShopRules(scenario.Settings, scenario.Rules);
        grind = SpecCompletion.Complete(Wish, family).Grind!;
        catalog = [.. scenario.Blanks.Select(part => new StockedBlank(PreparedBlank.Of(part), 1))];
        many = [.. Enumerable.Range(0, 10_000).AsParallel().AsOrdered().Select(i => new StockedBlank(PreparedBlank.Of(Invented(i)), i % 3))];
        OverTheCatalog();
        OverTenThousand();
    }

    [Benchmark]
    public FeasibilityAnswer OverTheCatalog() => FeasibilityJudge.Judge(grind, family, catalog, rules);

    [Benchmark]
    public FeasibilityAnswer OverTenThousand() => FeasibilityJudge.Judge(grind, family, many, rules);

    private static CamSpec Wish => new()
    {
        EngineFamily = "RV8-R",
        Lifter = LifterType.HydraulicRoller,
        Intake = new LobeWish { LobeLiftIn = .335, DurationAt050CrankDeg = 224, AdvertisedDurationCrankDeg = 274 },
        Exhaust = new LobeWish { LobeLiftIn = .335, DurationAt050CrankDeg = 230, AdvertisedDurationCrankDeg = 280 },
        LobeSeparationCamDeg = 112,
        DistributorGear = DistributorGear.Bronze,
    };

    /// <summary>Every blank a little different: durations, lift, stock, separation.</summary>
    private BlankPart Invented(int i)
    {
        var like = scenario.Blanks.First(part => part.EngineFamily.Code == "RV8-R" && part.Hardening == Hardening.Induction);
        var (at050, lift) = (212 + i % 40 * .7, .31 + i % 17 * .004);
        return new BlankPart
        {
            PartNumber = $"X{i:00000}",
            EngineFamily = like.EngineFamily,
            Form = BlankForm.Milled,
            Alloy = like.Alloy,
            Hardening = like.Hardening,
            CaseDepthIn = .28,
            HardnessHrc = like.HardnessHrc,
            Gear = like.Gear,
            FiringOrder = like.FiringOrder,
            LeastBaseCircleIn = .9,
            Supplier = like.Supplier,
            Cost = 90,
            LeadTimeDays = 30,
            Nominal = like.Nominal! with
            {
                Intake = new LobeSpec(lift, at050, at050 + 50, .006),
                Exhaust = new LobeSpec(lift, at050 + 6, at050 + 56, .006),
                StockIn = .025 + i % 11 * .001,
                LobeSeparationCamDeg = 108 + i % 13 * .5,
            },
        };
    }
}
