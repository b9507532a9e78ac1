using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>
/// A change agreed with the customer after acceptance: what, with whom, and what it does to blank, price and date. Only ever added; what was agreed
/// before stays in the quote and in the earlier revisions.
/// </summary>
public sealed class OrderRevision
{
    private OrderRevision()
    {
    }

    internal OrderRevision(int number, RevisionTerms terms, OrderCam cam, IReadOnlyList<SpecChange> changes, string blankEffect, string by, DateTimeOffset at)
    {
        (Number, Cam, Changes, BlankEffect, By, At) = (number, cam.Ordinal, changes, blankEffect, by, at);
        (AgreedBy, AgreedHow, Why) = (terms.AgreedBy.Trim(), terms.AgreedHow, terms.Why.Trim());
        (PriceChange, PriceReason) = (terms.PriceChange, terms.PriceReason.Trim());
        Now = QuotedCam.Of(cam);
    }

    public int Id { get; private set; }

    public int OrderId { get; private set; }

    /// <summary>Its place in the order, from 1.</summary>
    public int Number { get; private set; }

    /// <summary>The cam it is about, by its place in the order.</summary>
    public int Cam { get; private set; }

    /// <summary>Every field that is otherwise than before: specification, blank, price, date.</summary>
    public IReadOnlyList<SpecChange> Changes { get; private set; } = [];

    /// <summary>What becomes of blanks and jobs, in words.</summary>
    public string BlankEffect { get; private set; } = "";

    /// <summary>US dollars; 0 where the price stays.</summary>
    public decimal PriceChange { get; private set; }

    public string PriceReason { get; private set; } = "";

    /// <summary>The customer, or who spoke for them.</summary>
    public string AgreedBy { get; private set; } = "";

    public OrderChannel AgreedHow { get; private set; }

    public string Why { get; private set; } = "";

    /// <summary>The cam as it was agreed.</summary>
    public QuotedCam Now { get; private set; } = null!;

    public string By { get; private set; } = "";

    public DateTimeOffset At { get; private set; }
}
