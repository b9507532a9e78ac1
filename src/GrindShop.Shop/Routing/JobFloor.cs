using GrindShop.Shop.Blanks;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Routing;

/// <summary>What the floor does: find a job by its code, advance it step by step.</summary>
public sealed class JobFloor(IDbContextFactory<ShopDb> factory, CustomerMail mail, TimeProvider clock)
{
    /// <summary>The job of a scanned or typed code; blanks and case do not matter.</summary>
    public async Task<Job?> FindAsync(string code, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(job => job.Code == Tidy(code), cancel);
    }

    /// <summary>Jobs on the floor, the soonest due first.</summary>
    public async Task<IReadOnlyList<Job>> OpenJobsAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().Where(job => job.ShippedAt == null && job.EndedAt == null).OrderBy(job => job.DueOn).ThenBy(job => job.Id).ToListAsync(cancel);
    }

    /// <summary>The jobs of an order, first to last.</summary>
    public async Task<IReadOnlyList<Job>> JobsOfAsync(string orderNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Whole(db).AsNoTrackingWithIdentityResolution().Where(job => job.Order.Number == orderNumber).OrderBy(job => job.Id).ToListAsync(cancel);
    }

    /// <summary>
    /// Marks a step done, as one row of history. Repeating a command (same key) is harmless; a step out of order or already done is refused with
    /// the reason and changes nothing. Two tablets at once: the second waits for the first and is judged after it.
    /// </summary>
    public async Task<Outcome<JobStep>> CompleteAsync(string code, Stage stage, string by, string commandKey, string? note = null, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.LockJobAsync(Tidy(code), cancel);
        if (await Whole(db).SingleOrDefaultAsync(job => job.Code == Tidy(code), cancel) is not { } job)
            return new Refusal("unknown", $"There is no job {Tidy(code)}.");
        var before = job.StepsDone;
        var outcome = job.Complete(stage, by, clock.GetUtcNow(), commandKey, note);
        if (!outcome.Succeeded || job.StepsDone == before)
            return outcome;
        if (before == 0 && job.BlankLot is not null && await ConsumeAsync(db, job, by, cancel) is { } refusal)
            return refusal;
        await mail.TellAsync(db, job.Order, cancel);
        await db.SaveAndTellAsync(job.Order.Number, cancel);
        await transaction.CommitAsync(cancel);
        return outcome;
    }

    /// <summary>With the first step the blank leaves the shelf.</summary>
    private async Task<Refusal?> ConsumeAsync(ShopDb db, Job job, string by, CancellationToken cancel)
    {
        db.Entry(job.BlankLot!).State = EntityState.Detached;
        var lot = await db.BlankLots.FromSql($"SELECT * FROM blank_lots WHERE id = {job.BlankLotId} FOR UPDATE").SingleAsync(cancel);
        return lot.Consume(job.Code, by, clock.GetUtcNow()).Refusal;
    }

    internal static string Tidy(string code) => code.Trim().ToUpperInvariant();

    internal static IQueryable<Job> Whole(ShopDb db) => db.Jobs
        .Include(job => job.Steps.OrderBy(step => step.Ordinal)).ThenInclude(step => step.Vendor)
        .Include(job => job.History.OrderBy(line => line.Id))
        .Include(job => job.Order).ThenInclude(order => order.Customer)
        .Include(job => job.Order).ThenInclude(order => order.History)
        .Include(job => job.Order).ThenInclude(order => order.Revisions)
        .Include(job => job.Cam)
        .Include(job => job.BlankLot).ThenInclude(lot => lot!.BlankPart).ThenInclude(part => part.EngineFamily)
        .AsSplitQuery();
}
