using System.Globalization;
using GrindShop.Lobes;
using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Feasibility;

/// <summary>What a fitting blank costs in base circle and case, in plain words.</summary>
internal static class BlankMerits
{
    public static IEnumerable<string> Of(FinishedCam cam, PreparedBlank blank, BandAnswer intake, BandAnswer exhaust, Turns turns, double? commonIn, CamRules rules)
    {
        var part = blank.Part;
        yield return string.Create(CultureInfo.InvariantCulture,
            $"Base circle {intake.BaseCircleDiameterIn:0.000} in intake, {exhaust.BaseCircleDiameterIn:0.000} in exhaust; {Math.Min(intake.MinRemovalIn, exhaust.MinRemovalIn):0.000} to {Math.Max(intake.MaxRemovalIn, exhaust.MaxRemovalIn):0.000} in comes off.");
        if (commonIn is { } common && Math.Abs(intake.BaseCircleDiameterIn - exhaust.BaseCircleDiameterIn) > .0005)
            yield return string.Create(CultureInfo.InvariantCulture, $"Both lobes can also stand on one base circle of {common:0.000} in.");
        if (blank.Metal.CaseDepthIn is { } depth && intake.LeastCaseLeftIn is { } a && exhaust.LeastCaseLeftIn is { } b)
            yield return string.Create(CultureInfo.InvariantCulture, $"{Math.Min(a, b):0.000} in of the {depth:0.000} in case stays under the lobes.");
        if (part.IsSoft)
            yield return "The blank is soft: it is rough ground, hardened at the heat-treater's, and then finish ground.";
        if (Math.Abs(turns.IntakeCamDeg) > .05 || Math.Abs(turns.ExhaustCamDeg) > .05)
            yield return string.Create(CultureInfo.InvariantCulture, $"The lobes turn {turns.IntakeCamDeg:+0.0;-0.0;0} (intake) and {turns.ExhaustCamDeg:+0.0;-0.0;0} (exhaust) cam degrees against the blank's.");
        foreach (var rule in rules.Advice(part))
            yield return rule.Reason;
        foreach (var advice in new[] { LobeShape.Advice("intake", cam.Intake, intake.BaseCircleDiameterIn), LobeShape.Advice("exhaust", cam.Exhaust, exhaust.BaseCircleDiameterIn) })
            if (advice is not null)
                yield return advice;
    }
}
