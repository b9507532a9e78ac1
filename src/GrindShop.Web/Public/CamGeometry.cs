using GrindShop.Lobes;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Public;

/// <summary>Everything the geometry page draws of one cam in one of its blanks.</summary>
public sealed record CamGeometry(JudgedSpec Judged)
{
    /// <summary>On the base circles of the blank's answer; empty without any blank.</summary>
    public IReadOnlyList<LawPlot> Laws { get; private init; } = [];

    public required Outcome<CamLayout, CamLayoutProblem> Layout { get; init; }

    /// <summary>Works away from the thread that serves the page.</summary>
    public static Task<CamGeometry> OfAsync(JudgedSpec judged, BlankFit? blank, CancellationToken cancel) =>
        Task.Run(() => Of(judged.Shown == blank ? judged : judged.Showing(blank)), cancel);

    private static CamGeometry Of(JudgedSpec judged)
    {
        var cam = judged.Cam;
        var whole = new CamGeometry(judged) { Layout = EngineLayout.Of(cam.Family, cam.Grind) };
        return judged is { Drawing: { } drawing }
            ? whole with { Laws = LawPlot.Of(Lobe(cam.Intake, drawing.Intake), Lobe(cam.Exhaust, drawing.Exhaust)) }
            : whole;
    }

    private static LawLobe Lobe(FinishLobe lobe, LobeSection section) =>
        new(section.Name, lobe.Law, LobeContour.Of(lobe.Law, lobe.Follower, section.BaseCircleDiameterIn));
}
