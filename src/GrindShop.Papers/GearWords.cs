using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Papers;

/// <summary>How papers say whether a distributor gear may run on the cam.</summary>
internal static class GearWords
{
    /// <param name="advice">What the rules say to the pair.</param>
    /// <param name="named">The customer's distributor gear; null where nobody named one.</param>
    public static string Said(this GearAdvice advice, DistributorGear? named) => Verdict(advice.Verdict) is { } verdict
        ? $"{(named is { } gear ? $"{Figures.Capital(gear.Words())}: " : "")}{verdict}. {advice.Reason}"
        : advice.Reason;

    private static string? Verdict(GearVerdict verdict) => verdict switch
    {
        GearVerdict.Ok => "OK",
        GearVerdict.Caution => "CAUTION",
        GearVerdict.No => "DO NOT RUN",
        _ => null,
    };
}
