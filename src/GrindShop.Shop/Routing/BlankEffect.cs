using GrindShop.Shop.Feasibility;
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
/// <param name="Misfit">Why the new grind does not come out of the lot that the job holds; null where that is not why it ends.</param>
public sealed record JobEffect(Job Job, JobFate Fate, BlankFit? Fit = null, string? Misfit = null);

/// <summary>What a revision or a cancellation does to each open job of a cam. Pure.</summary>
public sealed record BlankEffect(IReadOnlyList<JobEffect> Fates)
{
    /// <summary>Every open job ends.</summary>
    public static BlankEffect OfCancelling(IEnumerable<Job> jobs) => new([.. jobs.Where(job => job.IsOpen).Select(job => new JobEffect(job, Ended(job)))]);

    /// <summary>
    /// A job goes on where its blank stays the agreed one and either the grind is the same, or nothing has been cut and the new grind comes out of the
    /// very lot that the job holds; otherwise it ends and the piece waits for its blank again. A cam of the customer's goes on until its lobes are ground,
    /// and then where they stay as they were asked for.
    /// </summary>
    /// <param name="lots">What the lot of each job that <see cref="IsGroundOtherwise"/> gives for the new grind, by the job's code.</param>
    public static BlankEffect OfRevising(IEnumerable<Job> jobs, CamSpec spec, FeasibilityAnswer? answer, string? partNumber, IReadOnlyDictionary<string, BlankFit?> lots) =>
        new([.. jobs.Where(job => job.IsOpen).Select(job => Of(job, spec, answer, partNumber, lots))]);

    /// <summary>The job would keep its uncut blank and grind another cam from it: its lot has to be judged for that one.</summary>
    public static bool IsGroundOtherwise(Job job, FeasibilityAnswer? answer, string? partNumber) =>
        job.IsOpen && !job.IsCut && job.BlankLot is { } lot && lot.BlankPart.PartNumber == partNumber && !IsSameGrind(job, answer);

    public string Words => Fates.Count == 0 ? "No blank had been taken." : string.Join(' ', Fates.Select(Say));

    private static JobEffect Of(Job job, CamSpec spec, FeasibilityAnswer? answer, string? partNumber, IReadOnlyDictionary<string, BlankFit?> lots)
    {
        if (IsGroundOtherwise(job, answer, partNumber))
            return lots[job.Code] is { Usable: true } fit ? new JobEffect(job, JobFate.GoesOn, fit) : new JobEffect(job, JobFate.BlankBack, Misfit: Misfit(lots[job.Code]));
        return GoesOn(job, spec, answer, partNumber) ? new JobEffect(job, JobFate.GoesOn, job.BlankLot is null ? null : job.Fit) : new JobEffect(job, Ended(job));
    }

    private static bool GoesOn(Job job, CamSpec spec, FeasibilityAnswer? answer, string? partNumber) => job.Cam.NeedsBlank
        ? job.BlankLot?.BlankPart.PartNumber == partNumber && IsSameGrind(job, answer)
        : !job.Steps.Any(step => step is { Stage: Stage.Grind, IsDone: true }) || Asked(job.Cam.Spec) == Asked(spec);

    private static bool IsSameGrind(Job job, FeasibilityAnswer? answer) => job.Cam.Answer?.Grind == answer?.Grind;

    private static string Misfit(BlankFit? lot) => lot is null ? "its blank is not in the catalog any more." : lot.Fits ? lot.Gear.Reason : string.Join(' ', lot.Reasons);

    /// <summary>What is asked for, without what is only told along with it.</summary>
    private static CamSpec Asked(CamSpec spec) => spec with { Notes = null, Use = null };

    private static JobFate Ended(Job job) => job.BlankLot is null ? JobFate.OwnCamBack : job.IsCut ? JobFate.BlankUsed : JobFate.BlankBack;

    private static string Say(JobEffect effect) => (effect.Job, effect.Fate) switch
    {
        (var job, JobFate.GoesOn) => $"{job.Code} goes on with {job.Metal}.",
        (var job, JobFate.BlankBack) => $"{job.Code} ends{(effect.Misfit is { } why ? $", because the new grind does not come out of the lot it holds ({why.TrimEnd('.')})" : "")}; blank {job.BlankLot!.BlankPart.PartNumber} goes back to lot {job.BlankLot.LotNumber}, at {job.BlankLot.Location}.",
        (var job, JobFate.OwnCamBack) => $"{job.Code} ends; the customer's cam goes back as it is.",
        (var job, _) => $"{job.Code} ends; its blank {job.BlankLot!.BlankPart.PartNumber} of lot {job.BlankLot.LotNumber} was cut already and stays used.",
    };
}
