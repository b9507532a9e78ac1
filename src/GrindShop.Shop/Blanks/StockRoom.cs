using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Blanks;

/// <summary>What somebody does to a lot, and what they had seen of it.</summary>
/// <param name="LotNumber">The lot.</param>
/// <param name="SeenLine">The last line of its book that was on the screen; null where it does not matter.</param>
/// <param name="By">Who.</param>
/// <param name="Key">The command's own key: the same command a second time changes nothing.</param>
public sealed record LotCommand(string LotNumber, long? SeenLine, string By, string Key);

/// <summary>A lot on a shelf, and when it was counted last.</summary>
public sealed record LotToCount(string LotNumber, string PartNumber, string Location, DateTimeOffset? Counted);

/// <summary>Scraps, counts, puts right, holds back and moves lots: one lot locked, one line of its book, one transaction.</summary>
public sealed class StockRoom(IDbContextFactory<ShopDb> factory, TimeProvider clock)
{
    /// <summary>The lot with its part, supplier and book, the book's oldest line first; null where there is none of this number.</summary>
    public async Task<BlankLot?> FindAsync(string lotNumber, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.WholeLots().AsNoTrackingWithIdentityResolution().SingleOrDefaultAsync(lot => lot.LotNumber == lotNumber, cancel);
    }

    /// <summary>Lots that should have blanks, by place; without their figures, for who counts must not know them.</summary>
    public async Task<IReadOnlyList<LotToCount>> ToCountAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await db.BlankLots.Where(lot => lot.OnHand > 0).OrderBy(lot => lot.Location).ThenBy(lot => lot.LotNumber)
            .Select(lot => new LotToCount(lot.LotNumber, lot.BlankPart.PartNumber, lot.Location,
                lot.Movements.Where(line => line.Kind == StockMovementKind.Count).Max(line => (DateTimeOffset?)line.At))).ToListAsync(cancel);
    }

    public Task<Outcome<StockMovement>> ScrapAsync(LotCommand command, int quantity, string reason, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Scrap(quantity, reason, command.By, clock.GetUtcNow()), cancel);

    public Task<Outcome<StockMovement>> CountAsync(LotCommand command, int counted, string reason, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Count(counted, reason, command.By, clock.GetUtcNow()), cancel);

    public Task<Outcome<StockMovement>> AdjustAsync(LotCommand command, int change, string reason, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Adjust(change, reason, command.By, clock.GetUtcNow()), cancel);

    public Task<Outcome<StockMovement>> QuarantineAsync(LotCommand command, string reason, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Quarantine(reason, command.By, clock.GetUtcNow()), cancel);

    public Task<Outcome<StockMovement>> ClearAsync(LotCommand command, string reason, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Clear(reason, command.By, clock.GetUtcNow()), cancel);

    public Task<Outcome<StockMovement>> RelocateAsync(LotCommand command, string location, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Relocate(location, command.By, clock.GetUtcNow()), cancel);

    public Task<Outcome<StockMovement>> CorrectAsync(LotCommand command, string heatNumber, string certificate, string reason, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Correct(heatNumber, certificate, reason, command.By, clock.GetUtcNow()), cancel);

    public Task<Outcome<StockMovement>> MeasureAsync(LotCommand command, SampleFigures figures, CancellationToken cancel = default) =>
        ActAsync(command, lot => lot.Measure(figures, command.By, clock.GetUtcNow()), cancel);

    private async Task<Outcome<StockMovement>> ActAsync(LotCommand command, Func<BlankLot, Outcome<StockMovement>> act, CancellationToken cancel)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        if (await db.LockLotAsync(command.LotNumber, cancel) is not { } lot)
            return new Refusal("unknown", $"There is no lot {command.LotNumber}.");
        if (lot.Movements.Find(line => line.CommandKey == command.Key) is { } earlier)
            return earlier;
        if (Stale(lot, command) is { } stale)
            return stale;
        var outcome = act(lot);
        if (!outcome.Succeeded)
            return outcome;
        outcome.Value.CommandKey = command.Key;
        await db.SaveAndTellAsync(BlankNotice.Of(lot), cancel);
        await transaction.CommitAsync(cancel);
        return outcome;
    }

    private static Refusal? Stale(BlankLot lot, LotCommand command)
    {
        var last = lot.Movements[^1];
        return command.SeenLine is { } seen && seen != last.Id
            ? new Refusal("stale", $"{last.By} wrote in the meantime: {last.Kind.Words()}, {last.Reason}. Nothing was changed; look at lot {lot.LotNumber} and do it again.")
            : null;
    }
}
