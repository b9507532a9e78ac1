using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Drawings;

namespace GrindShop.Web.Public;

/// <summary>The shop's answer to a complete specification, with the drawing of one of its blanks.</summary>
public sealed record JudgedSpec(FeasibilityAnswer Answer, FinishedCam Cam, CatalogContent Content, BlankFit? Shown, CamSection? Drawing)
{
    /// <summary>What comes close, where the cam does not come from stock; null until it was searched, which is after the answer is shown.</summary>
    public IReadOnlyList<NearestGrind>? Nearest { get; init; }

    /// <summary>Price and date to be expected; null where they are not asked for.</summary>
    public Outlook? Outlook { get; init; }

    /// <summary>Asks the catalog, away from the thread that serves the keyboard.</summary>
    public static Task<JudgedSpec> OfAsync(Catalog catalog, GrindSpec grind, CancellationToken cancel) => Task.Run(
        async () =>
        {
            var content = await catalog.ContentAsync(cancel);
            var answer = await catalog.JudgeAsync(grind, cancel);
            return new JudgedSpec(answer, new FinishedCam(grind, content.Family(grind.EngineFamily)!), content, null, null).Showing(answer.Blanks.FirstOrDefault());
        },
        cancel);

    /// <summary>Searches what comes close to it, away from the thread that serves the keyboard.</summary>
    public Task<IReadOnlyList<NearestGrind>> NearestAsync(Catalog catalog, CancellationToken cancel) =>
        Task.Run(() => catalog.NearestAsync(Answer, cancel), cancel);

    /// <summary>The same answer, drawn in another of its blanks.</summary>
    public JudgedSpec Showing(BlankFit? fit) => this with
    {
        Shown = fit,
        Drawing = fit is not null && Content.Blank(fit) is { } blank ? CamSection.Of(Cam, blank, fit) : null,
    };
}
