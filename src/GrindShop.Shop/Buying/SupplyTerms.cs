using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Buying;

/// <summary>From this quantity on a blank of the part costs this much.</summary>
public sealed record PriceBreak(int FromQuantity, decimal UnitPrice);

/// <summary>
/// How a part is sold by one supplier, beside what the catalog says of it, and how safely the shop wants to have it. Where none are kept, blanks are sold
/// singly at the catalog's cost, from its least quantity up.
/// </summary>
public sealed class SupplyTerms
{
    private SupplyTerms()
    {
    }

    public SupplyTerms(BlankPart part)
        : this(part, part.SupplierId)
    {
    }

    private SupplyTerms(BlankPart part, int supplierId) => (BlankPart, BlankPartId, SupplierId) = (part, part.Id, supplierId);

    public int Id { get; private set; }

    public int BlankPartId { get; private set; }

    public BlankPart BlankPart { get; private set; } = null!;

    /// <summary>Whose terms they are; with any other supplier they do not count.</summary>
    public int SupplierId { get; private set; }

    /// <summary>What the catalog says of this supplier.</summary>
    public BlankSource Source => BlankPart.From(SupplierId)!;

    public int LeastQuantity => Source.LeastQuantity;

    /// <summary>The supplier sells multiples of this.</summary>
    public int Multiple { get; private set; } = 1;

    /// <summary>Charged once for each order, whatever the quantity.</summary>
    public decimal SetupCharge { get; private set; }

    public IReadOnlyList<PriceBreak> PriceBreaks { get; private set; } = [];

    /// <summary>Cycle service wanted of this part; null for the shop's own.</summary>
    public double? ServiceLevel { get; private set; }

    public uint Version { get; private set; }

    /// <summary>The terms of a part with a vendor that sells it: those that are kept if they are this vendor's, else plain ones.</summary>
    public static SupplyTerms Of(BlankPart part, int vendorId, SupplyTerms? kept) =>
        kept?.SupplierId == vendorId ? kept : new SupplyTerms(part, vendorId) { ServiceLevel = kept?.ServiceLevel, Version = kept?.Version ?? 0 };

    public decimal UnitPrice(int quantity) =>
        PriceBreaks.Where(step => step.FromQuantity <= quantity).MaxBy(step => step.FromQuantity)?.UnitPrice ?? Source.Cost;

    /// <summary>The supplier does not usually sell this quantity; null where it does.</summary>
    public Refusal? Unusual(int quantity)
    {
        if (quantity < LeastQuantity)
            return new Refusal("tooFew", $"{BlankPart.PartNumber} is sold from {LeastQuantity} blanks up; {quantity} needs a reason.");
        return quantity % Multiple == 0 ? null : new Refusal("notMultiple", $"{BlankPart.PartNumber} is sold in multiples of {Multiple}; {quantity} needs a reason.");
    }

    /// <summary>From now on the part's usual supplier sells it so.</summary>
    public Outcome<SupplyTerms> SoldAs(int multiple, decimal setupCharge, IReadOnlyList<PriceBreak> breaks)
    {
        if (multiple is < 1 or > 100_000)
            return new Refusal("badQuantity", "The multiple lies between 1 and 100,000.");
        if (setupCharge is < 0 or > 10_000_000 || breaks.Any(step => step.FromQuantity < 1 || step.UnitPrice is < 0 or > 1_000_000))
            return new Refusal("badPrice", "Quantities start at 1, prices at zero.");
        if (breaks.DistinctBy(step => step.FromQuantity).Count() < breaks.Count)
            return new Refusal("twoPrices", "A quantity can have one price only.");
        (SupplierId, Multiple, SetupCharge, PriceBreaks) = (BlankPart.SupplierId, multiple, setupCharge, [.. breaks.OrderBy(step => step.FromQuantity)]);
        return this;
    }

    /// <param name="serviceLevel">Null for the shop's own.</param>
    public Outcome<SupplyTerms> Serve(double? serviceLevel)
    {
        if (serviceLevel is { } level && BuyingRules.RefuseService(level) is { } refusal)
            return refusal;
        ServiceLevel = serviceLevel;
        return this;
    }
}
