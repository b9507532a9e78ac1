using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>The price of a cam on a blank: base price, blank, and the adders whose condition holds. Pure; every line says why.</summary>
public sealed class PriceRules(IEnumerable<BasePrice> bases, IEnumerable<PriceAdder> adders, decimal blankMarkup)
{
    /// <summary>Base circles further apart than this count as two machine settings, in.</summary>
    private const double SplitIn = .020;

    private readonly List<BasePrice> _bases = [.. bases];
    private readonly List<PriceAdder> _adders = [.. adders];

    public IEnumerable<PriceAdder> ManualAdders => _adders.Where(adder => adder.When == AdderTrigger.Manual);

    /// <param name="manualCodes">Codes of the adders that the desk chose.</param>
    public Outcome<IReadOnlyList<PriceLine>> Lines(GrindSpec grind, EngineFamily family, BlankPart part, BlankFit fit, IReadOnlyCollection<string> manualCodes)
    {
        if (_bases.Find(price => price.EngineFamilyId == family.Id && price.Lifter == grind.Lifter) is not { } basePrice)
            return new Refusal("noBasePrice", $"There is no base price for {family.Name} with {grind.Lifter.Words()}: set one first.");
        var lines = new List<PriceLine>
        {
            new("base", $"Grinding, {family.Name}, {grind.Lifter.Words()}", basePrice.Amount) { Why = "The shop's price for this engine family and kind of lifter." },
            new("blank", $"Blank {part.PartNumber} ({part.Alloy.Words()})", Math.Round(part.Cost * blankMarkup, 2)) { Why = "The unground cam that yours is made from." },
        };
        lines.AddRange(_adders.Where(adder => Applies(adder, grind, family, fit, manualCodes)).Select(adder => new PriceLine(adder.Code, adder.Name, adder.Amount) { Why = Why(adder.When) }));
        return lines;
    }

    public static string Dollars(decimal amount) => amount.ToString("$#,0.00;-$#,0.00", CultureInfo.InvariantCulture);

    private static string Why(AdderTrigger when) => when switch
    {
        AdderTrigger.HeatTreat => "The blank is soft: it is hardened by the heat treater between grinding and finish grinding.",
        AdderTrigger.SpecialOrder => "The blank is not in stock and is bought for this cam.",
        AdderTrigger.SolidLifter => "A solid lifter's lobes take more passes.",
        AdderTrigger.SplitBaseCircles => "Intake and exhaust end on different base circles: two settings of the machine.",
        AdderTrigger.OtherFiringOrder => "The lobes are indexed for another firing order than the engine's usual one.",
        _ => "Chosen for this cam.",
    };

    private static bool Applies(PriceAdder adder, GrindSpec grind, EngineFamily family, BlankFit fit, IReadOnlyCollection<string> manualCodes) => adder.When switch
    {
        AdderTrigger.HeatTreat => fit.NeedsHeatTreat,
        AdderTrigger.SpecialOrder => !fit.InStock,
        AdderTrigger.SolidLifter => grind.Lifter.IsSolid(),
        AdderTrigger.SplitBaseCircles => Math.Abs((fit.IntakeBaseCircleDiameterIn ?? 0) - (fit.ExhaustBaseCircleDiameterIn ?? 0)) > SplitIn,
        AdderTrigger.OtherFiringOrder => !family.SameSequence(grind.FiringOrder, family.FiringOrder),
        _ => manualCodes.Contains(adder.Code),
    };
}
