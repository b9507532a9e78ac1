using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;

namespace GrindShop.Shop.Routing;

/// <summary>A blank that was taken for an order: which part, from which lot.</summary>
/// <param name="LotId">The lot.</param>
/// <param name="PartNumber">Its part.</param>
/// <param name="LotNumber">Its number.</param>
/// <param name="Fit">What this lot gives, where that is not what was answered for the part.</param>
public sealed record BlankLotClaim(int LotId, string PartNumber, string LotNumber, BlankFit? Fit = null);

/// <summary>How a job ended that did not ship.</summary>
public enum JobEnd
{
    Scrapped,
    Cancelled,
}

/// <summary>One cam on its way through the shop: a route of steps, done one after the other, each once.</summary>
public sealed class Job
{
    private readonly List<JobStep> _steps = [];
    private readonly List<JobEvent> _history = [];

    private Job()
    {
    }

    public int Id { get; private set; }

    /// <summary>What is printed, scanned and typed, such as J1042.</summary>
    public string Code { get; private set; } = "";

    public int OrderId { get; private set; }

    public Order Order { get; private set; } = null!;

    public int OrderCamId { get; private set; }

    /// <summary>The cam of the order of which this is one piece.</summary>
    public OrderCam Cam { get; private set; } = null!;

    /// <summary>Null where the customer's own cam is worked on.</summary>
    public int? BlankLotId { get; private set; }

    public BlankLot? BlankLot { get; private set; }

    /// <summary>What the cam is made of, and where that lies.</summary>
    public string Metal => BlankLot is { } lot ? $"blank {lot.BlankPart.PartNumber}, lot {lot.LotNumber}, at {lot.Location}" : "the customer's own cam";

    /// <summary>A cam ground from a blank it was judged on, and every cam of the customer's: what was done to it can be said on a card.</summary>
    public bool HasSpecCard => BlankLot is null || Cam.Answer is not null;

    /// <summary>The customer may have the card: the cam is on its way.</summary>
    public bool HasShippedCard => ShippedAt is not null && HasSpecCard;

    /// <summary>What the lot gives, where that is not what was answered for its part, or where the answer was given anew after the blank was taken.</summary>
    public BlankFit? LotFit { get; private set; }

    /// <summary>The figures to grind to from the blank that was taken; null where the order was never judged on it.</summary>
    public BlankFit? Fit => LotFit ?? Cam.Answer?.Blanks.FirstOrDefault(fit => fit.PartNumber == (BlankLot?.BlankPart.PartNumber ?? MeasuredCam.PartNumber));

    public DateOnly DueOn { get; private set; }

    public DateTimeOffset OpenedAt { get; private set; }

    public DateTimeOffset? ShippedAt { get; private set; }

    public DateTimeOffset? EndedAt { get; private set; }

    /// <summary>Null while it is in work and when it has shipped.</summary>
    public JobEnd? EndedAs { get; private set; }

    /// <summary>The code of the scrapped job in whose stead this one was opened.</summary>
    public string? Replaces { get; internal set; }

    /// <summary>The first step is done: the blank is no blank any more.</summary>
    public bool IsCut => StepsDone > 0;

    public bool IsOpen => ShippedAt is null && EndedAt is null;

    /// <summary>A blank of the shop's that was not cut yet may go back to its shelf.</summary>
    public bool MayGiveBack => IsOpen && !IsCut && BlankLotId is not null;

    public IReadOnlyList<JobStep> Steps => _steps;

    public IReadOnlyList<JobEvent> History => _history;

    /// <summary>Steps done; makes every step touch the job's row, so that two tablets at once are noticed.</summary>
    public int StepsDone { get; private set; }

    public uint Version { get; private set; }

    /// <summary>The step that waits to be done; null when the cam has shipped or the job has ended.</summary>
    public JobStep? Current => EndedAt is not null ? null : _steps.Where(step => !step.IsDone).MinBy(step => step.Ordinal);

    /// <summary>When the cam arrived at its present step: the last step's end, or the opening.</summary>
    public DateTimeOffset AtStageSince => _steps.Max(step => step.DoneAt) ?? OpenedAt;

    /// <summary>Puts one piece of a cam of an accepted order to work on the blank that was taken for it; null for a cam that the customer brought.</summary>
    public static Outcome<Job> Open(Order order, OrderCam cam, BlankLotClaim? claim, IReadOnlyList<RouteStage> route, string by, DateTimeOffset at)
    {
        var code = order.NextJobCode;
        var put = order.PutToWork(cam, $"{Taken(claim)} {Capital($"job {code} opened.")}", by, at);
        return put.Succeeded ? New(code, order, cam, claim, route, by, at) : put.Refusal;
    }

    private static string Taken(BlankLotClaim? claim) => claim is null ? "The customer's own cam is worked on." : $"Blank {claim.PartNumber}, lot {claim.LotNumber} allocated.";

    private static Job New(string code, Order order, OrderCam cam, BlankLotClaim? claim, IReadOnlyList<RouteStage> route, string by, DateTimeOffset at)
    {
        var job = new Job
        {
            Code = code,
            Order = order,
            Cam = cam,
            BlankLotId = claim?.LotId,
            LotFit = claim?.Fit,
            DueOn = order.PromisedOn!.Value,
            OpenedAt = at,
        };
        job._steps.AddRange(route.Select((stage, index) => new JobStep(index + 1, stage)));
        job._history.Add(new JobEvent("opened", null, by, at, Taken(claim), null));
        return job;
    }

    /// <summary>
    /// Marks one step done. The same command key a second time answers as the first time did and changes nothing; a step that is already done
    /// or not yet next is refused.
    /// </summary>
    public Outcome<JobStep> Complete(Stage stage, string by, DateTimeOffset at, string commandKey, string? note = null)
    {
        if (_history.FirstOrDefault(line => line.CommandKey == commandKey) is { } earlier)
            return SameCommand(earlier, stage);
        if (Current is not { } current)
            return Over();
        if (_steps.FirstOrDefault(step => step.Stage == stage) is not { } wanted)
            return new Refusal("notOnRoute", $"{Capital(stage)} is not on the route of job {Code}.");
        if (wanted.IsDone)
            return new Refusal("alreadyDone", $"{Capital(stage)} was already done by {wanted.DoneBy}. Next is: {current.Stage.Words()}.");
        if (wanted != current)
            return new Refusal("outOfOrder", $"{Capital(stage)} is not next. First comes: {current.Stage.Words()}.");
        return Finish(current, by, at, commandKey, note);
    }

    /// <summary>The piece is spoilt. Its order is one piece short again.</summary>
    public Outcome<Job> Scrap(string why, string by, DateTimeOffset at, string commandKey)
    {
        if (!IsOpen)
            return Over();
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say what is wrong with the cam.");
        var stage = Current?.Stage;
        (EndedAt, EndedAs) = (at, JobEnd.Scrapped);
        _history.Add(new JobEvent("scrapped", stage, by, at, why.Trim(), commandKey));
        Order.LosePiece(Cam, $"{Code} scrapped: {why.Trim().TrimEnd('.')}.{(BlankLotId is null ? " It was the customer's own cam: talk to the customer." : "")}", by, at);
        return this;
    }

    /// <summary>The blank goes back to the shelf uncut: the job ends, and its piece waits for a blank again.</summary>
    public Outcome<Job> GiveBack(string why, string by, DateTimeOffset at, string commandKey)
    {
        if (!IsOpen)
            return Over();
        if (BlankLotId is null)
            return new Refusal("noBlank", $"Job {Code} is the customer's own cam; no blank was taken for it.");
        if (IsCut)
            return new Refusal("cut", $"The blank of job {Code} was cut already and cannot go back. If the cam is spoilt, scrap it.");
        if (string.IsNullOrWhiteSpace(why))
            return new Refusal("noReason", "Say why the blank goes back.");
        (EndedAt, EndedAs) = (at, JobEnd.Cancelled);
        _history.Add(new JobEvent("blank given back", null, by, at, why.Trim(), commandKey));
        Order.LosePiece(Cam, $"{Code} gave its blank back: {why.Trim().TrimEnd('.')}. The piece waits for a blank again.", by, at);
        return this;
    }

    /// <summary>The job ends unfinished because the order was changed or cancelled.</summary>
    internal void Cancel(string why, string by, DateTimeOffset at)
    {
        var stage = Current?.Stage;
        (EndedAt, EndedAs) = (at, JobEnd.Cancelled);
        _history.Add(new JobEvent("cancelled", stage, by, at, why, null));
    }

    internal void Reschedule(DateOnly dueOn) => DueOn = dueOn;

    /// <summary>The cam is agreed otherwise, or was answered anew: these are the figures that the job's own blank gives for it.</summary>
    internal void GrindTo(BlankFit fit) => LotFit = fit;

    private Refusal Over() => EndedAs is { } end
        ? new Refusal("ended", $"Job {Code} was {end.ToString().ToLowerInvariant()}; nothing is left to do.")
        : new Refusal("shipped", $"Job {Code} has shipped; nothing is left to do.");

    private JobStep Finish(JobStep step, string by, DateTimeOffset at, string commandKey, string? note)
    {
        step.Done(by, at);
        StepsDone++;
        _history.Add(new JobEvent("done", step.Stage, by, at, string.IsNullOrWhiteSpace(note) ? "" : note.Trim(), commandKey));
        if (Current is null)
        {
            ShippedAt = at;
            Order.Ship(Cam, Code, by, at);
        }

        return step;
    }

    private Outcome<JobStep> SameCommand(JobEvent earlier, Stage stage) => earlier.Stage == stage
        ? _steps.First(step => step.Stage == stage)
        : new Refusal("keyReused", "This command key was used for another step.");

    private static string Capital(Stage stage) => Capital(stage.Words());

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
