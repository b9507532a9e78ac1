using GrindShop.Shop.Buying;

namespace GrindShop.Web.Office;

/// <summary>The answer of the mill-run calculator in one paragraph.</summary>
public static class MillRunWords
{
    public static string Verdict(MillRun run)
    {
        var (best, other, without) = (run.Cheapest, run.Case.Best, run.CostPerCamWithout);
        var beside = other == MillRunCase.TurnedAway ? "turning the cams away" : $"{other.Name} bought as needed";
        return run.BreakEven is { } even
            ? $"Mill {best.Quantity}: {Cents(best.CostPerCam)} a cam against {Cents(without)} with {beside}. It saves {Money.Whole(run.PresentValueWithout - best.PresentValue)} in all; the least run that pays is {even.Quantity} blanks, the largest {run.LastThatPays!.Quantity}. "
                + $"The {best.Quantity} cost {Money.Whole(best.Outlay)} at once, last {Money.Tenth(best.YearsOfCover)} years and outlast the horizon with {Money.Percent(Math.Round(best.ChanceOfLeftovers, 2))} probability."
            : $"Do not mill: no quantity comes under the {Cents(without)} a cam of {beside}. The nearest, a run of {best.Quantity}, comes to {Cents(best.CostPerCam)}, {Money.Whole(best.PresentValue - run.PresentValueWithout)} more in all.";
    }

    public static string Cents(double amount) => Money.Dollars((decimal)amount);
}
