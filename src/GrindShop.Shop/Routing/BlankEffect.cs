using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Routing;

public enum JobFate
{
    /// <summary>Goes on with the blank it has.</summary>
    GoesOn,

    /// <summary>Ends; its blank was not cut yet and goes back to the shelf.</summary>
    BlankBack,

    /// <summary>Ends; its blank was cut already and stays used.</summary>
    BlankUsed,

    /// <summary>Ends; the customer's own cam goes back as it is.</summary>
    OwnCamBack,
}

/// <summary>What becomes of one job.</summary>
/// <param name="Fit">What its own blank gives for the cam as it is agreed now, where the job goes on with one.</param>
/// <param name="Because">Why it ends, where that does not go without saying.</param>
public sealed record JobEffect(Job Job, JobFate Fate, BlankFit? Fit = null, string? Because = null);

/// <summary>A cam of an accepted order as it is to be from now on.</summary>
/// <param name="Lots">What the lot of each job that <see cref="BlankEffect.IsGroundOtherwise"/> gives for the new grind, by the job's code.</param>
public sealed record RevisedCam(CamSpec Spec, FeasibilityAnswer? Answer, string? PartNumber, int Quantity, IReadOnlyDictionary<string, BlankFit?> Lots);

/// <summary>What a revision or a cancellation does to each open job of a cam. Pure.</summary>
/// <param name="Fates">Of every open job.</param>
/// <param name="Pieces">What becomes of the pieces that have no job, in words; empty where their number stays.</param>
public sealed record BlankEffect(IReadOnlyList<JobEffect> Fates, string Pieces = "")
{
    /// <summary>Every open job ends.</summary>
    public static BlankEffect OfCancelling(IEnumerable<Job> jobs) => new([.. jobs.Where(job => job.IsOpen).Select(job => new JobEffect(job, Ended(job)))]);

    /// <summary>
    /// A job goes on where its blank stays the agreed one and either the grind is the same, or nothing has been cut and the new grind comes out of the
    /// very lot that the job holds; otherwise it ends and the piece waits for its blank again. A cam of the customer's goes on until its lobes are ground,
    /// and then where they stay as they were asked for.
    /// </summary>
    /// <remarks>Where fewer pieces are wanted than are at work, those that were begun last and are not cut end first.</remarks>
    public static BlankEffect OfRevising(OrderCam cam, IEnumerable<Job> jobs, RevisedCam now)
    {
        var fates = jobs.Where(job => job.IsOpen).OrderBy(job => job.Id).Select(job => Of(job, now)).ToList();
        for (var (at, over) = (fates.Count - 1, cam.Shipped + GoOn(fates) - now.Quantity); at >= 0 && over > 0; at--)
            if (fates[at] is { Fate: JobFate.GoesOn, Job.IsCut: false } dropped)
                (fates[at], over) = (new JobEffect(dropped.Job, Ended(dropped.Job), Because: "fewer pieces are wanted"), over - 1);
        return new BlankEffect(fates, now.Quantity == cam.Quantity ? "" : PiecesSaid(cam, now.Quantity, cam.Shipped + GoOn(fates)));
    }

    /// <summary>Pieces that are shipped, or at work and stay so.</summary>
    public int Begun(OrderCam cam) => cam.Shipped + GoOn(Fates);

    /// <summary>Why so few pieces cannot be agreed: more are shipped or cut already; null where they can.</summary>
    public Refusal? TooFew(OrderCam cam, int quantity) => Begun(cam) is var begun && begun > quantity
        ? new Refusal("tooFew", $"{begun} of cam {cam.Ordinal} {(begun == 1 ? "is" : "are")} shipped or cut already: at least that many stay in the order.")
        : null;

    /// <summary>The job would keep its uncut blank and grind another cam from it: its lot has to be judged for that one.</summary>
    public static bool IsGroundOtherwise(Job job, FeasibilityAnswer? answer, string? partNumber) =>
        job.IsOpen && !job.IsCut && job.BlankLot is { } lot && lot.BlankPart.PartNumber == partNumber && !IsSameGrind(job, answer);

    public string Words => $"{(Fates.Count == 0 ? "No blank had been taken." : string.Join(' ', Fates.Select(Say)))} {Pieces}".TrimEnd();

    private static int GoOn(IEnumerable<JobEffect> fates) => fates.Count(fate => fate.Fate == JobFate.GoesOn);

    private static string PiecesSaid(OrderCam cam, int quantity, int begun)
    {
        if (quantity == 0)
            return "The cam is taken out of the order.";
        var left = quantity - begun;
        var wait = left == 0 ? "each has its job" : $"{left} of them {(left == 1 ? "waits" : "wait")} {(cam.NeedsBlank ? "for a blank" : "to be begun")}";
        return $"{quantity} {(quantity == 1 ? "piece is" : "pieces are")} wanted{(cam.Quantity == 0 ? "" : $" now instead of {cam.Quantity}")}; {wait}.";
    }

    private static JobEffect Of(Job job, RevisedCam now)
    {
        if (IsGroundOtherwise(job, now.Answer, now.PartNumber))
            return now.Lots[job.Code] is { Usable: true } fit ? new JobEffect(job, JobFate.GoesOn, fit)
                : new JobEffect(job, JobFate.BlankBack, Because: $"the new grind does not come out of the lot it holds ({Misfit(now.Lots[job.Code]).TrimEnd('.')})");
        return GoesOn(job, now) ? new JobEffect(job, JobFate.GoesOn, job.BlankLot is null ? null : job.Fit) : new JobEffect(job, Ended(job));
    }

    private static bool GoesOn(Job job, RevisedCam now) => job.Cam.NeedsBlank
        ? job.BlankLot?.BlankPart.PartNumber == now.PartNumber && IsSameGrind(job, now.Answer)
        : !job.Steps.Any(step => step is { Stage: Stage.Grind, IsDone: true }) || Asked(job.Cam.Spec) == Asked(now.Spec);

    private static bool IsSameGrind(Job job, FeasibilityAnswer? answer) => job.Cam.Answer?.Grind == answer?.Grind;

    private static string Misfit(BlankFit? lot) => lot is null ? "its blank is not in the catalog any more." : lot.Fits ? lot.Gear.Reason : string.Join(' ', lot.Reasons);

    /// <summary>What is asked for, without what is only told along with it.</summary>
    private static CamSpec Asked(CamSpec spec) => spec with { Notes = null, Use = null };

    private static JobFate Ended(Job job) => job.BlankLot is null ? JobFate.OwnCamBack : job.IsCut ? JobFate.BlankUsed : JobFate.BlankBack;

    private static string Say(JobEffect effect)
    {
        var (job, because) = (effect.Job, effect.Because is { } why ? $", because {why}" : "");
        return effect.Fate switch
        {
            JobFate.GoesOn => $"{job.Code} goes on with {job.Metal}.",
            JobFate.BlankBack => $"{job.Code} ends{because}; blank {job.BlankLot!.BlankPart.PartNumber} goes back to lot {job.BlankLot.LotNumber}, at {job.BlankLot.Location}.",
            JobFate.OwnCamBack => $"{job.Code} ends{because}; the customer's cam goes back as it is.",
            _ => $"{job.Code} ends; its blank {job.BlankLot!.BlankPart.PartNumber} of lot {job.BlankLot.LotNumber} was cut already and stays used.",
        };
    }
}
