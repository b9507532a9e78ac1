namespace GrindShop.Shop.Buying;

public enum PurchaseState
{
    /// <summary>Being written; the vendor knows nothing of it.</summary>
    Draft,
    Sent,
    PartlyReceived,
    Received,
    Cancelled,
}

public static class PurchaseWords
{
    public static string Words(this PurchaseState state) => state switch
    {
        PurchaseState.Draft => "draft, not sent",
        PurchaseState.Sent => "sent",
        PurchaseState.PartlyReceived => "partly received",
        PurchaseState.Received => "received",
        _ => "cancelled",
    };

    /// <summary>"1 blank", "5 blanks".</summary>
    internal static string Blanks(int count) => $"{count} blank{(count == 1 ? "" : "s")}";

    internal static string Dollars(decimal amount) => FormattableString.Invariant($"${amount:N2}");
}
