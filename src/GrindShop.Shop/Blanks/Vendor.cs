namespace GrindShop.Shop.Blanks;

public enum VendorKind
{
    BlankSupplier,
    HeatTreater,
}

/// <summary>A firm the shop buys blanks from or sends cams to.</summary>
public sealed class Vendor
{
    public int Id { get; private set; }

    public required string Code { get; init; }

    public required string Name { get; init; }

    public required VendorKind Kind { get; init; }

    /// <summary>Usual days from order (or sending) to receipt.</summary>
    public required int LeadTimeDays { get; init; }

    /// <summary>What a heat-treater does, in words for the traveler.</summary>
    public string Process { get; init; } = "";
}
