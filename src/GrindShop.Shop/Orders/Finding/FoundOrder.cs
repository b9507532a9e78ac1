namespace GrindShop.Shop.Orders.Finding;

/// <summary>An order that was found.</summary>
/// <param name="Why">Where it was hit, the weightiest first.</param>
public sealed record FoundOrder(string Number, OrderState State, DateTimeOffset StateSince, string Customer, DateTimeOffset ReceivedAt, IReadOnlyList<Hit> Why);

/// <summary>The place of an order that was hit, and its words around the hit.</summary>
/// <param name="Place">Such as customer, phone, history.</param>
public sealed record Hit(string Place, IReadOnlyList<HitPiece> Pieces);

public sealed record HitPiece(string Text, bool IsHit);

/// <summary>One page of what was found.</summary>
/// <param name="Page">From 1.</param>
public sealed record FoundPage(int Total, int Page, IReadOnlyList<FoundOrder> Orders)
{
    public static readonly FoundPage Nothing = new(0, 1, []);

    public int Pages => (Total + OrderSearch.PageLength - 1) / OrderSearch.PageLength;
}
