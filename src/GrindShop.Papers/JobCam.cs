using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;
using GrindShop.Shop.Specs;

namespace GrindShop.Papers;

/// <summary>The cam of a job as both papers need it: what was answered for the blank that was allocated.</summary>
internal sealed class JobCam(Job job)
{
    public Order Order => job.Order;

    public CamSpec Spec => job.Cam.Spec;

    public BlankPart Part => job.BlankLot!.BlankPart;

    public EngineFamily Family => Part.EngineFamily;

    public GrindSpec Grind { get; } = Answer(job).Grind;

    public BlankFit Fit { get; } = job.Fit ?? throw new ArgumentException($"Job {job.Code} was never judged on its blank.", nameof(job));

    public string Engine => Grind.Side is { } side ? $"{Family.Name} ({Family.Code}), {side.ToString().ToLowerInvariant()} cam" : $"{Family.Name} ({Family.Code})";

    public string DistributorGear => Fit.Gear.Said(Grind.DistributorGear);

    /// <summary>What the shop's rules say to mind about this cam on this blank; usually nothing.</summary>
    public IReadOnlyList<string> Minded => [.. Fit.Cautions.Select(caution => caution.Reason)];

    /// <summary>Lifter lift of both lobes: one check lift, or one each where they differ.</summary>
    public bool OneCheckLift => Grind.Intake.AdvertisedAtIn == Grind.Exhaust.AdvertisedAtIn;

    public ValveEvents Events => ValveEvents.Of(
        Grind.Intake.DurationAt050CrankDeg, Grind.Exhaust.DurationAt050CrankDeg, Grind.LobeSeparationCamDeg, Grind.IntakeCenterlineCrankDeg);

    public ValveEvents AdvertisedEvents => ValveEvents.Of(
        Grind.Intake.AdvertisedDurationCrankDeg, Grind.Exhaust.AdvertisedDurationCrankDeg, Grind.LobeSeparationCamDeg, Grind.IntakeCenterlineCrankDeg);

    private static FeasibilityAnswer Answer(Job job) =>
        job.Cam.Answer ?? throw new ArgumentException($"Job {job.Code} has no answer to its specification.", nameof(job));
}
