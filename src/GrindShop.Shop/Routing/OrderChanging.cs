using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Routing;

/// <summary>What a revision would do, before it is agreed.</summary>
/// <param name="Answer">The shop's answer to the new specification; null for a cam that came in.</param>
/// <param name="BlankEffect">What becomes of blanks and jobs, in words.</param>
/// <param name="Shortage">What has to be bought for the pieces that wait, in words; null where enough blanks are free.</param>
public sealed record RevisionPreview(FeasibilityAnswer? Answer, string BlankEffect, string? Shortage);

/// <summary>Changes and ends accepted orders with their jobs and blanks, each all in one transaction.</summary>
public sealed class OrderChanging(IDbContextFactory<ShopDb> factory, Catalog catalog, JobFloor floor, CustomerMail mail, TimeProvider clock)
{
    /// <summary>What the terms would mean; changes nothing.</summary>
    public async Task<Outcome<RevisionPreview>> PreviewAsync(Order order, RevisionTerms terms, CancellationToken cancel = default)
    {
        if (order.Cam(terms.Cam) is not { } cam)
            return new Refusal("noSuchCam", $"Order {order.Number} has no cam {terms.Cam}.");
        var look = await LookAsync(order, cam, terms, cancel);
        if (look.Refusal is { } refusal)
            return refusal;
        var jobs = (await floor.JobsOfAsync(order.Number, cancel)).Where(job => job.OrderCamId == cam.Id);
        var part = cam.NeedsBlank ? terms.PartNumber ?? look.Answer?.Best?.PartNumber : null;
        await using var db = await factory.CreateDbContextAsync(cancel);
        var effect = await EffectAsync(db, cam, [.. jobs], terms with { PartNumber = part }, look.Answer, cancel);
        var pieces = terms.Quantity ?? cam.Quantity;
        return effect.TooFew(cam, pieces) is { } tooFew ? tooFew
            : new RevisionPreview(look.Answer, effect.Words, await ShortageAsync(db, order, part, look.Answer, pieces - effect.Begun(cam), cancel));
    }

    /// <summary>As at acceptance, blanks that other accepted orders wait for are not counted again.</summary>
    private async Task<string?> ShortageAsync(ShopDb db, Order order, string? part, FeasibilityAnswer? answer, int waiting, CancellationToken cancel)
    {
        if (part is null || answer is null || waiting <= 0 || (await catalog.ContentAsync(db, cancel)).Blank(part) is not { Part: var bought })
            return null;
        var free = (await catalog.JudgeAsync(db, answer.Grind, cancel)).Blanks.FirstOrDefault(fit => fit.PartNumber == part)?.Available ?? 0;
        var promised = (await db.WaitingCamsAsync(cancel)).PromisedToOthers(part, order.Number);
        return free - promised >= waiting ? null : $"{WaitingSets.Shortage(part, waiting, free, promised, bought.LeadTimeDays)} Look at the price and the day.";
    }

    /// <summary>Revises a cam of an accepted order. A blank that is not wanted any more goes back to its lot; its piece waits for another.</summary>
    public async Task<Outcome<OrderRevision>> ReviseAsync(string number, uint version, RevisionTerms terms, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var (order, jobs, stale) = await LockAsync(db, number, version, cancel);
        if (stale is not null)
            return stale;
        if (order!.Cam(terms.Cam) is not { } cam)
            return new Refusal("noSuchCam", $"Order {number} has no cam {terms.Cam}.");
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.Promises})", cancel);
        var look = await LookAsync(order, cam, terms, cancel);
        if (look.Refusal is { } refusal)
            return refusal;
        var effect = await EffectAsync(db, cam, jobs.FindAll(job => job.OrderCamId == cam.Id), terms, look.Answer, cancel);
        if (effect.TooFew(cam, terms.Quantity ?? cam.Quantity) is { } tooFew)
            return tooFew;
        var isAnsweredAnew = !ReferenceEquals(look.Answer, cam.Answer);
        var today = (await catalog.ContentAsync(db, cancel)).Rules.Settings.Today(clock.GetUtcNow());
        var revised = order.Revise(terms, look.Answer, effect.Words, today, by, clock.GetUtcNow());
        if (!revised.Succeeded)
            return revised;
        if (isAnsweredAnew)
            effect.Fates.Where(fate => fate is { Fate: JobFate.GoesOn, Fit: not null }).ToList().ForEach(fate => fate.Job.GrindTo(fate.Fit!));
        await EndAsync(db, effect, $"Revision {revised.Value.Number}.", by, cancel);
        foreach (var (job, _, _, _) in effect.Fates.Where(fate => fate.Fate != JobFate.GoesOn))
            order.LosePiece(cam, $"{job.Code} ended by revision {revised.Value.Number}; {(cam.Waiting < 0 ? "the piece is not wanted any more" : "the piece waits for its blank")}.", by, clock.GetUtcNow());
        jobs.Where(job => job.IsOpen).ToList().ForEach(job => job.Reschedule(terms.PromisedOn));
        order.ShipWhatIsLeft(by, clock.GetUtcNow());
        await mail.TellAsync(db, order!, cancel);
        await db.SaveAndTellAsync(number, cancel);
        await transaction.CommitAsync(cancel);
        return revised;
    }

    /// <summary>The letter that a revision would send; nothing is done.</summary>
    public async Task<Outcome<Letter>> RevisionLetterAsync(string number, RevisionTerms terms, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await OrderDesk.Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(one => one.Number == number, cancel) is not { } copy || copy.Cam(terms.Cam) is not { } cam)
            return new Refusal("noSuchCam", $"Order {number} has no cam {terms.Cam}.");
        var look = await LookAsync(copy, cam, terms, cancel);
        if (look.Refusal is { } refusal)
            return refusal;
        var now = clock.GetUtcNow();
        var revised = copy.Revise(terms, look.Answer, "", (await catalog.ContentAsync(cancel)).Rules.Settings.Today(now), by, now);
        return revised.Succeeded ? await mail.OfCopyAsync(copy, cancel) : revised.Refusal;
    }

    /// <summary>The letter that cancelling would send; nothing is done.</summary>
    public async Task<Outcome<Letter>> CancelLetterAsync(string number, string why, string? told, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        if (await OrderDesk.Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(one => one.Number == number, cancel) is not { } copy)
            return new Refusal("unknown", $"There is no order {number}.");
        var cancelled = copy.Cancel(why, told, "", by, clock.GetUtcNow());
        return cancelled.Succeeded ? await mail.OfCopyAsync(copy, cancel) : cancelled.Refusal;
    }

    /// <summary>Cancels an accepted order: uncut blanks go back to their lots, cut ones stay used, its jobs end.</summary>
    public async Task<Outcome<Order>> CancelAsync(string number, uint version, string why, string by, string? told = null, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var (order, jobs, stale) = await LockAsync(db, number, version, cancel);
        if (stale is not null)
            return stale;
        var effect = BlankEffect.OfCancelling(jobs);
        var cancelled = order!.Cancel(why, told, effect.Words, by, clock.GetUtcNow());
        if (!cancelled.Succeeded)
            return cancelled;
        await EndAsync(db, effect, "The order was cancelled.", by, cancel);
        await mail.TellAsync(db, order!, cancel);
        await db.SaveAndTellAsync(number, cancel);
        await transaction.CommitAsync(cancel);
        return cancelled;
    }

    /// <summary>A specification that stays as it is keeps the answer it was ordered on; a cam that was only drawn up was never ordered.</summary>
    private async Task<CamLook> LookAsync(Order order, OrderCam cam, RevisionTerms terms, CancellationToken cancel) =>
        terms.Spec == cam.Spec && !order.IsDrawnUp(cam) ? new CamLook([], [], cam.Answer) : await catalog.LookAsync(cam.Entry with { Spec = terms.Spec, Quantity = Math.Max(1, terms.Quantity ?? cam.Quantity) }, cancel);

    /// <summary>A blank that is kept for another grind is judged by its own lot: that may have less metal, and the figures on the floor are those of the blank in hand.</summary>
    private async Task<BlankEffect> EffectAsync(ShopDb db, OrderCam cam, IReadOnlyList<Job> jobs, RevisionTerms terms, FeasibilityAnswer? answer, CancellationToken cancel)
    {
        var lots = new Dictionary<string, BlankFit?>();
        foreach (var job in jobs.Where(job => BlankEffect.IsGroundOtherwise(job, answer, terms.PartNumber)))
            lots[job.Code] = (await catalog.JudgeLotAsync(db, answer!.Grind, job.BlankLot!, cancel)) is { } fit ? fit with { InStock = true, LeadTimeDays = 0 } : null;
        return BlankEffect.OfRevising(cam, jobs, new RevisedCam(terms.Spec, answer, terms.PartNumber, terms.Quantity ?? cam.Quantity, lots));
    }

    private static async Task<(Order? Order, List<Job> Jobs, Refusal? Refusal)> LockAsync(ShopDb db, string number, uint version, CancellationToken cancel)
    {
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.Blanks})", cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM jobs WHERE order_id = (SELECT id FROM orders WHERE number = {number}) ORDER BY id FOR UPDATE", cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE number = {number} FOR UPDATE", cancel);
        if (await OrderDesk.Whole(db).SingleOrDefaultAsync(one => one.Number == number, cancel) is not { } order)
            return (null, [], new Refusal("unknown", $"There is no order {number}."));
        if (order.Version != version)
            return (order, [], OrderDesk.Stale(order));
        return (order, await JobFloor.Whole(db).Where(job => job.OrderId == order.Id).OrderBy(job => job.Id).ToListAsync(cancel), null);
    }

    private async Task EndAsync(ShopDb db, BlankEffect effect, string why, string by, CancellationToken cancel)
    {
        var at = clock.GetUtcNow();
        var lots = await LotsAsync(db, effect, cancel);
        foreach (var (job, fate, _, _) in effect.Fates.Where(fate => fate.Fate != JobFate.GoesOn))
        {
            job.Cancel($"{why} {Said(fate)}", by, at);
            if (fate == JobFate.BlankBack && lots[job.BlankLotId!.Value].Release(job.Code, by, at, $"{job.Code} ended: {why}").Refusal is { } refusal)
                throw new InvalidOperationException(refusal.Reason);
        }
    }

    /// <summary>The lots that get blanks back, locked, as they are now.</summary>
    private static async Task<Dictionary<int, BlankLot>> LotsAsync(ShopDb db, BlankEffect effect, CancellationToken cancel)
    {
        foreach (var read in db.ChangeTracker.Entries<BlankLot>().ToList())
            read.State = EntityState.Detached;
        int[] ids = [.. effect.Fates.Where(fate => fate.Fate == JobFate.BlankBack).Select(fate => fate.Job.BlankLotId!.Value).Distinct()];
        return (await db.LockLotsAsync(ids, cancel)).ToDictionary(lot => lot.Id);
    }

    private static string Said(JobFate fate) => fate switch
    {
        JobFate.BlankBack => "The blank goes back to the shelf.",
        JobFate.OwnCamBack => "The cam goes back to the customer as it is.",
        _ => "The blank was cut and stays used.",
    };
}
