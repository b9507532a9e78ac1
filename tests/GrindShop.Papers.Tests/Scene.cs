using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers.Tests;

/// <summary>An invented job, put together without a database.</summary>
internal sealed record Scene
{
    public static readonly DateTimeOffset Now = new(2026, 11, 25, 17, 6, 0, TimeSpan.Zero);

    public const string Url = "http://shop.example:8080/floor/jobs/J1042";

    public static readonly ShopSettings Shop = new()
    {
        ShopName = "Millrace Cam Grinding",
        Address = "1400 Millrace Lane, Fallow Creek, IL 60000",
        Phone = "(555) 555-0100",
        Email = "desk@grindshop.example",
        TimeZone = "America/Chicago",
        CleanupIn = .004,
        LeastInductionCaseIn = .080,
        LeastCarburizedCaseIn = .025,
        UsualGrindDays = 10,
        HeatTreatExtraDays = 16,
        BlankMarkup = 1.8m,
    };

    public string Customer { get; init; } = "Harrow Lane Engines";

    public string? Reference { get; init; } = "PO 7731, street car";

    public string? Notes { get; init; }

    public bool Soft { get; init; } = true;

    public bool FullRound { get; init; }

    public string GearReason { get; init; } = "Bronze is the sacrificial partner of a steel cam gear: inspect it and replace it in time.";

    public int StepsDone { get; init; } = 2;

    /// <summary>Rules of this shop besides the one for the gears; rollers on its steels are fine.</summary>
    public IReadOnlyList<CompatibilityRule> Rules { get; init; } =
    [
        .. from alloy in new[] { BlankAlloy.Steel5160, BlankAlloy.Steel8620 }
           from lifter in Enum.GetValues<LifterType>()
           select new LifterRule { Alloy = alloy, Lifter = lifter, Verdict = RuleVerdict.Ok, Reason = "Carries it." },
    ];

    public CamSpec Spec { get; init; } = SolidRoller;

    public EngineFamily Family { get; init; } = Eight();

    public static CamSpec SolidRoller => new()
    {
        EngineFamily = "RV8-R",
        Lifter = LifterType.SolidRoller,
        RockerRatio = 1.55,
        Intake = new() { LobeLiftIn = .3655, DurationAt050CrankDeg = 242, AdvertisedDurationCrankDeg = 274, AdvertisedAtIn = .020, LashIn = .016 },
        Exhaust = new() { LobeLiftIn = .372, DurationAt050CrankDeg = 248.5, AdvertisedDurationCrankDeg = 281, AdvertisedAtIn = .020, LashIn = .018 },
        LobeSeparationCamDeg = 109,
        IntakeCenterlineCrankDeg = 104.5,
        DistributorGear = DistributorGear.Bronze,
    };

    public static CamSpec HydraulicFlat => new()
    {
        EngineFamily = "RV8-R",
        Lifter = LifterType.HydraulicFlat,
        RockerRatio = 1.5,
        Intake = new() { LobeLiftIn = .310, DurationAt050CrankDeg = 222, AdvertisedDurationCrankDeg = 272, AdvertisedAtIn = .006 },
        LobeSeparationCamDeg = 110,
        IntakeCenterlineCrankDeg = 106,
    };

    public static EngineFamily Eight(params double[] intervalsCrankDeg) => new()
    {
        Code = "RV8-R",
        Name = "Ridgetop V8, rear gear",
        Kind = EngineKind.PushrodV,
        Cylinders = 8,
        FiringOrder = "1-8-4-3-6-5-7-2",
        FiringIntervalsCrankDeg = intervalsCrankDeg,
        BankAngleDeg = 90,
        LifterBankAngleDeg = 90,
        BankOfCylinder = [0, 1, 0, 1, 0, 1, 0, 1],
        ValveOrder = "1E 2E 1I 2I 3I 4I 3E 4E 5E 6E 5I 6I 7I 8I 7E 8E",
        Rotation = CamRotation.Clockwise,
        Datum = CamDatum.Dowel,
        DatumAngleCamDeg = 3.5,
        Gear = GearPosition.Rear,
        JournalDiametersIn = [1.9, 1.9, 1.9, 1.9, 1.9],
        NoseClearanceIn = .010,
        LeastBaseCircleIn = .9,
        UsualBaseCircleIn = 1.13,
        RockerRatio = 1.5,
        RollerDiameterIn = .75,
        FootDiameterIn = .842,
        LobeWidthIn = .54,
        UsualLobeSeparationCamDeg = 110,
        UsualAdvanceCrankDeg = 4,
    };

    /// <summary>The job as the floor finds it, the first steps signed off.</summary>
    public Job Job()
    {
        var part = Part();
        var order = Accepted(part);
        var heatTreater = new Vendor { Code = "EMBERLINE", Name = "Emberline Heat Treating", Kind = VendorKind.HeatTreater, LeadTimeDays = 12 };
        var lot = BlankLot.Receive(part, "L-2026-117", "Rack C, shelf 4", 3, "Petra Vane", Now.AddDays(-40));
        var job = global::GrindShop.Shop.Routing.Job.Open(order, order.First, new BlankLotClaim(lot.Id, part.PartNumber, lot.LotNumber), Stages.RouteFor(part, heatTreater), "Petra Vane", Now).Value!;
        Load(job, nameof(job.BlankLot), lot);
        foreach (var step in job.Steps.Where(step => step.Stage is Stage.HeatTreatOut or Stage.HeatTreatBack))
            Load(step, nameof(step.Vendor), heatTreater);
        for (var i = 0; i < StepsDone; i++)
            job.Complete(job.Current!.Stage, "Anselm Roke", Now.AddDays(i - 4), $"key{i}");
        return job;
    }

    public TravelerFacts Traveler() => new(Job(), Shop, Url, Now);

    public SpecCardFacts SpecCard() => new(Job(), Shop, Now);

    public FeasibilityAnswer Answer(BlankPart part)
    {
        var grind = SpecCompletion.Complete(Spec, Family).Grind!;
        var rules = new ShopRules(Shop, [SteelOnBronze, .. Rules]);
        return FeasibilityJudge.Judge(grind, Family, [new StockedBlank(PreparedBlank.Of(part), 3)], rules);
    }

    private GearRule SteelOnBronze => new()
    {
        Position = GearPosition.Rear,
        CamGear = CamGear.Steel,
        DistributorGear = DistributorGear.Bronze,
        Verdict = RuleVerdict.Ok,
        Reason = GearReason,
    };

    public BlankPart Part() => Soft
        ? Blank("RV8R-862-11", BlankAlloy.Steel8620, Hardening.Soft, null, null)
        : Blank("RV8R-516-08", BlankAlloy.Steel5160, Hardening.Induction, .25, 58);

    private BlankPart Blank(string number, BlankAlloy alloy, Hardening hardening, double? caseDepthIn, double? hrc) => new()
    {
        PartNumber = number,
        EngineFamily = Family,
        Form = FullRound ? BlankForm.FullRound : BlankForm.Milled,
        Alloy = alloy,
        Hardening = hardening,
        CaseDepthIn = caseDepthIn,
        HardnessHrc = hrc,
        Gear = CamGear.Steel,
        Nominal = FullRound ? null : Milled,
        RoundDiameterIn = FullRound ? 1.88 : null,
        FiringOrder = Family.FiringOrder,
        LeastBaseCircleIn = .95,
        Supplier = new Vendor { Code = "TURNSTILE", Name = "Turnstile Cam Blanks", Kind = VendorKind.BlankSupplier, LeadTimeDays = 28 },
        Cost = 120,
        LeadTimeDays = 28,
    };

    private static NominalGrind Milled => new()
    {
        Intake = new LobeSpec(.370, 246, 278, .020),
        Exhaust = new LobeSpec(.370, 252, 284, .020),
        FollowerKind = FollowerKind.Roller,
        RollerRadiusIn = .375,
        BaseCircleDiameterIn = 1.13,
        StockIn = .030,
        LobeSeparationCamDeg = 110,
        IntakeCenterlineCrankDeg = 106,
    };

    private Order Accepted(BlankPart part)
    {
        var enquiry = new Enquiry
        {
            SubmitKey = "key",
            Channel = OrderChannel.Phone,
            Spec = Spec with { Notes = Notes },
            Contact = new Contact { Name = Customer, Phone = "555 555 0101" },
            CustomerReference = Reference,
        };
        var order = Order.Receive(new OrderNumbers("C1042", "SECRETTRACKING"), enquiry, new Customer { Name = Customer, Since = Now }, Answer(part), "Petra Vane", Now);
        order.Quote(part.PartNumber, [new PriceLine("base", "Grinding", 417.13m)], "Petra Vane", Now);
        order.Accept(new DateOnly(2026, 12, 14), new DateOnly(2026, 11, 25), "Petra Vane", Now);
        return order;
    }

    /// <summary>Sets what only the database's loading sets.</summary>
    private static void Load(object entity, string property, object value) => entity.GetType().GetProperty(property)!.SetValue(entity, value);
}
