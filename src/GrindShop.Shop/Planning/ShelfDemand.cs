using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Planning;

public enum DemandKind
{
    /// <summary>An order that the customer gave.</summary>
    Ordered,

    /// <summary>An enquiry that is still being talked about.</summary>
    Open,

    /// <summary>Declined, run out, or without a blank.</summary>
    Unmet,
}

/// <summary>A cam somebody wished for, complete enough to judge.</summary>
public sealed record ShelfDemand(string OrderNumber, DateTimeOffset ReceivedAt, DemandKind Kind, int Quantity, string Use, GrindSpec Grind)
{
    /// <summary>The use where none was named.</summary>
    public const string NoUse = "not named";

    /// <summary>Null where the order was cancelled: the customer's change of mind is no demand.</summary>
    public static DemandKind? KindOf(OrderState state, Verdict? verdict) => state switch
    {
        OrderState.Cancelled => null,
        OrderState.Declined or OrderState.Expired => DemandKind.Unmet,
        _ when state.IsAgreed() => DemandKind.Ordered,
        _ => verdict == Verdict.NotGrindable ? DemandKind.Unmet : DemandKind.Open,
    };
}

/// <summary>What was wished for of one family in a period.</summary>
/// <param name="Demands">In order of receipt.</param>
/// <param name="Incomplete">Wishes left out because they were never complete enough to judge.</param>
public sealed record ShelfHistory(IReadOnlyList<ShelfDemand> Demands, int Incomplete)
{
    /// <summary>The uses named, the commonest first, with their cams.</summary>
    public IReadOnlyList<(string Use, int Cams)> Uses =>
        [.. Demands.GroupBy(demand => demand.Use).Select(use => (use.Key, use.Sum(demand => demand.Quantity))).OrderByDescending(use => use.Item2).ThenBy(use => use.Key, StringComparer.Ordinal)];
}
