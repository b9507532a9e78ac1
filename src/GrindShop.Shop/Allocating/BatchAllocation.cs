using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Planning;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Allocating;

/// <summary>Blanks for all orders that wait for one: proposed as one assignment (see <see cref="BatchAssignment"/>), and taken all or none.</summary>
public sealed class BatchAllocation(IDbContextFactory<ShopDb> factory, NextBest nextBest, Allocation allocation)
{
    /// <summary>Pieces of accepted orders without a blank, the soonest due first.</summary>
    public async Task<IReadOnlyList<WaitingPiece>> WaitingAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        var orders = await Waiting(db).AsNoTrackingWithIdentityResolution().Include(order => order.Customer)
            .OrderBy(order => order.PromisedOn).ThenBy(order => order.ReceivedAt).ToListAsync(cancel);
        var pieces = new List<WaitingPiece>();
        foreach (var (order, cam) in orders.SelectMany(order => order.Cams.Where(cam => cam is { Kind: WorkKind.NewGrind, Answer: not null }).Select(cam => (order, cam))))
        {
            var ranked = await nextBest.RankAsync(cam, cancel);
            pieces.AddRange(Enumerable.Range(1, cam.Waiting).Select(piece => new WaitingPiece(order, cam, piece, ranked)));
        }
        return pieces;
    }

    /// <summary>How many pieces wait for a blank.</summary>
    public async Task<int> CountAsync(CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        return await Waiting(db).SelectMany(order => order.Cams).Where(cam => cam.Kind == WorkKind.NewGrind && cam.Answer != null).SumAsync(cam => cam.Quantity - cam.Started, cancel);
    }

    public static BatchProposal Propose(IReadOnlyList<WaitingPiece> waiting)
    {
        var ways = waiting.ToDictionary(piece => piece.Key, piece => piece.Ways);
        var free = ways.Values.SelectMany(way => way).DistinctBy(take => take.Supply).ToDictionary(take => take.Supply, take => take.Metal.Blanks);
        var plan = BatchAssignment.Solve([.. waiting.Select(piece => new BatchWish(piece.Key, [.. ways[piece.Key].Select(Fit)]))], free);
        return new BatchProposal(
            [.. plan.Grants.Select(grant => ways[grant.Key].First(take => take.Supply == grant.Fit.Supply))],
            [.. waiting.ExceptBy(plan.Grants.Select(grant => grant.Key), piece => piece.Key)]);
    }

    /// <summary>Takes every proposed blank in one transaction; where one of the orders has changed or a blank is gone, none is taken.</summary>
    public async Task<Outcome<IReadOnlyList<Job>>> TakeAsync(BatchProposal proposal, string by, CancellationToken cancel = default)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.Blanks})", cancel);
        var ids = proposal.Takes.Select(take => take.For.Order.Id).Distinct().ToArray();
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE id = ANY ({ids}) ORDER BY id FOR UPDATE", cancel);
        var orders = await db.Orders.Include(order => order.History).Where(order => ids.Contains(order.Id)).ToDictionaryAsync(order => order.Id, cancel);
        if (proposal.Takes.FirstOrDefault(take => orders[take.For.Order.Id].Version != take.For.Order.Version) is { } stale)
            return new Refusal("stale", $"Order {stale.For.Order.Number} was changed in the meantime; no blank was taken. Look at the new proposal.");
        var jobs = new List<Job>();
        foreach (var take in proposal.Takes.OrderBy(take => take.Blank.Option.Part.PartNumber, StringComparer.Ordinal).ThenBy(take => take.For.Order.Id).ThenBy(take => take.For.Piece))
        {
            var order = orders[take.For.Order.Id];
            var taken = await allocation.TakeAsync(db, order, order.Cam(take.For.Cam.Ordinal)!, take.Blank.Option.Part.PartNumber, by, cancel, take.Metal.Metal);
            if (!taken.Succeeded)
                return new Refusal(taken.Refusal.Code, $"{taken.Refusal.Reason} No blank was taken. Look at the new proposal.");
            jobs.Add(taken.Value);
        }
        foreach (var order in orders.Values)
            await db.SaveAndTellAsync(order.Number, cancel);
        await transaction.CommitAsync(cancel);
        return jobs;
    }

    /// <summary>Accepted orders with a new cam that has no blank yet.</summary>
    private static IQueryable<Order> Waiting(ShopDb db) => db.Orders
        .Where(order => (order.State == OrderState.Accepted || order.State == OrderState.InWork) && order.Cams.Any(cam => cam.Kind == WorkKind.NewGrind && cam.Started < cam.Quantity));

    private static BatchFit Fit(ProposedTake take) => new(take.Supply, take.Metal.RemovalIn, take.Blank.Option.Part.Cost);
}
