using GrindShop.Shop.Feasibility;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Public;

/// <summary>Everything the geometry page draws of one cam in one of its blanks.</summary>
public sealed record CamGeometry(JudgedSpec Judged)
{
    /// <summary>Null for a full-round blank, or without any blank.</summary>
    public BlankWindow? Window { get; private init; }

    /// <summary>Works away from the thread that serves the page.</summary>
    public static Task<CamGeometry> OfAsync(JudgedSpec judged, BlankFit? blank, CancellationToken cancel) =>
        Task.Run(() => Of(judged.Shown == blank ? judged : judged.Showing(blank)), cancel);

    private static CamGeometry Of(JudgedSpec judged) => new(judged)
    {
        Window = judged is { Shown: { } shown, Drawing: { } drawing } && judged.Content.Blank(shown.PartNumber) is { } blank
            ? BlankWindow.Of(judged.Cam, blank, drawing, judged.Content.Rules)
            : null,
    };
}
