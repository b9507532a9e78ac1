namespace GrindShop.Lobes;

/// <summary>How much metal must and may come off, along the normal.</summary>
/// <param name="CleanupIn">Least removal that leaves no blank surface, in.</param>
/// <param name="CaseDepthIn">Hardened depth from the blank's surface, in; null when hard all through.</param>
/// <param name="LeastCaseIn">Case that must be left under the finished surface, in; null counts as 0.</param>
public readonly record struct BandLimits(double CleanupIn, double? CaseDepthIn = null, double? LeastCaseIn = null)
{
    /// <summary>Most removal that keeps the case, in; null when nothing limits it.</summary>
    public double? MostRemovalIn => CaseDepthIn - (LeastCaseIn ?? 0);

    internal BandLimits Checked()
    {
        Require.LengthOrZero(CleanupIn, nameof(CleanupIn));
        Require.LengthOrZero(CaseDepthIn ?? 0, nameof(CaseDepthIn));
        Require.LengthOrZero(LeastCaseIn ?? 0, nameof(LeastCaseIn));
        return this;
    }
}
