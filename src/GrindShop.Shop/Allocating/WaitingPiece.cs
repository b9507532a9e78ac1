using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Feasibility;
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

    /// <summary>It comes out of a free blank of this very lot. Needs the lot's part.</summary>
    public bool CanUse(BlankLot lot) => lot.Available > 0 && Ways.Any(take => take.Blank.Option.Part.Id == lot.BlankPartId && take.Metal.Metal == lot.Metal);

    /// <summary>Every kind of free blank that it comes out of, best part first.</summary>
    internal IReadOnlyList<ProposedTake> Ways => [.. Ranked.SelectMany(blank => blank.Option.Fit.Free.Select(metal => new ProposedTake(this, blank, metal)))];

    /// <summary>When the next usable blank is expected; null where none is on order.</summary>
    public DateOnly? NextReceipt => Ranked.Where(blank => blank.Option.Fit.Usable).Min(blank => blank.Option.NextReceipt);
}

/// <summary>A blank proposed for a waiting piece.</summary>
/// <param name="For">The piece.</param>
/// <param name="Blank">The part.</param>
/// <param name="Metal">Of which metal: lots of a part that measure alike serve alike.</param>
public sealed record ProposedTake(WaitingPiece For, RankedBlank Blank, FreeMetal Metal)
{
    internal string Supply => string.Create(CultureInfo.InvariantCulture, $"{Blank.Option.Part.PartNumber} {Metal.Metal.StockIn:R} {Metal.Metal.CaseDepthIn:R}");
}

/// <summary>Which waiting piece gets which blank, to be looked at before it is done.</summary>
/// <param name="Takes">Pieces that get one, the soonest due first.</param>
/// <param name="Left">Pieces that go on waiting.</param>
public sealed record BatchProposal(IReadOnlyList<ProposedTake> Takes, IReadOnlyList<WaitingPiece> Left)
{
    public decimal Cost => Takes.Sum(take => take.Blank.Option.Part.Cost);

    /// <summary>Sum of the greatest removals, in.</summary>
    public double RemovalIn => Takes.Sum(take => take.Metal.RemovalIn);
}
