using System.Globalization;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>The price of one cam by the owner's price list. Pure; every line says why it is there and what it was computed from.</summary>
public sealed class PriceRules(IEnumerable<PriceEntry> list, decimal blankMarkup)
{
    /// <summary>Base circles further apart than this count as two machine settings, in.</summary>
    private const double SplitIn = .020;

    private readonly List<PriceEntry> _list = [.. list];

    public IEnumerable<PriceAdder> ManualAdders => Of<PriceAdder>().Where(adder => adder.When == AdderTrigger.Manual);

    /// <summary>A new cam on a blank: base price, blank, and the adders whose condition holds.</summary>
    /// <param name="manualCodes">Codes of the adders that the desk chose.</param>
    /// <param name="quantity">How many equal cams are ordered; the lines are those of one.</param>
    public Outcome<IReadOnlyList<PriceLine>> Lines(
        GrindSpec grind, EngineFamily family, BlankPart part, BlankFit fit, IReadOnlyCollection<string> manualCodes, int quantity = 1)
    {
        if (Of<BasePrice>().FirstOrDefault(price => price.EngineFamilyId == family.Id && price.Lifter == grind.Lifter) is not { } basePrice)
            return new Refusal("noBasePrice", $"There is no base price for {family.Name} with {grind.Lifter.Words()}: the owner sets one under Settings, Prices.");
        var applying = Of<PriceAdder>().Where(adder => Applies(adder, grind, family, fit, manualCodes));
        return With(applying, quantity, Base(basePrice), Blank(part));
    }

    /// <summary>Work on the customer's own cam; no line where the owner has set no price for it: then the desk writes its own.</summary>
    public IReadOnlyList<PriceLine> RepairLines(WorkKind kind, string? familyCode, IReadOnlyCollection<string> manualCodes, int quantity = 1) =>
        Of<RepairPrice>().FirstOrDefault(price => price.Kind == kind && price.EngineFamily.Code == familyCode) is { } repair
            ? With(ManualAdders.Where(adder => manualCodes.Contains(adder.Code)), quantity, Repair(repair))
            : [];

    public static string Dollars(decimal amount) => amount.ToString("$#,0.00;-$#,0.00", CultureInfo.InvariantCulture);

    private static PriceLine Base(BasePrice price) => new("base", price.Subject, price.Amount)
    {
        Why = $"Because this is what the shop asks for grinding a cam of the {price.EngineFamily.Name} for {price.Lifter.Words()}s.",
        Figures = $"Price list: {Dollars(price.Amount)}.",
    };

    private PriceLine Blank(BlankPart part) => new("blank", $"Blank {part.PartNumber} ({part.Alloy.Words()})", Cents(part.Cost * blankMarkup))
    {
        Why = "Because your cam is ground from this unground cam.",
        Figures = string.Create(CultureInfo.InvariantCulture, $"Cost {Dollars(part.Cost)} x mark-up {blankMarkup:0.###} = {Dollars(Cents(part.Cost * blankMarkup))}."),
    };

    private static PriceLine Repair(RepairPrice price) => new("repair", price.Subject, price.Amount)
    {
        Why = "Because this is the shop's price for this work on a cam of this engine.",
        Figures = $"Price list: {Dollars(price.Amount)}.",
    };

    /// <summary>Dollars first; what is a percentage is taken of all of them.</summary>
    private List<PriceLine> With(IEnumerable<PriceAdder> applying, int quantity, params PriceLine[] first)
    {
        var adders = applying.Where(adder => adder.Amount != 0).ToLookup(adder => adder.Measure);
        List<PriceLine> lines = [.. first, .. adders[AdderMeasure.Dollars].Select(InDollars)];
        var sum = lines.Sum(line => line.Amount);
        lines.AddRange(adders[AdderMeasure.Percent].Select(adder => InPercent(adder, sum)));
        if (Of<QuantityBreak>().Where(step => step.From <= quantity).MaxBy(step => step.From) is { } step)
            lines.Add(Off(step, quantity, sum));
        return lines;
    }

    private static PriceLine InDollars(PriceAdder adder) => new(adder.Code, adder.Name, adder.Amount)
    {
        Why = adder.When.Why(),
        Figures = $"Price list: {adder.Words}.",
    };

    private static PriceLine InPercent(PriceAdder adder, decimal sum) => new(adder.Code, $"{adder.Name} ({adder.Words})", Percent(adder, sum))
    {
        Why = adder.When.Why(),
        Figures = $"{adder.Words} of {Dollars(sum)} = {Dollars(Percent(adder, sum))}.",
    };

    private static PriceLine Off(QuantityBreak step, int quantity, decimal sum) => new("quantity", $"Less {step.Words} for equal cams", -Percent(step, sum))
    {
        Why = $"Because {quantity} equal cams are ordered; from {step.From} on each costs {step.Words} less.",
        Figures = $"{step.Words} of {Dollars(sum)} = {Dollars(Percent(step, sum))} off each.",
    };

    private static decimal Percent(PriceEntry entry, decimal sum) => Cents(sum * entry.Amount / 100);

    /// <summary>To the cent, half a cent up.</summary>
    private static decimal Cents(decimal amount) => Math.Round(amount, 2, MidpointRounding.AwayFromZero);

    private IEnumerable<T> Of<T>() => _list.OfType<T>();

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
