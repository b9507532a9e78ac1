using System.Text;
using GrindShop.Shop.BlankCatalog;
using GrindShop.Web.Security;

namespace GrindShop.Web.Api;

/// <summary>The catalog as a file, and the pictures and drawings of its parts.</summary>
internal static class BlankEndpoints
{
    public static void MapBlanks(this WebApplication app)
    {
        var office = app.MapGroup("/office").ExcludeFromDescription();
        office.MapGet("/blanks.csv", ExportAsync).RequireAuthorization(Policies.Office);
        office.MapGet("/blank-files/{id:int}", FileAsync).RequireAuthorization(Policies.Staff);
    }

    private static async Task<IResult> ExportAsync(CatalogImport import, CancellationToken cancel)
    {
        var text = await import.ExportAsync(cancel);
        return Results.File([.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)], "text/csv; charset=utf-8", "blanks.csv");
    }

    /// <summary>Drawings in SVG can hold scripts: they are only ever downloaded. Nothing that is shown may load or run anything.</summary>
    private static async Task<IResult> FileAsync(int id, BlankFileStore store, HttpContext http, CancellationToken cancel)
    {
        if (await store.FindAsync(id, cancel) is not { } file)
            return Results.NotFound();
        http.Response.Headers.ContentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; sandbox";
        http.Response.Headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return file.MediaType == "image/svg+xml" ? Results.File(file.Content, "application/octet-stream", file.Name) : Results.File(file.Content, file.MediaType);
    }
}
