using GrindShop.Shop.Orders;
using GrindShop.Shop.Routing;

namespace GrindShop.Web.Public;

/// <summary>States and stages in a customer's words.</summary>
public static class TrackWords
{
    public static string Of(Stage stage) => stage switch
    {
        Stage.Receive => "Your cam came in and was looked over",
        Stage.PressGear => "New gear pressed on",
        Stage.Grind => "Lobes ground",
        Stage.RoughGrind => "Rough ground",
        Stage.HeatTreatOut => "Sent to be hardened",
        Stage.HeatTreatBack => "Back from hardening",
        Stage.Straighten => "Straightened",
        Stage.FinishGrind => "Finish ground",
        Stage.Finish => "Deburred, finished and marked",
        Stage.Inspect => "Measured and inspected",
        _ => "Packed and shipped",
    };

    /// <summary>Where an order stands; one of repairs alone waits for the cam itself, not for a blank.</summary>
    public static string Of(Order order) => order.State == OrderState.Accepted && order.ToldCams.All(cam => !cam.NeedsBlank)
        ? order.ToldCams.Any(cam => cam.IsExpected) ? "Accepted. Bring or send your cam: it is looked over and put to work as soon as it is here." : "Accepted. Your cam is here and is put to work next."
        : order.IsDeclinedByCustomer ? "You said no to this order, and the shop has been told. If that changes, call or write to us."
        : Of(order.State);

    private static string Of(OrderState state) => state switch
    {
        OrderState.New => "The shop has your specification and is looking at it. A price comes next.",
        OrderState.WaitingForCustomer => "The shop has a question for you before it can go on.",
        OrderState.Quoted => "The shop has named a price and waits for your word.",
        OrderState.Accepted => "Accepted. A blank is set aside next, then the cam goes to the grinder.",
        OrderState.InWork => "Your cam is in the shop, on its way through the steps below.",
        OrderState.Shipped => "Your cam has left the shop.",
        OrderState.Expired => "The price has run out before an answer came. Ask the shop to renew it.",
        OrderState.Cancelled => "This order was cancelled.",
        _ => "The shop cannot make this cam as it was described.",
    };
}
