using GrindShop.Shop.Routing;
using GrindShop.Web.Shell;

namespace GrindShop.Web.Office;

/// <summary>How many cams stand at one stage, and how many of them are late. Stage null: waiting for a blank.</summary>
public sealed record BacklogBar(Stage? Stage, int Count, int Late)
{
    public string Name => Stage is { } stage ? Say.Capital(stage.Words()) : "Waiting for a blank";

    /// <summary>A bar for each stage that has cams, in the order of the route.</summary>
    public static IReadOnlyList<BacklogBar> Of(IEnumerable<BacklogRow> rows) =>
    [
        .. rows.GroupBy(row => row.Stage)
            .OrderBy(stage => stage.Key is { } known ? (int)known : -1)
            .Select(stage => new BacklogBar(stage.Key, stage.Count(), stage.Count(row => row.IsLate))),
    ];
}
