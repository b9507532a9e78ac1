using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;

namespace GrindShop.Papers;

/// <summary>What the spec card is printed from.</summary>
/// <param name="Job">The job with order, customer, lot, blank and family.</param>
/// <param name="Shop">The shop's head and time zone.</param>
/// <param name="PrintedAt">The moment of printing; its day is the date of the card.</param>
public sealed record SpecCardFacts(Job Job, ShopSettings Shop, DateTimeOffset PrintedAt)
{
    /// <summary>What the owner's rules say to a gear that was pressed on; null for any other work.</summary>
    public GearAdvice? Gear { get; init; }
}
