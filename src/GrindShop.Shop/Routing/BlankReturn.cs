using GrindShop.Shop.Blanks;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Routing;

/// <summary>Gives the uncut blank of a job back to its lot, held back or not: the job ends, and its piece waits for a blank again.</summary>
public sealed class BlankReturn(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>The same command key a second time changes nothing.</summary>
    public async Task<Outcome<Job>> GiveBackAsync(string code, string why, string by, string commandKey, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.LockJobAsync(JobFloor.Tidy(code), cancel);
        if (await JobFloor.Whole(db).SingleOrDefaultAsync(one => one.Code == JobFloor.Tidy(code), cancel) is not { } job)
            return new Refusal("unknown", $"There is no job {JobFloor.Tidy(code)}.");
        if (job.History.Any(line => line.CommandKey == commandKey))
            return job;
        var given = job.GiveBack(why, by, clock.GetUtcNow(), commandKey);
        if (!given.Succeeded)
            return given;
        db.Entry(job.BlankLot!).State = EntityState.Detached;
        var lot = (await db.LockLotAsync(job.BlankLot!.LotNumber, cancel))!;
        if (lot.Release(job.Code, by, clock.GetUtcNow(), $"{job.Code} gave it back: {why.Trim()}").Refusal is { } refusal)
            throw new InvalidOperationException(refusal.Reason);
        await db.SaveAndTellAsync(job.Order.Number, cancel);
        await transaction.CommitAsync(cancel);
        return job;
    }
}
