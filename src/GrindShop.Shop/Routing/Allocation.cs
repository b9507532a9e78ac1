using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Routing;

/// <summary>
/// Takes a real blank from stock for an accepted order and opens its job, all in one transaction. Claims of one order wait for one another.
/// Whether the cam comes out of the blank is judged by the catalog and the rules of this moment; the answer that was given to the customer stays as it was.
/// </summary>
public sealed class Allocation(IDbContextFactory<ShopDb> factory, Catalog catalog, LotChoice lots, TimeProvider clock)
{
    /// <param name="cam">The cam's place in the order.</param>
    /// <param name="condition">How a cam of the customer's came in; asked for where only the customer has told of it so far.</param>
    public async Task<Outcome<Job>> StartAsync(string orderNumber, uint version, string? partNumber, string by, CancellationToken cancel = default, int cam = 1, string? condition = null)
    {
        await using var db = await factory.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        await db.Database.ExecuteSqlAsync($"SELECT 1 FROM orders WHERE number = {orderNumber} FOR UPDATE", cancel);
        var order = await db.Orders.Include(o => o.History).SingleOrDefaultAsync(o => o.Number == orderNumber, cancel);
        if (Refuse(order, orderNumber, version, cam) is { } refusal)
            return refusal;
        var wanted = order!.Cam(cam)!;
        if (wanted.NeedsBlank && await DoesNotFitAsync(db, wanted, partNumber ?? "", cancel) is { } misfit)
            return misfit;
        var outcome = wanted.NeedsBlank ? await TakeAsync(db, order, wanted, partNumber!, by, cancel) : await OpenWithoutBlankAsync(db, order, wanted, condition, by, cancel);
        if (!outcome.Succeeded)
            return outcome;
        await db.SaveAndTellAsync(orderNumber, cancel);
        await transaction.CommitAsync(cancel);
        return outcome;
    }

    private static Refusal? Refuse(Order? order, string number, uint version, int cam)
    {
        if (order is null)
            return new Refusal("unknown", $"There is no order {number}.");
        if (order.Version != version)
            return new Refusal("stale", $"Order {number} was changed in the meantime; nothing was allocated. Look at it again.");
        return order.Cam(cam) is null ? new Refusal("noSuchCam", $"Order {number} has no cam {cam}.") : null;
    }

    private async Task<Refusal?> DoesNotFitAsync(ShopDb db, OrderCam cam, string partNumber, CancellationToken cancel) =>
        FeasibilityAnswer.Refuse(cam.Answer is { Grind: var grind } ? await catalog.JudgeAsync(db, grind, cancel) : null, partNumber);

    /// <summary>A cam that the customer brought is worked on as it is, where the rules of now still allow it.</summary>
    private async Task<Outcome<Job>> OpenWithoutBlankAsync(ShopDb db, Order order, OrderCam cam, string? condition, string by, CancellationToken cancel)
    {
        if ((CamIntake.Came(cam, condition) ?? CamIntake.RefuseWork(cam, await catalog.ContentAsync(db, cancel))) is { } refusal)
            return refusal;
        if (!string.IsNullOrWhiteSpace(condition) && (cam.IsExpected || condition.Trim() != cam.ReceivedCondition))
            order.Receive(cam, condition, by, clock.GetUtcNow());
        var job = Job.Open(order, cam, null, Stages.RouteFor(cam.Kind), by, clock.GetUtcNow());
        if (job.Succeeded)
            db.Add(job.Value);
        return job;
    }

    /// <summary>
    /// Takes a blank and opens the job within a transaction that the caller has begun, with the order locked and loaded; the caller saves. Whether the
    /// cam comes out of the blank is the caller's to know.
    /// </summary>
    /// <param name="metal">Only of lots with this metal; null where any will do from which the cam comes out.</param>
    internal async Task<Outcome<Job>> TakeAsync(ShopDb db, Order order, OrderCam cam, string partNumber, string by, CancellationToken cancel, LotMetal? metal = null)
    {
        var part = await db.BlankParts.Include(p => p.Supplier).SingleAsync(p => p.PartNumber == partNumber, cancel);
        var choice = await lots.TakeAsync(db, part, cam.Answer!, metal, cancel);
        if (!choice.Succeeded)
            return choice.Refusal;
        var (lot, fit) = choice.Value;
        var heatTreater = part.IsSoft ? await db.Vendors.Where(v => v.Kind == VendorKind.HeatTreater).OrderBy(v => v.Id).FirstOrDefaultAsync(cancel) : null;
        var claim = new BlankLotClaim(lot.Id, partNumber, lot.LotNumber, fit);
        var job = Job.Open(order, cam, claim, Stages.RouteFor(part, heatTreater), by, clock.GetUtcNow());
        if (!job.Succeeded)
            return job;
        db.Add(job.Value);
        var taken = lot.Allocate(job.Value.Code, by, clock.GetUtcNow());
        return taken.Succeeded ? job : taken.Refusal;
    }
}
