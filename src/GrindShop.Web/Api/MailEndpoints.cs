using GrindShop.Shop.Mail;
using GrindShop.Web.Security;

namespace GrindShop.Web.Api;

/// <summary>A mail as it was received, to save and open elsewhere: never shown by the browser, since anybody may have written it.</summary>
internal static class MailEndpoints
{
    public static void MapMails(this WebApplication app) => app.MapGet("/desk/mail/{id:long}.eml", OriginalAsync).RequireAuthorization(Policies.Desk).ExcludeFromDescription();

    private static async Task<IResult> OriginalAsync(long id, MailTray tray, CancellationToken cancel) =>
        await tray.OriginalAsync(id, cancel) is { } bytes ? Results.File(bytes, "application/octet-stream", $"mail-{id}.eml") : Results.NotFound();
}
