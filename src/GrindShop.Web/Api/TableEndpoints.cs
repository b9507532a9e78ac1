using System.Text;
using GrindShop.Lobes;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Feasibility;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Api;

/// <summary>Tables of a cam as CSV, for the grinder and the inspector; the cam stands in the query string as in a link to its geometry.</summary>
internal static class TableEndpoints
{
    public static void MapTables(this WebApplication app)
    {
        var tables = app.MapGroup("/tables").AllowAnonymous().ExcludeFromDescription();
        tables.MapGet("/grinding.csv", GrindingAsync);
        tables.MapGet("/lobe-angles.csv", LobeAnglesAsync);
    }

    private static async Task<IResult> GrindingAsync(HttpRequest http, Catalog catalog, CancellationToken cancel)
    {
        var problems = new FieldProblems();
        var cam = Cam(http, await catalog.ContentAsync(cancel), problems);
        var asked = GrindingQuery.Read(http.Query, problems);
        if (problems.Any || cam is null || asked is null)
            return problems.ToResult();
        var table = asked.Table(cam.Grind, problems);
        return problems.Any || table is null ? problems.ToResult() : Csv(table, $"{asked.Kind}-{asked.Lobe}.csv");
    }

    private static async Task<IResult> LobeAnglesAsync(HttpRequest http, Catalog catalog, CancellationToken cancel)
    {
        var problems = new FieldProblems();
        if (Cam(http, await catalog.ContentAsync(cancel), problems) is not { } cam)
            return problems.ToResult();
        var layout = EngineLayout.Of(cam.Family, cam.Grind);
        if (layout.Succeeded)
            return Csv(LobeAngleTable.Csv(layout.Value, cam.Family.Datum), "lobe-angles.csv");
        problems.Add(SpecQuery.KeyOf("engineFamily"), layout.Problem.ToString());
        return problems.ToResult();
    }

    /// <summary>The complete cam of the query; null with its problems, each under its key.</summary>
    private static AskedCam? Cam(HttpRequest http, CatalogContent content, FieldProblems problems)
    {
        var read = SpecQuery.Read(http.QueryString.Value, content);
        var reading = SpecReading.Of(read.Draft, content);
        problems.AddRange(read.Ignored.Concat(reading.Completed.Problems).Concat(reading.Completed.Needed).DistinctBy(problem => problem.Field)
            .Select(problem => problem with { Field = SpecQuery.KeyOf(problem.Field) }));
        return !problems.Any && reading is { Grind: { } grind, Family: { } family } ? new AskedCam(grind, family) : null;
    }

    private static IResult Csv(string text, string name) => Results.File(Encoding.UTF8.GetBytes(text), "text/csv; charset=utf-8", name);

    private sealed record AskedCam(GrindSpec Grind, EngineFamily Family);
}
