using System.Globalization;
using GrindShop.Shop;
using GrindShop.Shop.Buying;
using GrindShop.Web.Public;

namespace GrindShop.Web.Office;

/// <summary>One alternative as it stands on the page, with what was typed.</summary>
public sealed class MillRunOther(AlternativeFacts facts, bool isChosen)
{
    public AlternativeFacts Facts { get; } = facts;

    public bool IsChosen { get; set; } = isChosen;

    public string Price { get; set; } = NumberText.Write((double)facts.Terms.UnitPrice(1));

    public string Share { get; set; } = (100 * facts.ShareServed).ToString("0.#", CultureInfo.InvariantCulture);
}

/// <summary>The assumptions of a mill run as they are typed; they start from the shop's books.</summary>
public sealed class MillRunForm
{
    /// <summary>Horizon at the start, and which part of a cam's price goes into the work where nobody says more; the shop's choice.</summary>
    public const double UsualHorizonYears = 6, UsualWorkShare = .5;

    public MillRunForm(MillRunFacts facts)
    {
        var (need, price) = (facts.Need, (double)(facts.AveragePrice ?? 0));
        (Demand, Uncertainty) = (Write(need.History.YearlyMean, "0.#"), Write(facts.YearlyDeviation, "0.#"));
        (Setup, Breaks) = (Write((double)need.Terms.SetupCharge), PriceBreakText.Write(FromLeast(need.Terms)));
        (Capital, Obsolescence, Storage) = (Write(100 * need.Rules.CostOfCapital), Write(100 * need.Rules.ObsolescenceAYear), Write((double)need.Rules.StorageAYear));
        (Price, Work) = (Write(price, "0.00"), Write(price * UsualWorkShare, "0.00"));
        Others = [.. facts.Alternatives.Select(other => new MillRunOther(other, StandsIn(other, need.Terms)))];
    }

    public string Demand { get; set; }

    public string Uncertainty { get; set; }

    public string Horizon { get; set; } = Write(UsualHorizonYears);

    public string Capital { get; set; }

    public string Obsolescence { get; set; }

    public string Storage { get; set; }

    public string Setup { get; set; }

    public string Breaks { get; set; }

    /// <summary>What a customer pays for such a cam, blank and all.</summary>
    public string Price { get; set; }

    public string Work { get; set; }

    public IReadOnlyList<MillRunOther> Others { get; }

    public Outcome<MillRunCase> Read()
    {
        var read = new FigureReader();
        var assumed = new MillRunCase
        {
            YearlyDemand = read.Number(Demand, "yearly demand"),
            YearlyDeviation = read.Number(Uncertainty, "uncertainty of the demand"),
            HorizonYears = read.Number(Horizon, "horizon"),
            CostOfCapital = read.Share(Capital, "cost of capital"),
            ObsolescenceAYear = read.Share(Obsolescence, "obsolescence"),
            StorageAYear = read.Number(Storage, "storage"),
            SetupCharge = read.Number(Setup, "set-up charge"),
            PriceBreaks = PriceBreakText.Read(Breaks, read),
            LostMargin = Math.Max(0, read.Number(Price, "price of a cam") - read.Number(Work, "work on a cam")),
            Alternatives = [.. Others.Where(other => other.IsChosen).Select(other => Alternative(other, read))],
        };
        return (read.Refusal ?? assumed.Refuse()) is { } refusal ? refusal : assumed;
    }

    /// <summary>
    /// Counted from the start: blanks that serve and are dearer, or have a shallower case. Others may serve too, but are of another kind: whether customers
    /// would take them is for the owner to say.
    /// </summary>
    private static bool StandsIn(AlternativeFacts other, SupplyTerms milled) => other is { Served: > 0, Part.IsSoft: false }
        && (other.Terms.UnitPrice(1) >= milled.UnitPrice(milled.LeastQuantity) || other.Part.CaseDepthIn < milled.BlankPart.CaseDepthIn);

    /// <summary>Below the first break the catalog's price stands.</summary>
    private static IEnumerable<PriceBreak> FromLeast(SupplyTerms terms) =>
        terms.PriceBreaks.Where(step => step.FromQuantity > terms.LeastQuantity).Prepend(new PriceBreak(terms.LeastQuantity, terms.UnitPrice(terms.LeastQuantity)));

    private static Alternative Alternative(MillRunOther other, FigureReader read) => new(
        other.Facts.Part.PartNumber, read.Number(other.Price, $"price of {other.Facts.Part.PartNumber}"), read.Share(other.Share, $"share that {other.Facts.Part.PartNumber} serves"));

    private static string Write(double value, string format = "0.##") => value.ToString(format, CultureInfo.InvariantCulture);
}
