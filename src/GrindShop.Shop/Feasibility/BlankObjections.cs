using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Feasibility;

/// <summary>Everything that stands against a blank, in plain words. Nothing against it: it fits.</summary>
internal static class BlankObjections
{
    public static IEnumerable<string> Of(FinishedCam cam, PreparedBlank blank, BandAnswer intake, BandAnswer exhaust, CamRules rules) =>
    [
        .. Rules(cam.Grind, blank.Part, rules.Advice(blank.Part)),
        .. Lobe("intake", cam, cam.Intake, blank, intake, rules.Shop),
        .. Lobe("exhaust", cam, cam.Exhaust, blank, exhaust, rules.Shop),
    ];

    /// <summary>What the rules of the trade say against it, whatever the metal.</summary>
    public static IEnumerable<string> Rules(GrindSpec grind, EngineFamily family, BlankPart part, ShopRules rules) => Rules(grind, part, rules.Advice(grind, family, part));

    private static IEnumerable<string> Rules(GrindSpec grind, BlankPart part, IEnumerable<RuleAdvice> advice)
    {
        foreach (var rule in advice.Where(rule => rule.Verdict == RuleVerdict.No))
            yield return rule.Reason;
        if (grind.Side is { } side && part.Side is { } blankSide && side != blankSide)
            yield return $"This is a {blankSide.ToString().ToLowerInvariant()}-hand blank; the {side.ToString().ToLowerInvariant()} cam is wanted.";
    }

    private static IEnumerable<string> Lobe(string name, FinishedCam cam, FinishLobe lobe, PreparedBlank blank, BandAnswer band, ShopRules rules)
    {
        var least = Math.Max(blank.Part.LeastBaseCircleIn, cam.Family.LeastBaseCircleIn);
        if (band.BaseCircleDiameterIn < least)
            return [TooSmall(name, cam, band, least)];
        if (!band.InsideOutsideEdge)
            return [$"The {name} lobe does not clean up: at the largest base circle allowed, {In(band.BaseCircleDiameterIn)} in, it would still stand {In(-band.MinRemovalIn)} in outside the metal."];
        if (!band.CaseKept)
            return [$"Grinding the {name} lobe takes off up to {In(band.MaxRemovalIn)} in and leaves {In(Math.Max(0, band.LeastCaseLeftIn ?? 0))} in of the {In(blank.Metal.CaseDepthIn ?? 0)} in case; {In(rules.LeastCaseIn(blank.Part.Hardening) ?? 0)} in must stay."];
        return LobeShape.Objections(name, lobe, cam, band.BaseCircleDiameterIn);
    }

    private static string TooSmall(string name, FinishedCam cam, BandAnswer band, double least) =>
        band.MaxBaseCircleDiameterIn >= least && cam.LargestBaseCircleIn is { } allowed
            ? $"The engine leaves room for a base circle of {In(allowed)} in only (bearing bores with this lift, or your own limit); this blank needs at least {In(least)} in."
            : band.MaxBaseCircleDiameterIn <= 0
                ? $"The {name} lobe does not come out of this blank at any base circle."
                : $"There is not enough metal for the {name} lobe: it would need a base circle of {In(band.MaxBaseCircleDiameterIn)} in, and {In(least)} in is the least.";

    private static string In(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);
}
