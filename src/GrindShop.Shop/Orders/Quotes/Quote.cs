using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>
/// A price as it was offered, with everything it stood on. Quotes are only ever added: a new price is a new quote, and the database refuses to
/// change or delete one.
/// </summary>
public sealed class Quote
{
    private Quote()
    {
    }

    internal Quote(string number, QuoteOffer offer, IReadOnlyList<QuotedCam> cams, string by, DateTimeOffset at)
    {
        (Number, By, At, ValidUntil, ShipOn) = (number, by, at, offer.ValidUntil, offer.ShipOn);
        (Lines, Cams, Total) = (offer.Lines, cams, offer.Total);
    }

    public int Id { get; private set; }

    public int OrderId { get; private set; }

    /// <summary>The order's number and the quote's place in it, such as Q1042-1.</summary>
    public string Number { get; private set; } = "";

    public string By { get; private set; } = "";

    public DateTimeOffset At { get; private set; }

    /// <summary>The last day, in the shop's zone, on which the customer may accept it.</summary>
    public DateOnly ValidUntil { get; private set; }

    /// <summary>When the cams would ship if it were accepted on the day of the quote; null where nobody said.</summary>
    public DateOnly? ShipOn { get; private set; }

    public IReadOnlyList<PriceLine> Lines { get; private set; } = [];

    public IReadOnlyList<QuotedCam> Cams { get; private set; } = [];

    public decimal Total { get; private set; }

    /// <summary>The lines that are charged; those that the desk struck are left out.</summary>
    public IEnumerable<PriceLine> Charged => Lines.Where(line => !line.IsStruck);
}

/// <summary>A cam as it was quoted: specification, blank and the kernel's figures of that day.</summary>
public sealed record QuotedCam
{
    public required int Ordinal { get; init; }

    public required WorkKind Kind { get; init; }

    public required int Quantity { get; init; }

    public required CamSpec Spec { get; init; }

    /// <summary>The specification as the shop completed it; null for a repair that needs none.</summary>
    public GrindSpec? Grind { get; init; }

    public Verdict? Verdict { get; init; }

    public string? PartNumber { get; init; }

    /// <summary>What the blank can do for the grind; null for a repair.</summary>
    public BlankFit? Fit { get; init; }

    public string? ReceivedCondition { get; init; }

    /// <summary>The condition was only told; the cam was not here yet.</summary>
    public bool IsExpected { get; init; }

    /// <summary>The gears of a replacement.</summary>
    public GearSwap? Gear { get; init; }

    /// <param name="fit">What the blank is on this day, where it is known.</param>
    internal static QuotedCam Of(OrderCam cam, BlankFit? fit = null) => new()
    {
        Ordinal = cam.Ordinal,
        Kind = cam.Kind,
        Quantity = cam.Quantity,
        Spec = cam.Spec,
        Grind = cam.Answer?.Grind,
        Verdict = cam.Verdict,
        PartNumber = cam.QuotedPartNumber,
        Fit = fit ?? cam.QuotedFit,
        ReceivedCondition = cam.ReceivedCondition,
        IsExpected = cam.IsExpected,
        Gear = cam.Gear,
    };
}
