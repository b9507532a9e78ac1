namespace GrindShop.Shop.Orders;

/// <summary>How states and channels are said to people.</summary>
public static class OrderWords
{
    public static string Words(this OrderState state) => state switch
    {
        OrderState.New => "new",
        OrderState.Quoted => "quoted",
        OrderState.Accepted => "accepted, waiting for its blank",
        OrderState.InWork => "in work",
        OrderState.Shipped => "shipped",
        _ => "declined",
    };

    public static string Words(this OrderChannel channel) => channel switch
    {
        OrderChannel.Web => "web",
        OrderChannel.Phone => "phone",
        OrderChannel.Email => "e-mail",
        _ => "walk-in",
    };
}
