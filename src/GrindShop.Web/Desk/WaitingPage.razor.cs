using GrindShop.Shop;
using GrindShop.Shop.Allocating;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Desk;

/// <summary>Accepted cams without a blank: what each could take, one by one or all at once after a look at the proposal.</summary>
public sealed partial class WaitingPage : LivePage
{
    private IReadOnlyList<WaitingPiece>? _waiting;
    private BatchProposal? _proposal;
    private Refusal? _refusal;
    private string? _said;
    private bool _busy;

    /// <summary>A proposal on the screen is made anew when the orders or the shelf have changed under it.</summary>
    protected override async Task ReadAsync()
    {
        _waiting = await Batch.WaitingAsync();
        _proposal = _proposal is null ? null : BatchAllocation.Propose(_waiting);
    }

    private async Task TakeAllAsync(BatchProposal proposal)
    {
        _busy = true;
        var outcome = await Batch.TakeAsync(proposal, await SignsAsAsync());
        _proposal = outcome.Succeeded ? null : _proposal;
        await ToldAsync(outcome.Refusal, outcome.Succeeded ? $"{Say.Count(outcome.Value.Count, "blank")} taken: {string.Join(", ", outcome.Value.Select(job => job.Code))}." : null);
    }

    private async Task TakeAsync(WaitingPiece piece, string part)
    {
        _busy = true;
        var outcome = await Allocation.StartAsync(piece.Order.Number, piece.Order.Version, part, await SignsAsAsync(), cam: piece.Cam.Ordinal);
        await ToldAsync(outcome.Refusal, outcome.Succeeded ? $"Blank {part} is taken for {piece.Order.Number}; job {outcome.Value.Code} is open." : null);
    }

    private async Task ToldAsync(Refusal? refusal, string? said)
    {
        (_refusal, _said) = (refusal, said);
        await ReadAsync();
        _busy = false;
    }

    private static string Named(WaitingPiece piece) =>
        piece.Order.Number
        + (piece.Order.Cams.Count > 1 ? $", cam {piece.Cam.Ordinal}" : "")
        + (piece.Cam.Quantity > 1 ? $", piece {piece.Cam.Started + piece.Piece} of {piece.Cam.Quantity}" : "");

    private static string Coming(WaitingPiece piece) => piece switch
    {
        { NextReceipt: { } on } => $"the next usable blank is expected on {Say.Day(on)}.",
        { Ranked: var ranked } when ranked.Any(blank => blank.Option.Fit.Usable) => "no usable blank is free or on order: buy one, or talk to the customer.",
        _ => "no blank of the catalog can become this cam now: talk to the customer.",
    };
}
