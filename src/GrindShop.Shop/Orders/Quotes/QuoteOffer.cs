using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Orders;

/// <summary>A price that the desk is about to offer.</summary>
public sealed record QuoteOffer
{
    /// <summary>Days that a price usually stands.</summary>
    public const int UsualDays = 30;

    /// <summary>The blank of each cam by its place in the order; repairs have none.</summary>
    public required IReadOnlyDictionary<int, string> Parts { get; init; }

    /// <summary>What those blanks are on the day of the offer, by the cam's place in the order; where the price was drawn up with them.</summary>
    public IReadOnlyDictionary<int, BlankFit> Fits { get; init; } = new Dictionary<int, BlankFit>();

    public required IReadOnlyList<PriceLine> Lines { get; init; }

    public required DateOnly ValidUntil { get; init; }

    public DateOnly? ShipOn { get; init; }

    public decimal Total => Lines.Sum(line => line.Charge);

    /// <summary>An order of one cam on one blank at what the rules ask, valid as long as usual.</summary>
    public static QuoteOffer Of(string partNumber, IReadOnlyList<PriceLine> lines, DateOnly today) => new()
    {
        Parts = new Dictionary<int, string> { [1] = partNumber },
        Lines = [.. lines.Select(line => line with { RuleAmount = line.Amount })],
        ValidUntil = today.AddDays(UsualDays),
    };

    /// <summary>Why this cannot be offered, or null.</summary>
    public Refusal? Refuse(DateOnly today)
    {
        if (Lines.Count == 0 || Total <= 0)
            return new Refusal("emptyPrice", "A price needs at least one line and a sum above zero.");
        if (ValidUntil < today || ValidUntil > today.AddYears(1))
            return new Refusal("badValidity", $"The price must stand at least until today ({today:yyyy-MM-dd}) and at most a year.");
        if (ShipOn < today)
            return new Refusal("badShipDay", "The estimated shipping day lies in the past.");
        if (Lines.Any(line => string.IsNullOrWhiteSpace(line.Text)))
            return new Refusal("noText", "Say what each line of your own is for: the customer reads it on the price.");
        return Lines.FirstOrDefault(line => line.NeedsReason && string.IsNullOrWhiteSpace(line.Reason)) is { } bare
            ? new Refusal("noReason", $"Say why “{bare.Text}” differs from the shop's price rules.")
            : null;
    }
}
