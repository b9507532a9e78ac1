using GrindShop.Shop.Buying;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Office;

/// <summary>A way to do without the run, as a level line with the letter that names it.</summary>
public sealed record MillRunLevel(string Letter, string Name, double Cost, double LineY, double LetterY);

/// <summary>Cost a cam over the size of the run, with the alternatives as level lines, laid out for drawing.</summary>
public sealed class MillRunPicture
{
    private const int Points = 300;
    private const double LetterHeight = 15;

    public MillRunPicture(MillRun run)
    {
        Cheapest = run.Cheapest;
        BreakEven = run.BreakEven;
        var costs = Quantities(run).Select(run.Cost).ToList();
        var levels = Levels(run);
        X = PlotFrame.Across(0, costs[^1].Quantity, rounded: false);
        var most = Math.Max(costs.Min(cost => cost.CostPerCam), levels.Count > 0 ? levels.Min(level => level.Cost) : 0) * 1.6;
        Y = PlotFrame.Up(costs.Select(cost => cost.CostPerCam).Concat(levels.Select(level => level.Cost)).Min() * .9, Math.Min(most, costs.Select(cost => cost.CostPerCam).Concat(levels.Select(level => level.Cost)).Max()));
        Path = PlotFrame.Curve(X, Y, costs.Select(cost => ((double)cost.Quantity, cost.CostPerCam <= Y.To ? cost.CostPerCam : (double?)null)));
        Alternatives = [.. Placed(levels.Where(level => level.Cost <= Y.To))];
        Hidden = levels.Count - Alternatives.Count;
    }

    public PlotAxis X { get; }

    public PlotAxis Y { get; }

    public string Path { get; }

    public MillRunCost Cheapest { get; }

    public MillRunCost? BreakEven { get; }

    public IReadOnlyList<MillRunLevel> Alternatives { get; }

    /// <summary>Alternatives too dear for the drawing.</summary>
    public int Hidden { get; }

    public string Description => $"Cost of a cam over the number of blanks milled. Least {MillRunWords.Cents(Cheapest.CostPerCam)} at {Cheapest.Quantity} blanks. "
        + (BreakEven is { } even ? $"The least run that pays is {even.Quantity} blanks. " : "No quantity pays. ")
        + string.Join(" ", Alternatives.Select(level => $"{level.Letter}: {level.Name}, {MillRunWords.Cents(level.Cost)}."));

    /// <summary>Quantities along the curve; both sides of every price break, so that the step is upright.</summary>
    private static IEnumerable<int> Quantities(MillRun run)
    {
        var (least, most) = (run.Case.LeastQuantity, Math.Max(run.Case.PriceBreaks.Max(step => step.FromQuantity) * 1.15, Math.Max(run.Cheapest.Quantity * 1.5, run.Case.YearlyDemand * run.Case.HorizonYears)));
        var even = Enumerable.Range(0, Points + 1).Select(i => least + (int)Math.Round(i * (most - least) / Points));
        var breaks = run.Case.PriceBreaks.SelectMany(step => new[] { step.FromQuantity - 1, step.FromQuantity });
        return even.Concat(breaks).Append(run.Cheapest.Quantity).Where(quantity => quantity >= least).Distinct().Order();
    }

    private static List<(string Letter, string Name, double Cost)> Levels(MillRun run) =>
    [
        .. run.Case.Alternatives.OrderBy(other => other.CostPerCam(run.Case.LostMargin))
            .Select((other, i) => (((char)('A' + i)).ToString(), other.ShareServed < 1 ? $"{other.Name} for {Money.Percent(other.ShareServed)} of the cams" : other.Name, other.CostPerCam(run.Case.LostMargin))),
    ];

    /// <summary>Letters of lines that lie close together stand one above the other.</summary>
    private IEnumerable<MillRunLevel> Placed(IEnumerable<(string Letter, string Name, double Cost)> levels)
    {
        var lowest = double.PositiveInfinity;
        foreach (var (letter, name, cost) in levels)
        {
            lowest = Math.Min(Y.At(cost) + 5, lowest - LetterHeight);
            yield return new MillRunLevel(letter, name, cost, Y.At(cost), lowest);
        }
    }
}
