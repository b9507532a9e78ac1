using GrindShop.Shop.Feasibility;

namespace GrindShop.Web.Drawings;

/// <summary>Both lobes of a cam inside one blank.</summary>
public sealed record CamSection(string PartNumber, LobeSection Intake, LobeSection Exhaust)
{
    /// <summary>
    /// As the blank would be ground; a lobe that does not come out is drawn at the least base circle allowed, so that the picture shows where metal is missing.
    /// </summary>
    public static CamSection Of(FinishedCam cam, PreparedBlank blank, BlankFit fit)
    {
        var least = Math.Max(blank.Part.LeastBaseCircleIn, cam.Family.LeastBaseCircleIn);
        double Base(double? found) => fit.Fits ? found ?? least : Math.Max(found ?? 0, least);
        var caseIn = blank.Metal.CaseDepthIn;
        return new CamSection(
            fit.PartNumber,
            LobeSection.Of("intake", blank.Intake, cam.Intake, Base(fit.IntakeBaseCircleDiameterIn), fit.IntakeTurnCamDeg, caseIn),
            // An earlier exhaust turns the metal the other way.
            LobeSection.Of("exhaust", blank.Exhaust, cam.Exhaust, Base(fit.ExhaustBaseCircleDiameterIn), -fit.ExhaustTurnCamDeg, caseIn));
    }
}
