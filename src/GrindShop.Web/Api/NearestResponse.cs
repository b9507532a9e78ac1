using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Web.Api;

internal sealed record LobeHolderResponse(LobeSpec Lobe);

/// <summary>A specification near the one asked for that does come out of a blank. Its figures are those of a feasibility request.</summary>
internal sealed record NearestResponse(
    string EngineFamily, double LobeSeparationCamDeg, double IntakeCenterlineCrankDeg, LobeHolderResponse Intake, LobeHolderResponse Exhaust, DistributorGear? DistributorGear,
    string PartNumber, bool InStock, double? IntakeBaseCircleDiameterIn, double? ExhaustBaseCircleDiameterIn, IReadOnlyList<string> GivenUp)
{
    public static NearestResponse Of(NearestGrind near) => new(
        near.Grind.EngineFamily, near.Grind.LobeSeparationCamDeg, near.Grind.IntakeCenterlineCrankDeg, new(near.Grind.Intake), new(near.Grind.Exhaust), near.Grind.DistributorGear,
        near.Fit.PartNumber, near.Fit.InStock, near.Fit.IntakeBaseCircleDiameterIn, near.Fit.ExhaustBaseCircleDiameterIn, near.GivenUp);
}
