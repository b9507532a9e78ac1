using GrindShop.Shop.Orders;

namespace GrindShop.Shop.Allocating;

/// <summary>One piece of a cam of an accepted order that has no blank yet, and the blanks it could take.</summary>
/// <param name="Order">The order, as it was read.</param>
/// <param name="Cam">The cam of the order.</param>
/// <param name="Piece">Which of the cam's like pieces, from 1.</param>
/// <param name="Ranked">Blanks for it, best first.</param>
public sealed record WaitingPiece(Order Order, OrderCam Cam, int Piece, IReadOnlyList<RankedBlank> Ranked)
{
    public string Key => $"{Order.Number}/{Cam.Ordinal}/{Piece}";

    public DateOnly DueOn => Order.PromisedOn!.Value;

    /// <summary>The first that can be taken now; null where it has to wait.</summary>
    public RankedBlank? Free => Ranked.FirstOrDefault(blank => blank.Option.CanBeTaken);

    public bool CouldUse(string partNumber) => Ranked.Any(blank => blank.Option.Fit.Usable && blank.Option.Part.PartNumber == partNumber);

    /// <summary>When the next usable blank is expected; null where none is on order.</summary>
    public DateOnly? NextReceipt => Ranked.Where(blank => blank.Option.Fit.Usable).Min(blank => blank.Option.NextReceipt);
}

/// <summary>A blank proposed for a waiting piece.</summary>
public sealed record ProposedTake(WaitingPiece For, RankedBlank Blank);

/// <summary>Which waiting piece gets which blank, to be looked at before it is done.</summary>
/// <param name="Takes">Pieces that get one, the soonest due first.</param>
/// <param name="Left">Pieces that go on waiting.</param>
public sealed record BatchProposal(IReadOnlyList<ProposedTake> Takes, IReadOnlyList<WaitingPiece> Left)
{
    public decimal Cost => Takes.Sum(take => take.Blank.Option.Part.Cost);

    /// <summary>Sum of the greatest removals, in.</summary>
    public double RemovalIn => Takes.Sum(take => take.Blank.Option.RemovalIn);
}
