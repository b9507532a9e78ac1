using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Allocating;

/// <summary>What became of a spoilt piece.</summary>
/// <param name="Scrapped">The job that ended.</param>
/// <param name="Replacement">The job opened in its stead; null where no usable blank was free, and for a cam of the customer's.</param>
public sealed record ScrapResult(Job Scrapped, Job? Replacement)
{
    public string Words => Scrapped.BlankLotId is null
        ? $"{Scrapped.Code} is scrapped. It was the customer's own cam: the desk must talk to the customer."
        : Replacement is { BlankLot: { } lot } job
        ? $"{Scrapped.Code} is scrapped. {job.Code} takes its place on the next best blank, {lot.BlankPart.PartNumber}, lot {lot.LotNumber}, at {lot.Location}."
        : $"{Scrapped.Code} is scrapped. No usable blank is free: the order waits for its blank again.";
}

/// <summary>Ends a job whose cam is spoilt and opens another on the next best blank, all in one transaction. Nothing takes the place of a customer's own cam.</summary>
public sealed class ScrapDesk(IDbContextFactory<ShopDb> factory, NextBest nextBest, Allocation allocation, JobFloor floor, TimeProvider clock)
{
    /// <summary>The same command key a second time answers as the first time did.</summary>
    public async Task<Outcome<ScrapResult>> ScrapAsync(string code, string why, string by, string commandKey, CancellationToken cancel = default)
    {
        if (await floor.FindAsync(code, cancel) is not { } found)
            return new Refusal("unknown", $"There is no job {code}.");
        IReadOnlyList<RankedBlank> ranked = found.Cam.NeedsBlank ? await nextBest.RankAsync(found.Cam, cancel) : [];
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.Blanks})", cancel);
        await db.LockJobAsync(found.Code, cancel);
        var job = await db.Jobs.Include(j => j.Steps).Include(j => j.History).Include(j => j.Order).ThenInclude(order => order.History)
            .Include(j => j.Cam).AsSplitQuery().SingleAsync(j => j.Id == found.Id, cancel);
        if (job.History.Any(line => line.CommandKey == commandKey))
        {
            await transaction.RollbackAsync(cancel);
            return await AgainAsync(found, cancel);
        }
        var scrapped = job.Scrap(why, by, clock.GetUtcNow(), commandKey);
        if (!scrapped.Succeeded)
            return scrapped.Refusal;
        if (!job.IsCut && found.BlankLot is { } lot)
            await ThrowOutAsync(db, job, lot, why, by, cancel);
        var replacement = await ReplaceAsync(db, job, ranked, by, cancel);
        await db.SaveAndTellAsync(job.Order.Number, cancel);
        await transaction.CommitAsync(cancel);
        return new ScrapResult(job, replacement is null ? null : await floor.FindAsync(replacement.Code, cancel));
    }

    /// <summary>The blank was still on the shelf, set aside for the job. All lots of its part are locked as whoever takes one does it.</summary>
    private async Task ThrowOutAsync(ShopDb db, Job job, BlankLot of, string why, string by, CancellationToken cancel)
    {
        await db.LockLotsOfAsync(of.BlankPartId, cancel);
        var lot = (await db.LockLotAsync(of.LotNumber, cancel))!;
        var at = clock.GetUtcNow();
        if ((lot.Release(job.Code, by, at, $"{job.Code} scrapped").Refusal ?? lot.Scrap(1, why, by, at).Refusal) is { } refusal)
            throw new InvalidOperationException(refusal.Reason);
    }

    private async Task<Job?> ReplaceAsync(ShopDb db, Job job, IReadOnlyList<RankedBlank> ranked, string by, CancellationToken cancel)
    {
        foreach (var (option, _, _) in ranked.Where(blank => blank.Option.Fit.Usable))
        {
            var taken = await allocation.TakeAsync(db, job.Order, job.Cam, option.Part.PartNumber, by, cancel);
            if (!taken.Succeeded)
                continue;
            taken.Value.Replaces = job.Code;
            return taken.Value;
        }
        return null;
    }

    private async Task<Outcome<ScrapResult>> AgainAsync(Job scrapped, CancellationToken cancel)
    {
        var jobs = await floor.JobsOfAsync(scrapped.Order.Number, cancel);
        return new ScrapResult(scrapped, jobs.FirstOrDefault(job => job.Replaces == scrapped.Code));
    }
}
