using GrindShop.Lobes;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Shop.Planning;

/// <summary>
/// The cheapest change within the limits by which one lobe comes out of one blank. A lobe is symmetric, so the metal is best in line with the
/// blank's and grows scarcer with the turn: the least turn back is found by halving. Lobes are independent, so two cheapest lobes are the cheapest cam.
/// </summary>
internal sealed class LobeChange(LobeVariants variants, ServingWeights weights, double? largestBaseCircleIn, double leastBaseCircleIn)
{
    private const int Halvings = 5;

    /// <param name="blank">The blank's lobe.</param>
    /// <param name="limits">Clean-up and case.</param>
    /// <param name="turnCrankDeg">How far the wished centreline lies from the blank's; null on a full-round blank, which has no line of its own.</param>
    /// <param name="sign">1 where a later centreline turns the metal towards the closing side (intake), -1 otherwise.</param>
    public LobeServing? Find(BlankOutline blank, BandLimits limits, double? turnCrankDeg, int sign)
    {
        LobeServing? best = null;
        foreach (var (lobe, durationCrankDeg) in variants.NearestFirst)
        {
            if (best is { IsChanged: false } || Takes(lobe) is false)
                continue;
            var judge = new BandJudge(lobe, limits, null, largestBaseCircleIn);
            LobeServing? Try(double move) => Fitting(judge.Judge(blank, sign * ((turnCrankDeg ?? 0) + move) / 2), move, durationCrankDeg);
            if ((Try(0) ?? Turned(Try, turnCrankDeg ?? 0)) is { } found && (best is null || Dollars(found) < Dollars(best.Value)))
                best = found;
        }
        return best;
    }

    public double Dollars(LobeServing lobe) =>
        weights.CenterlineCrankDeg * Math.Abs(lobe.CenterlineCrankDeg) + weights.DurationCrankDeg * Math.Abs(lobe.DurationCrankDeg);

    private bool Takes(FinishLobe lobe) => !(largestBaseCircleIn < leastBaseCircleIn) && !(largestBaseCircleIn < lobe.LeastBaseCircleDiameterIn) && !variants.OutgrowsFoot(lobe);

    private LobeServing? Fitting(BandAnswer answer, double move, double durationCrankDeg) =>
        answer.Fits && answer.BaseCircleDiameterIn >= leastBaseCircleIn
            ? new LobeServing(move, durationCrankDeg, answer.BaseCircleDiameterIn, answer.MinRemovalIn, answer.MaxRemovalIn)
            : null;

    /// <summary>The least move back towards the blank's own line.</summary>
    private LobeServing? Turned(Func<double, LobeServing?> tries, double turnCrankDeg)
    {
        double least = 0, most = -Math.Sign(turnCrankDeg) * Math.Min(Math.Abs(turnCrankDeg), weights.MostCenterlineCrankDeg);
        if (most == 0 || tries(most) is not { } found)
            return null;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (least + most) / 2;
            if (tries(middle) is { } nearer)
                (most, found) = (middle, nearer);
            else
                least = middle;
        }
        return found;
    }
}
