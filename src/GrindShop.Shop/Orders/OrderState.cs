namespace GrindShop.Shop.Orders;

public enum OrderState
{
    New,

    /// <summary>The customer was asked something and has not answered yet.</summary>
    WaitingForCustomer,
    Quoted,
    Accepted,
    InWork,
    Shipped,
    Declined,

    /// <summary>The quote ran out before the customer answered; it can be renewed.</summary>
    Expired,
    Cancelled,
}

public static class OrderStates
{
    /// <summary>Nobody has anything to do with these any more.</summary>
    public static readonly IReadOnlyList<OrderState> Closed = [OrderState.Shipped, OrderState.Declined, OrderState.Expired, OrderState.Cancelled];

    /// <summary>Specification and price may still change without a revision.</summary>
    public static readonly IReadOnlyList<OrderState> BeforeAcceptance = [OrderState.New, OrderState.WaitingForCustomer, OrderState.Quoted, OrderState.Expired];

    /// <summary>The customer has said yes and has a promised date.</summary>
    public static readonly IReadOnlyList<OrderState> Agreed = [OrderState.Accepted, OrderState.InWork, OrderState.Shipped];

    public static bool IsOpen(this OrderState state) => !Closed.Contains(state);

    public static bool IsBeforeAcceptance(this OrderState state) => BeforeAcceptance.Contains(state);

    public static bool IsAgreed(this OrderState state) => Agreed.Contains(state);
}
