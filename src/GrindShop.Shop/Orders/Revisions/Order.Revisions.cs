using System.Globalization;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    private readonly List<OrderRevision> _revisions = [];

    /// <summary>Changes agreed after acceptance, oldest first.</summary>
    public IReadOnlyList<OrderRevision> Revisions => [.. _revisions.OrderBy(revision => revision.Number)];

    /// <summary>How many there are; stands on the traveler.</summary>
    public int RevisionsMade { get; private set; }

    /// <summary>Changes an accepted order as it was agreed with the customer.</summary>
    /// <param name="answer">The shop's answer to the new specification.</param>
    /// <param name="blankEffect">What becomes of blanks and jobs, in words.</param>
    public Outcome<OrderRevision> Revise(RevisionTerms terms, FeasibilityAnswer? answer, string blankEffect, DateOnly today, string by, DateTimeOffset at)
    {
        if (RefuseRevision(terms, answer, today) is { } refusal)
            return refusal;
        var cam = Cam(terms.Cam)!;
        var changes = Differences(cam, terms);
        var before = (cam.Spec, cam.Answer);
        var pieces = terms.Quantity ?? cam.Quantity;
        if (!ReferenceEquals(answer, cam.Answer))
            cam.Set(terms.Spec, answer);
        if (pieces > 0 && cam.RefuseBlank(terms.PartNumber) is { } unfit)
        {
            cam.Set(before.Spec, before.Answer);
            return unfit;
        }
        (cam.QuotedPartNumber, cam.Quantity) = (terms.PartNumber, pieces);
        (Price, PromisedOn) = (Price + terms.PriceChange, terms.PromisedOn);
        var revision = new OrderRevision(++RevisionsMade, terms, cam, changes, blankEffect, by, at);
        _revisions.Add(revision);
        Note(OrderEventKind.Revised, by, at, $"Revision {revision.Number}, agreed by {revision.AgreedBy} ({terms.AgreedHow.Words()}): {terms.Why.Trim().TrimEnd('.')}. {string.Join("; ", changes.Select(Short))}. {blankEffect}".Trim());
        return revision;
    }

    /// <summary>A revision that leaves nothing to be made: everything that is still wanted has left the shop.</summary>
    internal void ShipWhatIsLeft(string by, DateTimeOffset at)
    {
        if (_cams.TrueForAll(cam => cam.Shipped == cam.Quantity))
            Enter(OrderState.Shipped, OrderEventKind.Shipped, by, at, "Shipped: nothing else is wanted any more.");
    }

    private Refusal? RefuseRevision(RevisionTerms terms, FeasibilityAnswer? answer, DateOnly today)
    {
        if (State is not (OrderState.Accepted or OrderState.InWork))
            return NotNow("revised");
        if (Cam(terms.Cam) is not { } cam)
            return NoSuchCam(terms.Cam);
        if (cam.Shipped > 0 && cam.Shipped == cam.Quantity)
            return new Refusal("shipped", $"Cam {cam.Ordinal} has shipped; a new order is needed.");
        if (cam.Shipped > 0 && IsOtherCam(cam, terms.Spec, answer))
            return new Refusal("someShipped", $"{cam.Shipped} of cam {cam.Ordinal} shipped as agreed so far, and their card must stay true. Lower the pieces to {cam.Shipped}, and open a new order for those that shall be ground otherwise.");
        if (IsDrawnUp(cam) && (terms.Quantity ?? 0) == 0)
            return new Refusal("noPieces", "Say how many pieces are agreed, or take the cam out again under Work.");
        if (terms.Quantity == 0 && _cams.TrueForAll(one => one == cam || one.Quantity == 0))
            return new Refusal("lastCam", _cams.Exists(IsDrawnUp) ? "Nothing would be left of the order: agree first on the cam that takes its place." : "Nothing would be left of the order; cancel it instead.");
        if (Price + terms.PriceChange <= 0)
            return new Refusal("emptyPrice", "A price stays above zero.");
        if (Differences(cam, terms).Count == 0)
            return new Refusal("nothingChanged", "Nothing is otherwise than before: there is nothing to agree.");
        return terms.Refuse(today);
    }

    private IReadOnlyList<SpecChange> Differences(OrderCam cam, RevisionTerms terms) =>
    [
        .. SpecChange.Between(ToldSpec(cam), terms.Spec),
        .. new[]
        {
            new SpecChange("Pieces", OrderWords.Pieces(cam.Quantity), OrderWords.Pieces(terms.Quantity ?? cam.Quantity)),
            new SpecChange("Blank", cam.QuotedPartNumber, terms.PartNumber),
            new SpecChange("Price", PriceRules.Dollars(Price), PriceRules.Dollars(Price + terms.PriceChange)),
            new SpecChange("Promised", Day(PromisedOn), Day(terms.PromisedOn)),
        }.Where(change => change.Was != change.Now),
    ];

    private static bool IsOtherCam(OrderCam cam, CamSpec spec, FeasibilityAnswer? answer) => cam.Answer is { Grind: var grind } && answer is not null
        ? grind != answer.Grind
        : cam.Spec with { Notes = null, Use = null } != spec with { Notes = null, Use = null };

    private static string Short(SpecChange change) => $"{change.Name}: {change.Was ?? "nothing"} → {change.Now ?? "nothing"}";

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
