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
        if (RefuseRevision(terms, today) is { } refusal)
            return refusal;
        var cam = Cam(terms.Cam)!;
        var changes = Differences(cam, terms);
        var before = (cam.Spec, cam.Answer);
        if (!ReferenceEquals(answer, cam.Answer))
            cam.Set(terms.Spec, answer);
        if (cam.RefuseBlank(terms.PartNumber) is { } unfit)
        {
            cam.Set(before.Spec, before.Answer);
            return unfit;
        }
        cam.QuotedPartNumber = terms.PartNumber;
        (Price, PromisedOn) = (Price + terms.PriceChange, terms.PromisedOn);
        var revision = new OrderRevision(++RevisionsMade, terms, cam, changes, blankEffect, by, at);
        _revisions.Add(revision);
        Note(OrderEventKind.Revised, by, at, $"Revision {revision.Number}, agreed by {revision.AgreedBy} ({terms.AgreedHow.Words()}): {terms.Why.Trim().TrimEnd('.')}. {string.Join("; ", changes.Select(Short))}. {blankEffect}".Trim());
        return revision;
    }

    private Refusal? RefuseRevision(RevisionTerms terms, DateOnly today)
    {
        if (State is not (OrderState.Accepted or OrderState.InWork))
            return NotNow("revised");
        if (Cam(terms.Cam) is not { } cam)
            return NoSuchCam(terms.Cam);
        if (cam.Shipped == cam.Quantity)
            return new Refusal("shipped", $"Cam {cam.Ordinal} has shipped; a new order is needed.");
        if (Price + terms.PriceChange <= 0)
            return new Refusal("emptyPrice", "A price stays above zero.");
        if (Differences(cam, terms).Count == 0)
            return new Refusal("nothingChanged", "Nothing is otherwise than before: there is nothing to agree.");
        return terms.Refuse(today);
    }

    private IReadOnlyList<SpecChange> Differences(OrderCam cam, RevisionTerms terms) =>
    [
        .. SpecChange.Between(cam.Spec, terms.Spec),
        .. new[]
        {
            new SpecChange("Blank", cam.QuotedPartNumber, terms.PartNumber),
            new SpecChange("Price", PriceRules.Dollars(Price), PriceRules.Dollars(Price + terms.PriceChange)),
            new SpecChange("Promised", Day(PromisedOn), Day(terms.PromisedOn)),
        }.Where(change => change.Was != change.Now),
    ];

    private static string Short(SpecChange change) => $"{change.Name}: {change.Was ?? "blank"} → {change.Now ?? "blank"}";

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
