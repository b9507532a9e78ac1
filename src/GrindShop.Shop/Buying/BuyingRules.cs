namespace GrindShop.Shop.Buying;

/// <summary>What the owner assumes of all buying. One row.</summary>
public sealed class BuyingRules
{
    public const double LeastService = .5, MostService = .999;

    public int Id { get; private set; } = 1;

    /// <summary>Probability that a part does not run out between an order and its delivery.</summary>
    public double ServiceLevel { get; private set; } = .95;

    /// <summary>What writing, following and receiving one order costs.</summary>
    public decimal OrderCost { get; private set; } = 35m;

    /// <summary>A year, as a share of the money that lies on the shelf.</summary>
    public double CostOfCapital { get; private set; } = .12;

    /// <summary>Of one blank for a year: room, insurance, counting.</summary>
    public decimal StorageAYear { get; private set; } = 1.5m;

    /// <summary>Probability that within a year a part is wanted no more.</summary>
    public double ObsolescenceAYear { get; private set; } = .03;

    /// <summary>No order covers more years of demand than this.</summary>
    public double MostYearsOfCover { get; private set; } = 2;

    public uint Version { get; private set; }

    /// <summary>What it costs to keep a blank of this price for a year.</summary>
    public decimal HoldingCost(decimal price) => price * (decimal)(CostOfCapital + ObsolescenceAYear) + StorageAYear;

    public Outcome<BuyingRules> Set(BuyingAssumptions wanted)
    {
        if (RefuseService(wanted.ServiceLevel) is { } refusal)
            return refusal;
        if (wanted.OrderCost is < 0 or > 100_000 || wanted.StorageAYear is <= 0 or > 100_000)
            return new Refusal("badCost", "The cost of an order starts at $0, of a blank's storage for a year above $0.");
        if (wanted.CostOfCapital is not (>= 0 and <= 1) || wanted.ObsolescenceAYear is not (>= 0 and <= 1))
            return new Refusal("badRate", "Cost of capital and obsolescence lie between 0 and 100 % a year.");
        if (wanted.MostYearsOfCover is not (>= .1 and <= 20))
            return new Refusal("badCover", "The most years of cover lie between 0.1 and 20.");
        (ServiceLevel, OrderCost, CostOfCapital, StorageAYear, ObsolescenceAYear, MostYearsOfCover) = wanted;
        return this;
    }

    internal static Refusal? RefuseService(double level) =>
        level is >= LeastService and <= MostService ? null : new Refusal("badService", FormattableString.Invariant($"The service level lies between {100 * LeastService:0.#} and {100 * MostService:0.#} %."));
}

/// <summary>The owner's assumptions as they are typed; see <see cref="BuyingRules"/>.</summary>
public sealed record BuyingAssumptions(double ServiceLevel, decimal OrderCost, double CostOfCapital, decimal StorageAYear, double ObsolescenceAYear, double MostYearsOfCover);
