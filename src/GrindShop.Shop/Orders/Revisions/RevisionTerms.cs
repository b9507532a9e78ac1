using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>What the desk has agreed with the customer about one cam of an accepted order.</summary>
public sealed record RevisionTerms
{
    /// <summary>The cam's place in the order.</summary>
    public int Cam { get; init; } = 1;

    public required CamSpec Spec { get; init; }

    /// <summary>The blank it is to be made from; null for a cam that came in.</summary>
    public string? PartNumber { get; init; }

    /// <summary>How many pieces are wanted from now on, those that have shipped among them; 0 takes the cam out of the order, null leaves them as they are.</summary>
    public int? Quantity { get; init; }

    /// <summary>US dollars on top of the price, or off it.</summary>
    public decimal PriceChange { get; init; }

    public string PriceReason { get; init; } = "";

    public required DateOnly PromisedOn { get; init; }

    public required string AgreedBy { get; init; }

    public required OrderChannel AgreedHow { get; init; }

    public required string Why { get; init; }

    /// <summary>What is missing or wrong whatever the order says, or null.</summary>
    public Refusal? Refuse(DateOnly today)
    {
        if (string.IsNullOrWhiteSpace(AgreedBy))
            return new Refusal("notAgreed", "Say who agreed to it: a change after acceptance is the customer's too.");
        if (string.IsNullOrWhiteSpace(Why))
            return new Refusal("noReason", "Say why the order is changed.");
        if (PriceChange != 0 && string.IsNullOrWhiteSpace(PriceReason))
            return new Refusal("noReason", "Say why the price changes.");
        if (decimal.Round(PriceChange, 2) != PriceChange)
            return new Refusal("badAmount", "Give the change of price in dollars and cents.");
        if (Quantity is < 0 or > CamIntake.MostPieces)
            return new Refusal("badQuantity", $"Give 1 to {CamIntake.MostPieces} pieces, or 0 to take the cam out of the order.");
        return PromisedOn < today || PromisedOn > today.AddYears(2)
            ? new Refusal("badPromise", $"The promised date must lie between today ({today:yyyy-MM-dd}) and two years from now.")
            : null;
    }
}
