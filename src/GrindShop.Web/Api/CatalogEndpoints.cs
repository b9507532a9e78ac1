using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;

namespace GrindShop.Web.Api;

internal sealed record EngineResponse(
    string Code, string Name, EngineKind Kind, int Cylinders, string FiringOrder, IReadOnlyList<string> OtherFiringOrders, GearPosition GearPosition, bool FuelPumpLobe, bool HasSides,
    IReadOnlyList<double> JournalDiametersIn, double LeastBaseCircleIn, double UsualBaseCircleIn, double RockerRatio, double RollerDiameterIn, double FootDiameterIn,
    double UsualLobeSeparationCamDeg, double UsualAdvanceCrankDeg);

internal sealed record NominalResponse(
    Lobes.LobeSpec Intake, Lobes.LobeSpec Exhaust, double BaseCircleDiameterIn, double StockIn, double LobeSeparationCamDeg, double IntakeCenterlineCrankDeg, Lobes.FollowerKind FollowerKind, double RollerRadiusIn);

/// <summary>Public facts of a blank: no cost, no supplier, no quantity.</summary>
internal sealed record BlankResponse(
    string PartNumber, string EngineFamily, CamSide? Side, BlankForm Form, BlankAlloy Alloy, Hardening Hardening, double? CaseDepthIn, double? HardnessHrc, CamGear CamGear, bool FuelPumpLobe,
    string FiringOrder, NominalResponse? Nominal, double? RoundDiameterIn, double LeastBaseCircleIn, bool InStock, int LeadTimeDays);

/// <summary>What the shop can work on: engine families and blanks.</summary>
internal static class CatalogEndpoints
{
    public static async Task<IReadOnlyList<EngineResponse>> EnginesAsync(Catalog catalog, CancellationToken cancel) =>
        [.. (await catalog.ContentAsync(cancel)).Families.Select(Engine)];

    public static async Task<IReadOnlyList<BlankResponse>> BlanksAsync(Catalog catalog, CancellationToken cancel)
    {
        var available = await catalog.AvailableAsync(cancel);
        return [.. (await catalog.ContentAsync(cancel)).Blanks.Select(blank => Blank(blank.Part, available.ContainsKey(blank.Part.Id)))];
    }

    private static EngineResponse Engine(EngineFamily f) => new(
        f.Code, f.Name, f.Kind, f.Cylinders, f.FiringOrder, f.OtherFiringOrders, f.Gear, f.FuelPumpLobe, f.HasSides, f.JournalDiametersIn, f.LeastBaseCircleIn, f.UsualBaseCircleIn,
        f.RockerRatio, f.RollerDiameterIn, f.FootDiameterIn, f.UsualLobeSeparationCamDeg, f.UsualAdvanceCrankDeg);

    private static BlankResponse Blank(BlankPart p, bool inStock) => new(
        p.PartNumber, p.EngineFamily.Code, p.Side, p.Form, p.Alloy, p.Hardening, p.CaseDepthIn, p.HardnessHrc, p.Gear, p.FuelPumpLobe, p.FiringOrder,
        p.Nominal is { } n ? new NominalResponse(n.Intake, n.Exhaust, n.BaseCircleDiameterIn, n.StockIn, n.LobeSeparationCamDeg, n.IntakeCenterlineCrankDeg, n.FollowerKind, n.RollerRadiusIn) : null,
        p.RoundDiameterIn, p.LeastBaseCircleIn, inStock, p.LeadTimeDays);
}
