namespace GrindShop.Shop.Orders;

/// <summary>How states and channels are said to people.</summary>
public static class OrderWords
{
    public static string Words(this OrderState state) => state switch
    {
        OrderState.New => "new",
        OrderState.WaitingForCustomer => "waiting for customer",
        OrderState.Quoted => "quoted",
        OrderState.Accepted => "accepted, waiting for its blank",
        OrderState.InWork => "in work",
        OrderState.Shipped => "shipped",
        OrderState.Declined => "declined",
        OrderState.Expired => "expired",
        _ => "cancelled",
    };

    public static string Words(this WorkKind kind) => kind switch
    {
        WorkKind.NewGrind => "new grind",
        WorkKind.Regrind => "regrind",
        _ => "gear replacement",
    };

    public static string Words(this PaidBy how) => how switch
    {
        PaidBy.Cash => "cash",
        PaidBy.Check => "check",
        PaidBy.BankTransfer => "bank transfer",
        _ => "card terminal",
    };

    public static string Words(this OrderChannel channel) => channel switch
    {
        OrderChannel.Web => "web",
        OrderChannel.Phone => "phone",
        OrderChannel.Email => "e-mail",
        _ => "walk-in",
    };
}
