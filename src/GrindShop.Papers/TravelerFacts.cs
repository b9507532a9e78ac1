using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;

namespace GrindShop.Papers;

/// <summary>What the traveler is printed from.</summary>
/// <param name="Job">The job with order, customer, lot, blank, family, steps and vendors.</param>
/// <param name="Shop">The shop's head and time zone.</param>
/// <param name="FloorUrl">The absolute address that the QR code opens, such as http://host/floor/jobs/J1042.</param>
/// <param name="PrintedAt">The moment of printing.</param>
public sealed record TravelerFacts(Job Job, ShopSettings Shop, string FloorUrl, DateTimeOffset PrintedAt)
{
    /// <summary>What the owner's rules say to a gear that is to be pressed on; null for any other work.</summary>
    public GearAdvice? Gear { get; init; }
}
