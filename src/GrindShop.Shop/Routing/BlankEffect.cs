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

/// <summary>What a revision or a cancellation does to each open job of a cam. Pure.</summary>
public sealed record BlankEffect(IReadOnlyList<(Job Job, JobFate Fate)> Fates)
{
    /// <summary>Every open job ends.</summary>
    public static BlankEffect OfCancelling(IEnumerable<Job> jobs) => new([.. jobs.Where(job => job.IsOpen).Select(job => (job, Ended(job)))]);

    /// <summary>
    /// A job goes on where its blank stays the agreed one and either nothing has been cut or the grind is the same; otherwise it ends and the piece
    /// waits for its blank again. A cam of the customer's goes on until its lobes are ground, and then where they stay as they were asked for.
    /// </summary>
    public static BlankEffect OfRevising(IEnumerable<Job> jobs, CamSpec spec, FeasibilityAnswer? answer, string? partNumber) =>
        new([.. jobs.Where(job => job.IsOpen).Select(job => (job, GoesOn(job, spec, answer, partNumber) ? JobFate.GoesOn : Ended(job)))]);

    public string Words => Fates.Count == 0 ? "No blank had been taken." : string.Join(' ', Fates.Select(fate => Say(fate.Job, fate.Fate)));

    private static bool GoesOn(Job job, CamSpec spec, FeasibilityAnswer? answer, string? partNumber) => job.Cam.NeedsBlank
        ? job.BlankLot?.BlankPart.PartNumber == partNumber && (!job.IsCut || job.Cam.Answer?.Grind == answer?.Grind)
        : !job.Steps.Any(step => step is { Stage: Stage.Grind, IsDone: true }) || Asked(job.Cam.Spec) == Asked(spec);

    /// <summary>What is asked for, without what is only told along with it.</summary>
    private static CamSpec Asked(CamSpec spec) => spec with { Notes = null, Use = null };

    private static JobFate Ended(Job job) => job.BlankLot is null ? JobFate.OwnCamBack : job.IsCut ? JobFate.BlankUsed : JobFate.BlankBack;

    private static string Say(Job job, JobFate fate) => fate switch
    {
        JobFate.GoesOn => $"{job.Code} goes on with {job.Metal}.",
        JobFate.BlankBack => $"{job.Code} ends; blank {job.BlankLot!.BlankPart.PartNumber} goes back to lot {job.BlankLot.LotNumber}, at {job.BlankLot.Location}.",
        JobFate.OwnCamBack => $"{job.Code} ends; the customer's cam goes back as it is.",
        _ => $"{job.Code} ends; its blank {job.BlankLot!.BlankPart.PartNumber} of lot {job.BlankLot.LotNumber} was cut already and stays used.",
    };
}
