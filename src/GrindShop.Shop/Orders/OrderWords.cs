using GrindShop.Shop.Engines;

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

    /// <summary>The state of an order; one of repairs alone waits for the cam itself, not for a blank.</summary>
    public static string StateWords(this Order order) =>
        order.State == OrderState.Accepted && order.ToldCams.All(cam => !cam.NeedsBlank) ? "accepted, waiting for its job" : order.State.Words();

    /// <summary>How many pieces of a cam are wanted.</summary>
    public static string Pieces(int wanted) => wanted == 0 ? "none" : $"{wanted}";

    /// <summary>What is said of one cam, with its place and engine in front where the order has several.</summary>
    public static string OfCam(this Order order, int ordinal, IReadOnlyList<EngineFamily> families, string text)
    {
        if (order.ToldCams.Count == 1 && order.First.Ordinal == ordinal)
            return text;
        var engine = order.Cam(ordinal) is not { } cam ? "taken out" : families.FirstOrDefault(family => family.Code == cam.Spec.EngineFamily)?.Name ?? cam.Spec.EngineFamily;
        return $"Cam {ordinal}{(engine is null ? "" : $" ({engine})")}: {text}";
    }

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

    /// <summary>How a customer who cannot be written to is told; null for one who can.</summary>
    public static string? ByWord(this Order order) => order.HasAddress ? null
        : EnquiryCheck.Phone(order.Contact) is { } phone ? $"No e-mail address: tell them by phone, {phone}."
        : "No address: tell them by word when they come or call.";

    public static string Words(this OrderChannel channel) => channel switch
    {
        OrderChannel.Web => "web",
        OrderChannel.Phone => "phone",
        OrderChannel.Email => "e-mail",
        _ => "walk-in",
    };
}
