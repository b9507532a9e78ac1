using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;

namespace GrindShop.Shop.Routing;

/// <summary>A lot to take a blank from, and what it gives where that is not what was answered for the part.</summary>
public sealed record ChosenLot(BlankLot Lot, BlankFit? Fit);

/// <summary>From which lot is the blank taken? One with the metal that the answer stood on, oldest first; else one from which the cam comes out all the same.</summary>
public sealed class LotChoice(Catalog catalog)
{
    /// <summary>Locks the part's lots until the transaction ends and chooses among them; a second claimant waits and then sees what is left.</summary>
    /// <param name="only">Only lots with this metal; null for any.</param>
    public async Task<Outcome<ChosenLot>> TakeAsync(ShopDb db, BlankPart part, FeasibilityAnswer answer, LotMetal? only, CancellationToken cancel)
    {
        var free = (await db.LockLotsOfAsync(part.Id, cancel)).FindAll(lot => lot.Available > 0 && (only is null || lot.Metal == only));
        var answered = answer.Blanks.FirstOrDefault(fit => fit.PartNumber == part.PartNumber && fit.Usable);
        var metal = answered?.Metal ?? LotMetal.Nominal(part);
        if (answered is not null && free.Find(lot => lot.Metal == metal) is { } asAnswered)
            return new ChosenLot(asAnswered, null);
        foreach (var lot in free)
            if (await catalog.JudgeLotAsync(db, answer.Grind, lot, cancel) is { Usable: true } fit)
                return new ChosenLot(lot, fit);
        return free.Count == 0
            ? new Refusal("noStock", $"No blank {part.PartNumber} is left in stock that is not promised to a job.")
            : new Refusal("noMetal", $"The blanks {part.PartNumber} left have not the metal for this cam: {string.Join("; ", free.Select(lot => $"lot {lot.LotNumber}, {lot.Metal.Words(part)}"))}.");
    }}

